import type { Catalogue } from '../../text.ts';

export const aloud: Catalogue = {
  '{n} s||seconds': '{n} s',
  '{n} min': '{n} min',
  'At the start': 'Na largada',
  '{span} before||the start': '{span} antes',
  'Start it at the gun.': 'Comece no tiro de largada.',
  'Start it as you cross the start line.': 'Comece ao cruzar a linha de largada.',
  'Start it {span} before the gun. A knock tells that it plays; then three short notes count down, and the long fourth is the gun.':
    'Comece {span} antes do tiro. Uma batida avisa que está tocando; depois três notas curtas contam para trás e a quarta, longa, é o tiro.',
  'Start it {span} before you cross the start line. A knock tells that it plays; then three short notes count down, and the long fourth is the start.':
    'Comece {span} antes de cruzar a linha de largada. Uma batida avisa que está tocando; depois três notas curtas contam para trás e a quarta, longa, é a largada.',
  'Sound file': 'Arquivo de som',
  'The whole plan said aloud, as one file: for a player, a watch that plays music, or a phone that locks its screen.':
    'O plano inteiro falado, em um só arquivo: para um tocador, um relógio que toca música ou um celular que bloqueia a tela.',
  'What the file is to say': 'O que o arquivo deve dizer',
  'What is said': 'O que é dito',
  'The race plan': 'O plano de prova',
  'The practice session': 'A sessão de treino',
  'Where you should be by now': 'Onde você já deveria estar',
  'Every kilometre': 'Cada quilômetro',
  'Every mile': 'Cada milha',
  'Checkpoints alone': 'Só os pontos de controle',
  'Voice||of the sound file': 'Voz',
  'Usual||voice': 'Normal',
  'Loud: for a crowd, harsher': 'Alta: para a multidão, mais áspera',
  'Start the file': 'Começar o arquivo',
  'It goes by the clock and knows nothing of where you are: it says where the plan has you. Paused, it is late by as long.':
    'Ele vai pelo relógio e não sabe onde você está: diz onde o plano põe você. Pausado, atrasa o tempo da pausa.',
  'The file': 'O arquivo',
  'What it says, and when': 'O que ele diz, e quando',
  'Times from the start. Touch a line to hear it.':
    'Tempos desde a largada. Toque em uma linha para ouvi-la.',
  '{n} calls and tones, {length}, about {size} MB.': '{n} avisos e sons, {length}, cerca de {size} MB.',
  'Without room between others and left out: {n}.': 'Sem espaço entre outros e deixados de fora: {n}.',
  'Save as MP3': 'Salvar como MP3',
  'Give it to another app': 'Passar para outro aplicativo',
  'Save the words (WebVTT)': 'Salvar os textos (WebVTT)',
  'A moment …': 'Um momento …',
  'One knock: it plays': 'Uma batida: está tocando',
  'Countdown: three notes, the long fourth is the start': 'Contagem: três notas, a quarta longa é a largada',
  'Five notes: the end': 'Cinco notas: o fim',
  'This session has a part that ends by a press, or by distance without a pace: no clock can tell when.':
    'Esta sessão tem uma parte que acaba com um aperto, ou por distância sem ritmo: nenhum relógio pode dizer quando.',
  'The voice could not be loaded. Try again with a network.':
    'A voz não pôde ser carregada. Tente de novo com rede.',
  'an end that a clock can tell': 'um fim que um relógio possa dizer',
};
