import type { Catalogue } from '../../text.ts';

export const rehearse: Catalogue = {
  'Demo race': 'Gara di esempio',
  'My plan': 'Il mio piano',
  'Rate||of a replay': 'Velocità',
  'Soundline is a voice in your ear while you race. It tells you how many seconds you are ahead of or behind your plan, at the moment it matters. Hear a whole race before you run it.':
    'Soundline è una voce nell’orecchio mentre corri in gara. Ti dice di quanti secondi sei avanti o indietro sul tuo piano, nel momento che conta. Senti un’intera gara prima di correrla.',
  Rehearsal: 'Prova generale',
  'Between calls the race runs at the rate you choose; while the voice speaks it runs at true speed.':
    'Tra gli avvisi la gara va alla velocità che scegli; mentre la voce parla va a velocità reale.',
  'The race': 'La gara',
  '{distance} {unit} in {time}, on a measured course': '{distance} {unit} in {time}, su un percorso misurato',
  'Ahead by four.': 'Vantaggio di quattro.',
  'Four seconds in hand: above the water line.': 'Quattro secondi di vantaggio: sopra la linea d’acqua.',
  'Behind by four.': 'Ritardo di quattro.',
  'Four seconds owed: below it.': 'Quattro secondi di debito: sotto di essa.',
  Pause: 'Pausa',
  'Go on': 'Continua',
  'End||press': 'Fine',
  'Hear it again': 'Riascolta',
  'Hear the demo race': 'Ascolta la gara di esempio',
  'Hear my race': 'Ascolta la mia gara',
  'Where the runner is': 'Dove si trova chi corre',
  time: 'tempo',
  'pace /{unit}': 'passo /{unit}',
  finish: 'arrivo',
  'What was said': 'Che cosa si è detto',
  'Your own race': 'La tua gara',
  '{plan}: distance and goal; the course, food and the morning if you like.':
    '{plan}: distanza e obiettivo; percorso, cibo e mattino se vuoi.',
  'Make a plan': 'Fai un piano',
  'Hear it here, at home: choose “My plan” and press.':
    'Ascoltalo qui, a casa: scegli «Il mio piano» e premi.',
  'On the day {check}, then {run}: the phone in a pocket, the earphones in.':
    'Il giorno {check}, poi {run}: il telefono in tasca, gli auricolari nelle orecchie.',
  'check the phone': 'controlla il telefono',
  'switch on': 'accendi',
};
