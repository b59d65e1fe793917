import type { Catalogue } from '../../text.ts';

export const fuel: Catalogue = {
  '{lower} to {upper} g of carbohydrate for each kg of body mass':
    '{lower} à {upper} g de glucides par kg de poids',
  '{lower} to {upper} g of carbohydrate ({lowerKg} to {upperKg} g for each kg)':
    '{lower} à {upper} g de glucides ({lowerKg} à {upperKg} g par kg)',
  'For less than an hour: eat as usual.': 'Pour moins d’une heure : mange comme d’habitude.',
  'The {n} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    'Les {n} heures d’avant : {range} par 24 heures, tous repas compris, et peu de course. C’est beaucoup à manger : essaie d’abord avant une sortie longue.',
  'From {fewest} to {most} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    'De {fewest} à {most} heures avant : {range} par 24 heures, tous repas compris, et peu de course. C’est beaucoup à manger : essaie d’abord avant une sortie longue.',
  'In the plan now: nothing to take. The voice tells you 200 to 300 m ahead.':
    'Dans le plan pour l’instant : rien à prendre. La voix te prévient 200 à 300 m avant.',
  'In the plan now: {list} {unit}. The voice tells you 200 to 300 m ahead.':
    'Dans le plan pour l’instant : {list} {unit}. La voix te prévient 200 à 300 m avant.',
  '{item} at {place}': '{item} à {place}',
  Fuel: 'Ravitaillement',
  'What to carry and when to take it, so that water follows. Only what you have practised.':
    'Ce qu’il faut emporter et quand le prendre, pour que de l’eau suive. Seulement ce que tu as testé à l’entraînement.',
  'How you fuel': 'Comment tu te ravitailles',
  'Fuel plan': 'Plan de ravitaillement',
  'On the way': 'En route',
  'Under an hour nothing is needed on the way.': 'En dessous d’une heure, rien n’est nécessaire en route.',
  'For {time} of running {lower} to {upper} g of carbohydrate an hour is usual, whatever you weigh.':
    'Pour {time} de course, {lower} à {upper} g de glucides par heure sont d’usage, quel que soit ton poids.',
  'Put into the plan': 'Mettre dans le plan',
  Water: 'Eau',
  'No water stations in the plan yet. Put them on the course, or into the plan.':
    'Pas encore de point d’eau dans le plan. Place-les sur le parcours ou dans le plan.',
  Breakfast: 'Petit déjeuner',
  '{fewest} to {most} hours before the gun: {range}. {advice}':
    '{fewest} à {most} heures avant le coup de pistolet : {range}. {advice}',
  'The days before': 'Les jours d’avant',
  Clock: 'Chrono',
  What: 'Quoi',
  'Water at': 'Eau à',
  'To carry: {count}, {grams} g in all, {rate} g an hour.':
    'À emporter : {count}, {grams} g en tout, {rate} g par heure.',
  'Take it': 'Quand le prendre',
  'Half-way': 'À mi-course',
  'At 10 miles': 'À 10 miles',
  'By the hour': 'Par heure',
  'Carbohydrate an hour': 'Glucides par heure',
  'What you take': 'Ce que tu prends',
  'Carbohydrate in one': 'Glucides dans un',
  'The packet says it.': 'C’est écrit sur l’emballage.',
  'Body mass': 'Poids',
  'For breakfast and the days before. It stays on this device; leave it out and figures are for each kg.':
    'Pour le petit déjeuner et les jours d’avant. Il reste sur cet appareil ; sans lui, les chiffres sont par kg.',
  'Write grams an hour as a number, 1 to {n}.': 'Écris les grammes par heure en chiffres, de 1 à {n}.',
  'Write the carbohydrate of one as grams, 1 to {n}: it stands on the packet.':
    'Écris les glucides d’une unité en grammes, de 1 à {n} : c’est sur l’emballage.',
  'Burke et al. 2011; Jeukendrup 2014': 'Burke et al. 2011 ; Jeukendrup 2014',
  'Thomas et al. 2016, joint position statement': 'Thomas et al. 2016, prise de position commune',
  'joint position statement 2016, as quoted by a secondary page; the statement itself not seen':
    'prise de position commune 2016, citée d’après une page secondaire ; le texte lui-même non vu',
  'The breakfast that you know from long runs: bread, oats, rice or the like, little fat and fibre. Nearer the gun, the lower figure.':
    'Le petit déjeuner que tu connais des sorties longues : pain, flocons d’avoine, riz ou semblable, peu de graisses et de fibres. Plus près du départ, le chiffre le plus bas.',
  'Wallis and Podlogar 2022': 'Wallis et Podlogar 2022',
  'two to three hours before, and the choice of food: common practice, no source':
    'deux à trois heures avant, et le choix des aliments : pratique courante, sans source',
  'Under an hour nothing is needed on the way. A rinse of the mouth is enough.':
    'En dessous d’une heure, rien n’est nécessaire en route. Se rincer la bouche suffit.',
  'For a race of this length {lower} to {upper} g an hour is usual. More only if you have practised it.':
    'Pour une course de cette durée, {lower} à {upper} g par heure sont d’usage. Davantage seulement si tu t’y es entraîné.',
  'This comes to {g} g an hour over the whole race: the first one is not at the start, and none falls into the last quarter of an hour.':
    'Cela fait {g} g par heure sur toute la course : le premier n’est pas au départ, et aucun ne tombe dans le dernier quart d’heure.',
  'No water follows one of these: carry some, or move it by hand.':
    'Pas d’eau après l’un d’eux : emportes-en, ou déplace-le à la main.',
  'One of these waits long for water. Look whether a station is missing.':
    'L’un d’eux attend longtemps l’eau. Regarde s’il manque un ravitaillement.',
  'This race ends before 10 miles.': 'Cette course finit avant 10 miles.',
  'Two or three sips after the gel.': 'Deux ou trois gorgées après le gel.',
  'A sip or two if you are thirsty; else run on.': 'Une gorgée ou deux si tu as soif ; sinon continue.',
  'instead of {place}': 'au lieu de {place}',
};
