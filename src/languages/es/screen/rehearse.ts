import type { Catalogue } from '../../text.ts';

export const rehearse: Catalogue = {
  'Demo race': 'Carrera de muestra',
  'My plan': 'Mi plan',
  'Rate||of a replay': 'Velocidad',
  'Soundline is a voice in your ear while you race. It tells you how many seconds you are ahead of or behind your plan, at the moment it matters. Hear a whole race before you run it.':
    'Soundline es una voz en tu oído mientras corres. Te dice cuántos segundos vas por delante o por detrás de tu plan, en el momento en que importa. Oye una carrera entera antes de correrla.',
  Rehearsal: 'Ensayo',
  'Between calls the race runs at the rate you choose; while the voice speaks it runs at true speed.':
    'Entre avisos la carrera va a la velocidad que elijas; mientras la voz habla va a velocidad real.',
  'The race': 'La carrera',
  '{distance} {unit} in {time}, on a measured course': '{distance} {unit} en {time}, en un recorrido medido',
  'Ahead by four.': 'Ventaja de cuatro.',
  'Four seconds in hand: above the water line.': 'Cuatro segundos de margen: por encima de la línea de agua.',
  'Behind by four.': 'Retraso de cuatro.',
  'Four seconds owed: below it.': 'Cuatro segundos de deuda: por debajo de ella.',
  Pause: 'Pausa',
  'Go on': 'Seguir',
  'End||press': 'Terminar',
  'Hear it again': 'Oír otra vez',
  'Hear the demo race': 'Oír la carrera de muestra',
  'Hear my race': 'Oír mi carrera',
  'Where the runner is': 'Dónde está el corredor',
  time: 'tiempo',
  'pace /{unit}': 'ritmo /{unit}',
  finish: 'meta',
  'What was said': 'Qué se dijo',
  'Your own race': 'Tu propia carrera',
  '{plan}: distance and goal; the course, food and the morning if you like.':
    '{plan}: distancia y objetivo; el recorrido, la comida y la mañana si quieres.',
  'Make a plan': 'Haz un plan',
  'Hear it here, at home: choose “My plan” and press.': 'Escúchalo aquí, en casa: elige «Mi plan» y pulsa.',
  'On the day {check}, then {run}: the phone in a pocket, the earphones in.':
    'El día, {check} y luego {run}: el teléfono en el bolsillo, los auriculares puestos.',
  'check the phone': 'comprueba el teléfono',
  'switch on': 'enciende',
};
