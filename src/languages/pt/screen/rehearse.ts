import type { Catalogue } from '../../text.ts';

export const rehearse: Catalogue = {
  'Demo race': 'Prova de amostra',
  'My plan': 'Meu plano',
  'Rate||of a replay': 'Velocidade',
  'Soundline is a voice in your ear while you race. It tells you how many seconds you are ahead of or behind your plan, at the moment it matters. Hear a whole race before you run it.':
    'O Soundline é uma voz no seu ouvido enquanto você corre a prova. Ele diz quantos segundos você está à frente ou atrás do seu plano, na hora em que isso importa. Ouça uma prova inteira antes de corrê-la.',
  Rehearsal: 'Ensaio',
  'Between calls the race runs at the rate you choose; while the voice speaks it runs at true speed.':
    'Entre os avisos a prova vai na velocidade que você escolher; enquanto a voz fala, vai na velocidade real.',
  'The race': 'A prova',
  '{distance} {unit} in {time}, on a measured course': '{distance} {unit} em {time}, em percurso medido',
  'Ahead by four.': 'Vantagem de quatro.',
  'Four seconds in hand: above the water line.': 'Quatro segundos de folga: acima da linha d’água.',
  'Behind by four.': 'Atraso de quatro.',
  'Four seconds owed: below it.': 'Quatro segundos de dívida: abaixo dela.',
  Pause: 'Pausar',
  'Go on': 'Continuar',
  'End||press': 'Encerrar',
  'Hear it again': 'Ouvir de novo',
  'Hear the demo race': 'Ouvir a prova de amostra',
  'Hear my race': 'Ouvir minha prova',
  'Where the runner is': 'Onde está o corredor',
  time: 'tempo',
  'pace /{unit}': 'ritmo /{unit}',
  finish: 'chegada',
  'What was said': 'O que foi dito',
  'Your own race': 'A sua própria corrida',
  '{plan}: distance and goal; the course, food and the morning if you like.':
    '{plan}: distância e meta; o percurso, a comida e a manhã se quiser.',
  'Make a plan': 'Faça um plano',
  'Hear it here, at home: choose “My plan” and press.': 'Ouça-o aqui, em casa: escolha “Meu plano” e toque.',
  'On the day {check}, then {run}: the phone in a pocket, the earphones in.':
    'No dia, {check} e depois {run}: o celular no bolso, os fones no ouvido.',
  'check the phone': 'verifique o celular',
  'switch on': 'ligue',
};
