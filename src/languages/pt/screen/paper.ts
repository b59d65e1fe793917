import type { Catalogue } from '../../text.ts';

export const paper: Catalogue = {
  'clock||column': 'relógio',
  'take||column': 'tomar',
  'split||column': 'parcial',
  'safe||goal': 'segura',
  'dream||goal': 'sonho',
  'tape here, under the other end': 'fita aqui, sob a outra ponta',
  'Wrist band': 'Pulseira',
  '{name}: wrist band': '{name}: pulseira',
  'Cut along the outer line. Fold along the dashes, so that the clock lies outside and the splits behind it. Wrap it around the wrist and tape the ends together. ○ offered by the race, ◆ yours: each is to be had before the line that it stands in.':
    'Corte na linha de fora. Dobre nos tracejados, com o relógio por fora e as parciais atrás. Enrole no pulso e prenda as pontas com fita. ○ oferecido pela prova, ◆ seu: cada um vem antes da linha em que está.',
  Paper: 'Papel',
  "A wrist band and a race sheet, one A4 page each. Print both, or choose the page in the print window. Print at 100 %, without the browser's own headers.":
    'Uma pulseira e uma folha de prova, uma página A4 cada. Imprima as duas ou escolha a página na janela de impressão. Imprima a 100 %, sem os cabeçalhos do navegador.',
  'Boards||on the road': 'Placas',
  Kilometres: 'Quilômetros',
  Miles: 'Milhas',
  Print: 'Imprimir',
  'Race sheet': 'Folha de prova',
  Before: 'Antes',
  'Not planned yet: see Race day.': 'Ainda não planejado: veja Dia da prova.',
  Checkpoints: 'Pontos de controle',
  'Cut-offs': 'Tempos de corte',
  'Water and fuel': 'Água e energia',
  'None in the plan.': 'Nenhum no plano.',
  'Take care': 'Para lembrar',
  'Opening: to {place} at {pace}, {n} s per km slower than goal pace. No more than that.':
    'Abertura: até {place} a {pace}, {n} s por km mais lento que o ritmo da meta. Não mais que isso.',
  'Opening: to {place} at {pace}, {n} s per km quicker than goal pace. No more than that.':
    'Abertura: até {place} a {pace}, {n} s por km mais rápido que o ritmo da meta. Não mais que isso.',
  'Push: from {place} at {pace}, if the legs allow it.':
    'Arranque: de {place} a {pace}, se as pernas deixarem.',
  'On hills keep the effort, not the pace; the times at the checkpoints know the hills.':
    'Nas ladeiras mantenha o esforço, não o ritmo; os tempos nos pontos de controle conhecem as ladeiras.',
  'Then settle: {pace} to the finish.': 'Depois se firme: {pace} até a chegada.',
  'From the line: {pace} to the finish.': 'Da linha: {pace} até a chegada.',
  'Then settle: {pace} to {place}.': 'Depois se firme: {pace} até {place}.',
  'From the line: {pace} to {place}.': 'Da linha: {pace} até {place}.',
  '{time} by your own clock': '{time} pelo seu próprio relógio',
  "{time} by the gun's clock": '{time} pelo relógio do tiro',
  'flag {time}, by the gun': 'bandeira {time}, pelo tiro',
  'flag {time}, by their own clock': 'bandeira {time}, pelo relógio dele',
  'Goal pace': 'Ritmo da meta',
  '{perKm}, {perMile}': '{perKm}, {perMile}',
  'The plan finishes in': 'O plano termina em',
  'Safe goal': 'Meta segura',
  'Dream goal': 'Meta sonho',
  'water: {text}': 'água: {text}',
  '{time} after the gun': '{time} depois do tiro',
  'half||place': 'metade',
};
