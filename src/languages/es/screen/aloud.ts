import type { Catalogue } from '../../text.ts';

export const aloud: Catalogue = {
  '{n} s||seconds': '{n} s',
  '{n} min': '{n} min',
  'At the start': 'En la salida',
  '{span} before||the start': '{span} antes',
  'Start it at the gun.': 'Arráncalo con el disparo.',
  'Start it as you cross the start line.': 'Arráncalo al cruzar la línea de salida.',
  'Start it {span} before the gun. A knock tells that it plays; then three short notes count down, and the long fourth is the gun.':
    'Arráncalo {span} antes del disparo. Un golpe indica que suena; luego tres notas cortas cuentan atrás y la cuarta, larga, es el disparo.',
  'Start it {span} before you cross the start line. A knock tells that it plays; then three short notes count down, and the long fourth is the start.':
    'Arráncalo {span} antes de cruzar la línea de salida. Un golpe indica que suena; luego tres notas cortas cuentan atrás y la cuarta, larga, es la salida.',
  'Sound file': 'Archivo de sonido',
  'The whole plan said aloud, as one file: for a player, a watch that plays music, or a phone that locks its screen.':
    'Todo el plan hablado en un solo archivo: para un reproductor, un reloj que pone música o un teléfono que bloquea la pantalla.',
  'What the file is to say': 'Qué debe decir el archivo',
  'What is said': 'Qué se dice',
  'The race plan': 'El plan de carrera',
  'The practice session': 'La sesión de entreno',
  'Where you should be by now': 'Dónde deberías ir ya',
  'Every kilometre': 'Cada kilómetro',
  'Every mile': 'Cada milla',
  'Checkpoints alone': 'Solo los puntos de control',
  'Voice||of the sound file': 'Voz',
  'Usual||voice': 'Habitual',
  'Loud: for a crowd, harsher': 'Fuerte: para el gentío, más áspera',
  'Start the file': 'Arrancar el archivo',
  'It goes by the clock and knows nothing of where you are: it says where the plan has you. Paused, it is late by as long.':
    'Va por el reloj y no sabe dónde estás: dice dónde te pone el plan. Si lo pausas, se retrasa lo que dure la pausa.',
  'The file': 'El archivo',
  'What it says, and when': 'Qué dice y cuándo',
  'Times from the start. Touch a line to hear it.': 'Tiempos desde la salida. Toca una línea para oírla.',
  '{n} calls and tones, {length}, about {size} MB.': '{n} avisos y tonos, {length}, unos {size} MB.',
  'Without room between others and left out: {n}.': 'Sin sitio entre otros y omitidos: {n}.',
  'Save as MP3': 'Guardar como MP3',
  'Give it to another app': 'Pasarlo a otra aplicación',
  'Save the words (WebVTT)': 'Guardar los textos (WebVTT)',
  'A moment …': 'Un momento …',
  'One knock: it plays': 'Un golpe: suena',
  'Countdown: three notes, the long fourth is the start':
    'Cuenta atrás: tres notas, la cuarta larga es la salida',
  'Five notes: the end': 'Cinco notas: el final',
  'This session has a part that ends by a press, or by distance without a pace: no clock can tell when.':
    'Esta sesión tiene una parte que acaba con una pulsación, o por distancia sin ritmo: ningún reloj puede decir cuándo.',
  'The voice could not be loaded. Try again with a network.':
    'No se pudo cargar la voz. Prueba otra vez con red.',
  'an end that a clock can tell': 'un final que un reloj pueda decir',
};
