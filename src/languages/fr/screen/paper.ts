import type { Catalogue } from '../../text.ts';

export const paper: Catalogue = {
  'clock||column': 'chrono',
  'take||column': 'prends',
  'split||column': 'partiel',
  'safe||goal': 'sûr',
  'dream||goal': 'rêve',
  'tape here, under the other end': 'scotche ici, sous l’autre bout',
  'Wrist band': 'Bracelet',
  '{name}: wrist band': '{name} : bracelet',
  'Cut along the outer line. Fold along the dashes, so that the clock lies outside and the splits behind it. Wrap it around the wrist and tape the ends together. ○ offered by the race, ◆ yours: each is to be had before the line that it stands in.':
    'Découpe le long du trait extérieur. Plie sur les pointillés, pour que le chrono soit dehors et les partiels derrière. Enroule-le autour du poignet et scotche les bouts ensemble. ○ offert par la course, ◆ à toi : chacun se prend avant la ligne où il figure.',
  Paper: 'Papier',
  "A wrist band and a race sheet, one A4 page each. Print both, or choose the page in the print window. Print at 100 %, without the browser's own headers.":
    'Un bracelet et une fiche de course, une page A4 chacun. Imprime les deux, ou choisis la page dans la fenêtre d’impression. Imprime à 100 %, sans les en-têtes du navigateur.',
  'Boards||on the road': 'Panneaux',
  Kilometres: 'Kilomètres',
  Miles: 'Miles',
  Print: 'Imprimer',
  'Race sheet': 'Fiche de course',
  Before: 'Avant',
  'Not planned yet: see Race day.': 'Pas encore prévu : voir Jour de course.',
  Checkpoints: 'Points de passage',
  'Cut-offs': 'Barrières horaires',
  'Water and fuel': 'Eau et ravitaillement',
  'None in the plan.': 'Rien dans le plan.',
  'Take care': 'À retenir',
  'Opening: to {place} at {pace}, {n} s per km slower than goal pace. No more than that.':
    'Début : jusqu’à {place} à {pace}, {n} s par km plus lent que l’allure objectif. Pas davantage.',
  'Opening: to {place} at {pace}, {n} s per km quicker than goal pace. No more than that.':
    'Début : jusqu’à {place} à {pace}, {n} s par km plus vite que l’allure objectif. Pas davantage.',
  'Push: from {place} at {pace}, if the legs allow it.':
    'Accélération : à partir de {place} à {pace}, si les jambes le permettent.',
  'On hills keep the effort, not the pace; the times at the checkpoints know the hills.':
    'Dans les côtes, garde l’effort, pas l’allure ; les temps aux points de passage tiennent compte des côtes.',
  'Then settle: {pace} to the finish.': 'Puis cale-toi : {pace} jusqu’à l’arrivée.',
  'From the line: {pace} to the finish.': 'Dès la ligne : {pace} jusqu’à l’arrivée.',
  'Then settle: {pace} to {place}.': 'Puis cale-toi : {pace} jusqu’à {place}.',
  'From the line: {pace} to {place}.': 'Dès la ligne : {pace} jusqu’à {place}.',
  '{time} by your own clock': '{time} en temps réel, à ton propre chrono',
  "{time} by the gun's clock": '{time} en temps officiel, depuis le coup de pistolet',
  'flag {time}, by the gun': 'drapeau {time}, temps officiel',
  'flag {time}, by their own clock': 'drapeau {time}, temps réel',
  'Goal pace': 'Allure objectif',
  '{perKm}, {perMile}': '{perKm}, {perMile}',
  'The plan finishes in': 'Le plan finit en',
  'Safe goal': 'Objectif sûr',
  'Dream goal': 'Objectif de rêve',
  'water: {text}': 'Eau. {text}',
  '{time} after the gun': '{time} après le coup de pistolet',
  'half||place': 'mi-course',
};
