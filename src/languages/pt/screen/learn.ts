import type { Catalogue } from '../../text.ts';

export const learn: Catalogue = {
  'Play||a tone': 'Ouvir',
  'Feel||a tone': 'Sentir',
  'The tones': 'Os tons',
  'Most calls begin with a tone. Know the eight of them, and you know what is meant before the first word. It takes two minutes.':
    'Quase todos os avisos começam com um tom. Conhecendo os oito, você sabe o que se quer dizer antes da primeira palavra. Leva dois minutos.',
  'The line shows the pitch. The blocks under it show when this device vibrates, in the same rhythm.':
    'A linha mostra a altura. Os blocos embaixo mostram quando este aparelho vibra, no mesmo ritmo.',
  'The line shows the pitch. The blocks under it show the rhythm that a device that vibrates lets you feel; this one does not.':
    'A linha mostra a altura. Os blocos embaixo mostram o ritmo que um aparelho que vibra deixa sentir; este não vibra.',
  'Tones alone in my runs': 'Só tons nas minhas corridas',
  'No words where a tone can tell: your food, what you ask for and trouble are still said.':
    'Sem palavras onde um tom basta: sua comida, o que você pergunta e os problemas continuam sendo ditos.',
  'To the run': 'Para a corrida',
  'Hear a race': 'Ouvir uma prova',
  'Do you know them?': 'Você os conhece?',
  'Eight tones, each with four names. Put your earphones in.':
    'Oito tons, cada um com quatro nomes. Coloque os fones.',
  'Begin the quiz': 'Começar o teste',
  'Tone {count} of {of}': 'Tom {count} de {of}',
  'Right: {name}.': 'Certo: {name}.',
  'No, that was {name}.': 'Não, era {name}.',
  'Next tone': 'Próximo tom',
  'How I did': 'Meu resultado',
  '{right} of {of} right.': '{right} de {of} certos.',
  'You know them.': 'Você os conhece.',
  'Hear these again:': 'Ouça estes de novo:',
  'Another quiz': 'Outro teste',
  'Enough||of the quiz': 'Chega',
  'Countdown||tone': 'Contagem regressiva',
  'Three seconds to go. The long note is the moment: a leg of practice begins or ends.':
    'Faltam três segundos. A nota longa é o momento: um trecho do treino começa ou acaba.',
  'Three short ticks a second apart, then one long higher note.':
    'Três toques curtos a um segundo um do outro, depois uma nota longa e mais aguda.',
  'New part||tone': 'Nova parte',
  'A part of the race begins: the start, your steady pace, the push. In practice a leg.':
    'Começa uma parte da prova: a largada, seu ritmo constante, o esforço final. No treino, um trecho.',
  'Short, short, then long and higher.': 'Curto, curto, depois longo e mais agudo.',
  'Ease||tone': 'Alivie',
  'Too quick, or your heart rate is above its ceiling: run easier.':
    'Rápido demais, ou seu pulso passou do limite: corra mais leve.',
  'Two slow notes, both sinking.': 'Duas notas lentas, as duas descem.',
  'Quicken||tone': 'Acelere',
  'Too slow for the plan: run quicker, if you can.':
    'Lento demais para o plano: corra mais rápido, se puder.',
  'Four quick notes that climb.': 'Quatro notas rápidas que sobem.',
  'Mark||tone': 'Marco',
  'A board or a checkpoint, now. In practice: halfway, or nearly there.':
    'Uma placa ou um ponto de controle, agora. No treino: a metade, ou quase o fim.',
  'One knock.': 'Uma só batida.',
  'Signal lost||tone': 'Sinal perdido',
  'No position. Soundline goes on by your pace.': 'Sem posição. O Soundline segue pelo seu ritmo.',
  'Three notes, each lower and longer than the one before.':
    'Três notas, cada uma mais grave e mais longa que a anterior.',
  'Signal back||tone': 'Sinal de volta',
  'The position, or the sound, is there again.': 'A posição, ou o som, voltou.',
  'One long note, then three quick ones, higher.': 'Uma nota longa, depois três rápidas e mais agudas.',
  'Finish||tone': 'Chegada',
  'You are through, and the run is over.': 'Você passou a linha, e a corrida acabou.',
  'Long, short, short, long, long: it ends high.': 'Longo, curto, curto, longo, longo: termina agudo.',
  'Calls begin {ms} ms earlier, as measured before.': 'Os avisos começam {ms} ms antes, como medido.',
  'Too little to matter.': 'Pouco demais para importar.',
  'Checkpoints and countdowns begin {ms} ms earlier from now on. Other earphones: measure again.':
    'Os pontos de controle e as contagens começam {ms} ms antes a partir de agora. Com outros fones, meça de novo.',
  'Learn the tones': 'Aprender os tons',
  'No earlier': 'Sem adiantar',
  'Tones alone': 'Só tons',
  'Without them your own music plays on, no quieter, and calls sound over it.':
    'Sem eles sua música continua, sem baixar, e os avisos soam por cima.',
};
