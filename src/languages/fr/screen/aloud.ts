import type { Catalogue } from '../../text.ts';

export const aloud: Catalogue = {
  '{n} s||seconds': '{n} s',
  '{n} min': '{n} min',
  'At the start': 'Au départ',
  '{span} before||the start': '{span} avant',
  'Start it at the gun.': 'Lance-le au coup de pistolet.',
  'Start it as you cross the start line.': 'Lance-le en passant la ligne de départ.',
  'Start it {span} before the gun. A knock tells that it plays; then three short notes count down, and the long fourth is the gun.':
    'Lance-le {span} avant le coup de pistolet. Un petit coup signale qu’il joue ; puis trois notes brèves décomptent, et la quatrième, longue, est le coup de pistolet.',
  'Start it {span} before you cross the start line. A knock tells that it plays; then three short notes count down, and the long fourth is the start.':
    'Lance-le {span} avant de passer la ligne de départ. Un petit coup signale qu’il joue ; puis trois notes brèves décomptent, et la quatrième, longue, est le départ.',
  'Sound file': 'Fichier audio',
  'The whole plan said aloud, as one file: for a player, a watch that plays music, or a phone that locks its screen.':
    'Tout le plan dit à voix haute, en un seul fichier : pour un baladeur, une montre qui lit la musique ou un téléphone qui verrouille son écran.',
  'What the file is to say': 'Ce que le fichier doit dire',
  'What is said': 'Ce qui est dit',
  'The race plan': 'Le plan de course',
  'The practice session': 'La séance d’entraînement',
  'Where you should be by now': 'Où tu devrais être à cet instant',
  'Every kilometre': 'Chaque kilomètre',
  'Every mile': 'Chaque mile',
  'Checkpoints alone': 'Seulement les points de passage',
  'Voice||of the sound file': 'Voix',
  'Usual||voice': 'Normale',
  'Loud: for a crowd, harsher': 'Forte : pour la foule, plus dure',
  'Start the file': 'Lancer le fichier',
  'It goes by the clock and knows nothing of where you are: it says where the plan has you. Paused, it is late by as long.':
    'Il suit le chrono et ignore où tu es : il dit où tu serais selon le plan. Mis en pause, il retarde d’autant.',
  'The file': 'Le fichier',
  'What it says, and when': 'Ce qu’il dit, et quand',
  'Times from the start. Touch a line to hear it.':
    'Temps depuis le départ. Touche une ligne pour l’entendre.',
  '{n} calls and tones, {length}, about {size} MB.': '{n} annonces et sons, {length}, environ {size} Mo.',
  'Without room between others and left out: {n}.':
    'Sans place entre les autres, donc laissés de côté : {n}.',
  'Save as MP3': 'Enregistrer en MP3',
  'Give it to another app': 'Passer à une autre appli',
  'Save the words (WebVTT)': 'Enregistrer le texte (WebVTT)',
  'A moment …': 'Un instant …',
  'One knock: it plays': 'Un petit coup : il joue',
  'Countdown: three notes, the long fourth is the start':
    'Décompte : trois notes, la quatrième, longue, est le départ',
  'Five notes: the end': 'Cinq notes : la fin',
  'This session has a part that ends by a press, or by distance without a pace: no clock can tell when.':
    'Cette séance a une partie qui finit par un appui, ou par une distance sans allure : aucun chrono ne peut dire quand.',
  'The voice could not be loaded. Try again with a network.':
    'La voix n’a pas pu être chargée. Réessaie avec du réseau.',
  'an end that a clock can tell': 'une fin qu’un chrono peut dire',
};
