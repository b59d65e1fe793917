import type { Catalogue } from '../../text.ts';

export const aloud: Catalogue = {
  '{n} s||seconds': '{n} s',
  '{n} min': '{n} min',
  'At the start': 'Beim Start',
  '{span} before||the start': '{span} vorher',
  'Start it at the gun.': 'Starte sie beim Startschuss.',
  'Start it as you cross the start line.': 'Starte sie, wenn du über die Startlinie läufst.',
  'Start it {span} before the gun. A knock tells that it plays; then three short notes count down, and the long fourth is the gun.':
    'Starte sie {span} vor dem Startschuss. Ein Klopfen sagt dir, dass sie läuft; dann zählen drei kurze Töne herunter, der lange vierte ist der Startschuss.',
  'Start it {span} before you cross the start line. A knock tells that it plays; then three short notes count down, and the long fourth is the start.':
    'Starte sie {span}, bevor du über die Startlinie läufst. Ein Klopfen sagt dir, dass sie läuft; dann zählen drei kurze Töne herunter, der lange vierte ist dein Start.',
  'Sound file': 'Tondatei',
  'The whole plan said aloud, as one file: for a player, a watch that plays music, or a phone that locks its screen.':
    'Der ganze Plan gesprochen, als eine Datei: für einen Player, eine Uhr, die Musik abspielt, oder ein Handy, das den Bildschirm sperrt.',
  'What the file is to say': 'Was die Datei sagen soll',
  'What is said': 'Was gesagt wird',
  'The race plan': 'Der Rennplan',
  'The practice session': 'Die Trainingseinheit',
  'Where you should be by now': 'Wo du gerade sein solltest',
  'Every kilometre': 'Jeden Kilometer',
  'Every mile': 'Jede Meile',
  'Checkpoints alone': 'Nur an Kontrollpunkten',
  'Voice||of the sound file': 'Stimme',
  'Usual||voice': 'Normal',
  'Loud: for a crowd, harsher': 'Laut: fürs Gedränge, schärfer',
  'Start the file': 'Datei starten',
  'It goes by the clock and knows nothing of where you are: it says where the plan has you. Paused, it is late by as long.':
    'Sie läuft nach der Uhr und weiß nicht, wo du bist: Sie sagt, wo du nach Plan wärst. Hältst du sie an, hinkt sie um so viel hinterher.',
  'The file': 'Die Datei',
  'What it says, and when': 'Was sie sagt und wann',
  'Times from the start. Touch a line to hear it.':
    'Zeiten ab dem Start. Tippe eine Zeile an, um sie zu hören.',
  '{n} calls and tones, {length}, about {size} MB.': '{n} Ansagen und Töne, {length}, etwa {size} MB.',
  'Without room between others and left out: {n}.': 'Kein Platz zwischen anderen, daher weggelassen: {n}.',
  'Save as MP3': 'Als MP3 sichern',
  'Give it to another app': 'An eine andere App geben',
  'Save the words (WebVTT)': 'Wortlaut sichern (WebVTT)',
  'A moment …': 'Einen Moment …',
  'One knock: it plays': 'Ein Klopfen: Sie läuft',
  'Countdown: three notes, the long fourth is the start':
    'Countdown: drei Töne, der lange vierte ist der Start',
  'Five notes: the end': 'Fünf Töne: das Ende',
  'This session has a part that ends by a press, or by distance without a pace: no clock can tell when.':
    'Diese Einheit hat einen Teil, der mit einem Tastendruck endet oder nach einer Strecke ohne Tempovorgabe: Keine Uhr kann sagen, wann.',
  'The voice could not be loaded. Try again with a network.':
    'Die Stimme konnte nicht geladen werden. Versuch es noch einmal mit Netz.',
  'an end that a clock can tell': 'ein Ende, das eine Uhr bestimmen kann',
};
