import type { Catalogue } from '../../text.ts';

export const aloud: Catalogue = {
  '{n} s||seconds': '{n} s',
  '{n} min': '{n} min',
  'At the start': 'Alla partenza',
  '{span} before||the start': '{span} prima',
  'Start it at the gun.': 'Avvialo allo sparo.',
  'Start it as you cross the start line.': 'Avvialo quando passi la linea di partenza.',
  'Start it {span} before the gun. A knock tells that it plays; then three short notes count down, and the long fourth is the gun.':
    'Avvialo {span} prima dello sparo. Un colpo dice che sta suonando; poi tre note brevi contano alla rovescia e la quarta, lunga, è lo sparo.',
  'Start it {span} before you cross the start line. A knock tells that it plays; then three short notes count down, and the long fourth is the start.':
    'Avvialo {span} prima di passare la linea di partenza. Un colpo dice che sta suonando; poi tre note brevi contano alla rovescia e la quarta, lunga, è la partenza.',
  'Sound file': 'File audio',
  'The whole plan said aloud, as one file: for a player, a watch that plays music, or a phone that locks its screen.':
    'Tutto il piano a voce, in un solo file: per un lettore, un orologio che suona musica o un telefono che blocca lo schermo.',
  'What the file is to say': 'Che cosa deve dire il file',
  'What is said': 'Che cosa si dice',
  'The race plan': 'Il piano di gara',
  'The practice session': 'La seduta di allenamento',
  'Where you should be by now': 'Dove dovresti essere ormai',
  'Every kilometre': 'Ogni chilometro',
  'Every mile': 'Ogni miglio',
  'Checkpoints alone': 'Solo i punti di controllo',
  'Voice||of the sound file': 'Voce',
  'Usual||voice': 'Solita',
  'Loud: for a crowd, harsher': 'Forte: per la folla, più aspra',
  'Start the file': 'Avvio del file',
  'It goes by the clock and knows nothing of where you are: it says where the plan has you. Paused, it is late by as long.':
    'Va a tempo e non sa dove sei: dice dove ti vuole il piano. Se lo metti in pausa, ritarda di altrettanto.',
  'The file': 'Il file',
  'What it says, and when': 'Che cosa dice, e quando',
  'Times from the start. Touch a line to hear it.': 'Tempi dalla partenza. Tocca una riga per sentirla.',
  '{n} calls and tones, {length}, about {size} MB.': '{n} avvisi e suoni, {length}, circa {size} MB.',
  'Without room between others and left out: {n}.': 'Senza posto tra gli altri e lasciati fuori: {n}.',
  'Save as MP3': 'Salva come MP3',
  'Give it to another app': 'Passalo a un’altra app',
  'Save the words (WebVTT)': 'Salva le parole (WebVTT)',
  'A moment …': 'Un momento …',
  'One knock: it plays': 'Un colpo: sta suonando',
  'Countdown: three notes, the long fourth is the start':
    'Conto alla rovescia: tre note, la quarta lunga è la partenza',
  'Five notes: the end': 'Cinque note: la fine',
  'This session has a part that ends by a press, or by distance without a pace: no clock can tell when.':
    'Questa seduta ha una parte che finisce con una pressione, o a distanza senza un passo: nessun orologio può dire quando.',
  'The voice could not be loaded. Try again with a network.':
    'La voce non si è potuta caricare. Riprova con la rete.',
  'an end that a clock can tell': 'una fine che un orologio possa dire',
};
