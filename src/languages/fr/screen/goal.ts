import type { Catalogue } from '../../text.ts';

export const goal: Catalogue = {
  Goal: 'Objectif',
  'What have you run lately, and what does it say about this race? A range, not a promise.':
    'Qu’as-tu couru ces derniers temps, et qu’est-ce que cela dit de cette course ? Une fourchette, pas une promesse.',
  'What you know': 'Ce que tu sais',
  'What it says': 'Ce que cela dit',
  'Fill in a recent result to see which times it points to.':
    'Entre un résultat récent pour voir vers quels temps il pointe.',
  'What it would take': 'Ce qu’il faudrait',
  'By formula': 'Par formule',
  '{n} of these come from your own {runs}.': {
    one: 'L’un d’eux vient de tes propres {runs}.',
    other: '{n} d’entre eux viennent de tes propres {runs}.',
  },
  'runs||noun': 'sorties',
  'Added||time': 'Ajout',
  '{distance} {unit} in {time}': '{distance} {unit} en {time}',
  'On a flat course on a normal day. “Added” is for weekly distance and for going long.':
    'Sur un parcours plat, un jour normal. « Ajout » tient compte des kilomètres par semaine et de la distance plus longue.',
  'On a flat course on a normal day.': 'Sur un parcours plat, un jour normal.',
  '5K': '5 km',
  '10K': '10 km',
  'half-way ({distance} {unit})': 'mi-course ({distance} {unit})',
  'What the goal means': 'Ce que l’objectif veut dire',
  '{perKm} per km, {perMile} per mile. By your plan:': '{perKm} par km, {perMile} par mile. Selon ton plan :',
  'Heat and hills': 'Chaleur et côtes',
  'Fill in the temperature and open a course with heights to see what they ask of the goal.':
    'Indique la température et ouvre un parcours avec altitudes pour voir ce qu’ils demandent à l’objectif.',
  'Nothing in what you gave speaks against the goal.': 'Rien dans tes données ne s’oppose à l’objectif.',
  'Revise:': 'À revoir :',
  'Consider:': 'À considérer :',
  'With {climb} m of climbing an even effort takes {percent} % longer than on the flat: the middle of the range here is about {time}.':
    'Avec {climb} m de dénivelé, un effort régulier prend {percent} % de plus que sur le plat : le milieu de la fourchette est ici d’environ {time}.',
  'Results and goal': 'Résultats et objectif',
  'Recent result {n}': 'Résultat récent {n}',
  Distance: 'Distance',
  Time: 'Temps',
  'Weeks ago': 'Il y a combien de semaines',
  'Remove result {n}': 'Retirer le résultat {n}',
  'Add a result': 'Ajouter un résultat',
  'Races or time trials that you ran all out. Two distances say more than one.':
    'Des courses ou des tests courus à fond. Deux distances en disent plus qu’une.',
  'Temperature at the race': 'Température pendant la course',
  'Your goal': 'Ton objectif',
  'For {name}, {distance} {unit}. The plan follows at once.':
    'Pour {name}, {distance} {unit}. Le plan suit aussitôt.',
  'this race': 'cette course',
  'Middle of the range: {time}': 'Milieu de la fourchette : {time}',
  'Quick end of the likely range: {time}': 'Limite rapide de la fourchette probable : {time}',
  'The inner bar holds half of runners with such results, the whole bar four in five. Quicker is left.':
    'La barre intérieure contient la moitié des coureurs avec de tels résultats, la barre entière quatre sur cinq. Plus vite est à gauche.',
  'Likely {quick} to {slow}, middle {middle}; goal {goal}':
    'Probable : {quick} à {slow}, milieu {middle} ; objectif {goal}',
  'middle {time}': 'milieu {time}',
  'goal {time}': 'objectif {time}',
  'The range as a table': 'La fourchette en tableau',
  'what||of the range': 'part',
  'from||a time': 'de',
  'to||a time': 'à',
  'half of runners': 'la moitié des coureurs',
  'four in five': 'quatre sur cinq',
  middle: 'milieu',
  goal: 'objectif',
  'Write the distance as a number, such as 10 or 21.1.':
    'Écris la distance en chiffres, par exemple 10 ou 21,1.',
  'Write the time as hours, minutes and seconds: 47:30 or 1:44:00.':
    'Écris le temps en heures, minutes et secondes : 47:30 ou 1:44:00.',
  'Write the weeks as a number, or leave them out.': 'Écris les semaines en chiffres, ou laisse vide.',
  'Vickers and Vertosick 2016, 2303 runners: the usual formula is about right up to the half marathon, and at least 10 minutes too fast for half of recreational marathoners; the better models were still off by about 14 minutes (root mean square)':
    'Vickers et Vertosick 2016, 2303 coureurs : la formule usuelle est à peu près juste jusqu’au semi-marathon, et trop rapide d’au moins 10 minutes pour la moitié des marathoniens amateurs ; les meilleurs modèles se trompaient encore d’environ 14 minutes (moyenne quadratique)',
  'Width from race-day variation of about 3 %, differences between runners and the age of the result: our own figures, set wide':
    'Largeur d’après la variation du jour d’environ 3 %, les différences entre coureurs et l’âge du résultat : nos propres chiffres, pris larges',
  Riegel: 'Riegel',
  'Riegel 1977, 1981: exponent 1.06, from efforts of 3.5 to 230 minutes':
    'Riegel 1977, 1981 : exposant 1,06, d’efforts de 3,5 à 230 minutes',
  Cameron: 'Cameron',
  'Cameron 1998, fitted to record times': 'Cameron 1998, ajusté aux records',
  'Daniels and Gilbert': 'Daniels et Gilbert',
  'Daniels and Gilbert 1979: oxygen cost of a speed, and the share of the maximum that a duration allows':
    'Daniels et Gilbert 1979 : coût en oxygène d’une vitesse, et part du maximum que permet une durée',
  'Your results point to different times. Leave out any that you did not race all out.':
    'Tes résultats indiquent des temps différents. Laisse de côté ceux que tu n’as pas courus à fond.',
  'Your results are more than half a year old. A recent race or time trial would say more.':
    'Tes résultats ont plus de six mois. Une course ou un test récent en dirait plus.',
  'This race is much longer than those you gave. A result nearer to its length would say more.':
    'Cette course est bien plus longue que celles que tu as données. Un résultat plus proche de sa longueur en dirait plus.',
  'Beyond 3 h 50 min the usual formula was never fitted: take the slow side seriously.':
    'Au-delà de 3 h 50 min, la formule usuelle n’a jamais été ajustée : prends le côté lent au sérieux.',
  'Slowed on purpose: beyond what you have raced or trained for, most runners slow more than the formulas say.':
    'Ralenti exprès : au-delà de ce qu’ils ont couru ou préparé, la plupart des coureurs ralentissent plus que ne le disent les formules.',
  'a race distance between 1 km and 100 km, in metres':
    'une distance de course entre 1 km et 100 km, en mètres',
  'a time for this distance between 2:14 and 16:40 per km, in seconds':
    'un temps pour cette distance entre 2:14 et 16:40 par km, en secondes',
  'days since the race, from 0 to 3650': 'jours depuis la course, de 0 à 3650',
  'Ely et al. 2007: the warmer (heat, sun and humidity together), the slower everybody; who suffers most differs between studies':
    'Ely et al. 2007 : plus il fait chaud (chaleur, soleil et humidité ensemble), plus tout le monde ralentit ; qui souffre le plus diffère selon les études',
  'Minetti et al. 2002: a climb costs more than the same descent gives back':
    'Minetti et al. 2002 : une montée coûte plus que ne rend la même descente',
  'At {n} degrees, do not hold the goal pace. Run by effort, open slower, and let the time be what it is.':
    'À {n} degrés, ne t’accroche pas à l’allure objectif. Cours à l’effort, commence moins vite, et prends le temps comme il vient.',
  'At {n} degrees and with sun or damp air, expect to be slower. Open no quicker than goal pace.':
    'À {n} degrés et avec du soleil ou un air humide, attends-toi à être plus lent. Ne commence pas plus vite que l’allure objectif.',
  '{source}. The limits of {from} and {to} degrees: {practice}':
    '{source}. Les limites de {from} et {to} degrés : {practice}',
  'At or below freezing, ice decides the pace. Warm up longer, and look at the ground before the clock.':
    'Autour de zéro et en dessous, la glace décide de l’allure. Échauffe-toi plus longtemps, et regarde le sol avant le chrono.',
  '{n} m of climbing: slower than the same effort on the flat. Set the goal from a hilly result, or give yourself more minutes.':
    '{n} m de dénivelé : plus lent que le même effort sur le plat. Fixe l’objectif d’après un résultat vallonné, ou donne-toi plus de minutes.',
  '{n} m of climbing will cost some time. Plan by even effort, not even pace.':
    '{n} m de dénivelé coûteront un peu de temps. Prévois un effort régulier, pas une allure régulière.',
  '{source}. The limits of {from} and {to} m a km: {practice}':
    '{source}. Les limites de {from} et {to} m par km : {practice}',
  'Keep your {n} km a week steady: enough for this race.':
    'Garde tes {n} km par semaine : assez pour cette course.',
  'Let the week grow towards {n} km, by no more than a tenth a week, and ease every fourth week.':
    'Fais monter la semaine vers {n} km, d’un dixième par semaine au plus, et allège une semaine sur quatre.',
  'Once a week run 15 to 30 minutes in all at a pace that you could hold for an hour, in pieces with short rests.':
    'Une fois par semaine, cours 15 à 30 minutes en tout à une allure que tu tiendrais une heure, en morceaux avec de courts repos.',
  'Once a week run long and easy, and practise gel, water and breakfast on it.':
    'Une fois par semaine, cours long et facile, en y répétant gel, eau et petit déjeuner.',
  'Once a week run short and quick: 6 to 10 times a minute, with full rest.':
    'Une fois par semaine, cours court et vite : 6 à 10 fois une minute, avec récupération complète.',
  'All the rest easy: you can talk in sentences.':
    'Tout le reste facile : tu peux parler en phrases entières.',
  'This step is more than half a year away. Choose a goal in between, race for it, and ask again.':
    'Cette étape demande plus de six mois. Choisis un objectif intermédiaire, cours une course pour lui, et redemande.',
  'Then race the shorter distance, and put its time in here.':
    'Puis cours la distance plus courte en course, et mets son temps ici.',
  'Daniels: at most one point of the running index in four to six weeks':
    'Daniels : au plus un point de l’indice de course en quatre à six semaines',
  'Kinds and amounts of training: common practice, no source':
    'Types et quantités d’entraînement : pratique courante, sans source',
  'It asks for nothing more than you have shown.': 'Cela ne demande rien de plus que ce que tu as montré.',
  'It asks for {km} km in about {need} (now about {now}): often {fewest} to {most} weeks of steady training, and not everybody gets there.':
    'Cela demande {km} km en environ {need} (maintenant environ {now}) : souvent {fewest} à {most} semaines d’entraînement régulier, et tout le monde n’y arrive pas.',
  '{goal} is gentle: your results point to {quick} to {slow}. A calm race, or room for a quicker goal.':
    '{goal} est prudent : tes résultats indiquent {quick} à {slow}. Une course calme, ou de la place pour un objectif plus rapide.',
  '{goal} fits your results, which point to {quick} to {slow}. The chance on a normal day: {odds}.':
    '{goal} va avec tes résultats, qui indiquent {quick} à {slow}. Les chances un jour normal : {odds}.',
  '{goal} is ambitious: your results point to {quick} to {slow}. It can happen on a very good day: {odds}. Keep a second goal nearer to {middle}.':
    '{goal} est ambitieux : tes résultats indiquent {quick} à {slow}. Un très bon jour, c’est possible : {odds}. Garde un deuxième objectif plus proche de {middle}.',
  '{goal} is beyond what your results show now, {quick} to {slow} (chance: {odds}). Keep it for a later race, and run this one for about {middle}.':
    '{goal} dépasse ce que tes résultats montrent aujourd’hui, {quick} à {slow} (chances : {odds}). Garde-le pour une course plus tard, et cours celle-ci pour environ {middle}.',
  '{time} for a half marathon': 'Semi-marathon en {time}',
  '{time} for a marathon': 'Marathon en {time}',
  '{time} for {distance}': '{distance} en {time}',
  'Vickers and Vertosick 2016: predictions that know the weekly distance are better; fewer kilometres, slower marathon':
    'Vickers et Vertosick 2016 : les prévisions qui connaissent les kilomètres par semaine sont meilleures ; moins de kilomètres, marathon plus lent',
  'How much a weekly kilometre counts is our own cautious figure (common practice, no source)':
    'Le poids d’un kilomètre par semaine est notre propre chiffre prudent (pratique courante, sans source)',
  Formula: 'Formule',
};
