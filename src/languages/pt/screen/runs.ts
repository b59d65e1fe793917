import type { Catalogue } from '../../text.ts';

export const runs: Catalogue = {
  'not looked at yet': 'ainda não vista',
  'not done to the end': 'não feita até o fim',
  'ended at {distance} km': 'acabou em {distance} km',
  'cannot be read by this version': 'esta versão não consegue ler',
  '{name}, practice': '{name}, treino',
  'Delete for good?': 'Apagar para sempre?',
  'Delete for good': 'Apagar para sempre',
  Keep: 'Manter',
  'Delete {run}': 'Apagar {run}',
  Delete: 'Apagar',
  'Over the runs': 'Ao longo das corridas',
  'Threshold held, openings, evenness': 'Limiar mantido, aberturas, regularidade',
  'when||date of a run': 'quando',
  'threshold /km': 'limiar /km',
  'give or take, s': 'mais ou menos, s',
  'opening too quick by, s/km': 'abertura rápida demais em, s/km',
  'second half, %': 'segunda metade, %',
  'wander, %||of the pace': 'oscilação, %',
  'foot pod': 'sensor de pé',
  'Let these runs move the realistic goal, the what-if, and what is believed of this phone':
    'Deixar estas corridas moverem a meta realista, o “E se” e o que se acredita deste celular',
  'A trend of a few runs is weather, not climate. Raise training slowly, one thing at a time, and rest when something hurts.':
    'A tendência de poucas corridas é tempo, não clima. Aumente o treino devagar, uma coisa de cada vez, e descanse quando algo doer.',
  'Every run and session that this device has kept, and what each of them says.':
    'Cada corrida e sessão que este aparelho guardou, e o que cada uma diz.',
  'Putting the run together: {percent} %': 'Montando a corrida: {percent} %',
  'Looking for runs.': 'Procurando corridas.',
  'No runs yet. Run one, practise, or open a file: a GPX track from anywhere will do.':
    'Nenhuma corrida ainda. Corra uma, treine ou abra um arquivo: serve uma trilha GPX de qualquer lugar.',
  'Runs, the latest first': 'Corridas, a mais recente primeiro',
  Files: 'Arquivos',
  'Open a run: log or GPX': 'Abrir uma corrida: registro ou GPX',
  'Save everything as one file': 'Salvar tudo em um arquivo',
  'Restore everything': 'Restaurar tudo',
  'Runs stay on this device. Delete means deleted: there is no copy anywhere else but yours.':
    'As corridas ficam neste aparelho. Apagado quer dizer apagado: não há cópia em lugar nenhum além da sua.',
  'a session': 'uma sessão',
  'Threshold pace per km (quicker is higher)': 'Ritmo de limiar por km (mais rápido é mais alto)',
  'weeks, up to the last': 'semanas, até a última',
  'Opening: above 0 it was quicker than planned. Second half: above 0 it was slower than the first, hills taken out. Wander: how much the pace swings from one kilometre to the next.':
    'Abertura: acima de 0 foi mais rápida do que o planejado. Segunda metade: acima de 0 foi mais lenta do que a primeira, sem contar as subidas. Oscilação: quanto o ritmo muda de um quilômetro para outro.',
  'a GPX track or a run saved by Soundline': 'uma trilha GPX ou uma corrida salva pelo Soundline',
};
