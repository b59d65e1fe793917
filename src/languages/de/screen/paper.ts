import type { Catalogue } from '../../text.ts';

export const paper: Catalogue = {
  'clock||column': 'Uhr',
  'take||column': 'nimm',
  'split||column': 'Split',
  'safe||goal': 'sicher',
  'dream||goal': 'Traum',
  'tape here, under the other end': 'hier kleben, unter das andere Ende',
  'Wrist band': 'Armband',
  '{name}: wrist band': '{name}: Armband',
  'Cut along the outer line. Fold along the dashes, so that the clock lies outside and the splits behind it. Wrap it around the wrist and tape the ends together. ○ offered by the race, ◆ yours: each is to be had before the line that it stands in.':
    'Schneide an der äußeren Linie aus. Falte an den Strichen, sodass die Spalte „Uhr“ außen und die Splits dahinter liegen. Lege es ums Handgelenk und klebe die Enden zusammen. ○ bietet das Rennen, ◆ hast du dabei: Beides kommt vor der Linie, in der es steht.',
  Paper: 'Papier',
  "A wrist band and a race sheet, one A4 page each. Print both, or choose the page in the print window. Print at 100 %, without the browser's own headers.":
    'Ein Armband und ein Rennblatt, je eine A4-Seite. Drucke beide oder wähle die Seite im Druckfenster. Drucke mit 100 %, ohne die Kopfzeilen des Browsers.',
  'Boards||on the road': 'Tafeln',
  Kilometres: 'Kilometer',
  Miles: 'Meilen',
  Print: 'Drucken',
  'Race sheet': 'Rennblatt',
  Before: 'Davor',
  'Not planned yet: see Race day.': 'Noch nicht geplant: siehe Renntag.',
  Checkpoints: 'Kontrollpunkte',
  'Cut-offs': 'Zeitlimits',
  'Water and fuel': 'Wasser und Verpflegung',
  'None in the plan.': 'Nichts im Plan.',
  'Take care': 'Zu beachten',
  'Opening: to {place} at {pace}, {n} s per km slower than goal pace. No more than that.':
    'Startphase: bis {place} mit {pace}, {n} s pro km langsamer als Zieltempo. Nicht mehr als das.',
  'Opening: to {place} at {pace}, {n} s per km quicker than goal pace. No more than that.':
    'Startphase: bis {place} mit {pace}, {n} s pro km schneller als Zieltempo. Nicht mehr als das.',
  'Push: from {place} at {pace}, if the legs allow it.':
    'Endspurt: ab {place} mit {pace}, wenn die Beine es zulassen.',
  'On hills keep the effort, not the pace; the times at the checkpoints know the hills.':
    'An Hügeln behalte die Anstrengung, nicht das Tempo; die Zeiten an den Kontrollpunkten berücksichtigen die Hügel.',
  'Then settle: {pace} to the finish.': 'Dann gleichmäßig: {pace} bis ins Ziel.',
  'From the line: {pace} to the finish.': 'Ab der Linie: {pace} bis ins Ziel.',
  'Then settle: {pace} to {place}.': 'Dann gleichmäßig: {pace} bis {place}.',
  'From the line: {pace} to {place}.': 'Ab der Linie: {pace} bis {place}.',
  '{time} by your own clock': '{time} netto, nach deiner eigenen Uhr',
  "{time} by the gun's clock": '{time} brutto, ab dem Startschuss',
  'flag {time}, by the gun': 'Fahne {time}, brutto',
  'flag {time}, by their own clock': 'Fahne {time}, netto',
  'Goal pace': 'Zieltempo',
  '{perKm}, {perMile}': '{perKm}, {perMile}',
  'The plan finishes in': 'Der Plan ist im Ziel nach',
  'Safe goal': 'Sichere Zielzeit',
  'Dream goal': 'Traumzeit',
  'water: {text}': 'Wasser: {text}',
  '{time} after the gun': '{time} nach dem Startschuss',
  'half||place': 'Hälfte',
};
