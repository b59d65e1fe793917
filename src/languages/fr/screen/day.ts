import type { Catalogue } from '../../text.ts';

export const day: Catalogue = {
  'Today.': 'Aujourd’hui.',
  'Tomorrow.': 'Demain.',
  'In {n} days.': 'Dans {n} jours.',
  'That day is over.': 'Ce jour est passé.',
  'Race day': 'Jour de course',
  'From waking to the gun, by the clock.': 'Du réveil au coup de pistolet, heure par heure.',
  'What decides the day': 'Ce qui décide de la journée',
  'The day by the clock': 'La journée heure par heure',
  'evening before': 'la veille au soir',
  'Into the calendar (.ics)': 'Ajouter à l’agenda (.ics)',
  'With the date of the race, the day goes into your calendar.':
    'Avec la date de la course, la journée entre dans ton agenda.',
  'Said aloud': 'À voix haute',
  'On race day this page tells you each step, in the same voice as in the race, as long as it is open and the screen is on. A phone puts pages to sleep: the calendar is the one that rings for certain.':
    'Le jour de la course, cette page te dit chaque étape, avec la même voix qu’en course, tant qu’elle est ouverte et l’écran allumé. Un téléphone endort les pages : seul l’agenda sonne à coup sûr.',
  'Tell me each step': 'Dis-moi chaque étape',
  'Stop telling me': 'Ne plus rien dire',
  'Hear how it sounds': 'Écouter un exemple',
  'Next: {what}. Keep this page open.': 'À suivre : {what}. Garde cette page ouverte.',
  '{day}/{month}': '{day}/{month}',
  'The last two weeks': 'Les deux dernières semaines',
  'Fill in the date, your running days and your weekly distance to see the last two weeks day by day: less running, as quick as ever.':
    'Indique la date, tes jours de course et ta distance par semaine pour voir les deux dernières semaines jour par jour : courir moins, aussi vite que d’habitude.',
  'Less running, as quick as ever: {first} % less than your usual week, then {second} % less.':
    'Courir moins, toujours aussi vite : {first} % de moins que ta semaine habituelle, puis {second} % de moins.',
  'Date of the race': 'Date de la course',
  'The gun goes at': 'Coup de pistolet à',
  'The pen closes before the gun': 'Le sas ferme, avant le départ',
  'Travel, door to race': 'Trajet, porte à porte',
  'Temperature at the start': 'Température au départ',
  'You run in a week': 'Tu cours par semaine',
  'On which days you run': 'Les jours où tu cours',
  'Your long run is on': 'Ta sortie longue est le',
  'This needs {expected}.': 'Il faut ici : {expected}.',
  '{time}: {what}. {reason}': '{time} : {what}. {reason}',
  '{what} at {time}': '{what} à {time}',
  'All steps, one after the other.': 'Toutes les étapes, l’une après l’autre.',
  'Take an old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Prends un vieux haut, ou un sac-poubelle avec des trous pour la tête et les bras ; enlève-le juste avant le coup de pistolet.',
  'An old warm top, a bin bag with holes for head and arms over it, and gloves; take them off just before the gun.':
    'Un vieux haut chaud, par-dessus un sac-poubelle avec des trous pour la tête et les bras, et des gants ; enlève le tout juste avant le coup de pistolet.',
  'An old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Un vieux haut, ou un sac-poubelle avec des trous pour la tête et les bras ; enlève-le juste avant le coup de pistolet.',
  'Nothing over the race kit, unless it rains or blows: then a bin bag with holes.':
    'Rien sur la tenue de course, sauf s’il pleut ou vente : alors un sac-poubelle avec des trous.',
  'Nothing over the race kit. Stand in the shade, and wet your head if there is water.':
    'Rien sur la tenue de course. Reste à l’ombre, et mouille-toi la tête s’il y a de l’eau.',
  'Fradkin et al. 2010: a warm-up helped in 79 % of criteria over 32 studies':
    'Fradkin et al. 2010 : l’échauffement a aidé pour 79 % des critères de 32 études',
  '{lower} to {upper} g of carbohydrate, as much as you are used to. {text}':
    '{lower} à {upper} g de glucides, autant que tu en as l’habitude. {text}',
  '{lower} to {upper} g of carbohydrate for each kg of body mass, as much as you are used to. {text}':
    '{lower} à {upper} g de glucides par kg de poids, autant que tu en as l’habitude. {text}',
  'Get up': 'Se lever',
  'Time to eat and leave without hurry. Ill or feverish? Stay at home.':
    'Le temps de manger et de partir sans hâte. Malade ou fiévreux ? Reste à la maison.',
  'Breakfast, packed the evening before': 'Petit déjeuner, préparé la veille',
  'Wallis and Podlogar 2022: 1 to 4 g/kg in the 1 to 4 hours before':
    'Wallis et Podlogar 2022 : 1 à 4 g/kg dans les 1 à 4 heures d’avant',
  'Leave||for the race': 'Partir',
  '{n} min of travel.': '{n} min de trajet.',
  'Last full drink': 'Dernière vraie boisson',
  'From here on only sips if thirsty, so that nothing is left to lose in the pen.':
    'Ensuite seulement des gorgées si tu as soif, pour ne plus avoir à te soulager dans le sas.',
  Arrive: 'Arriver',
  'Toilet first, then the bag, then a look at the way to the pen.':
    'D’abord les toilettes, puis la consigne, puis un coup d’œil au chemin du sas.',
  'Warm-up: {n} min easy': 'Échauffement : {n} min facile',
  'So easy that you could talk; off the road.': 'Si facile que tu pourrais parler ; hors de la route.',
  '{n} strides': '{n} lignes droites',
  '20 seconds each at a little quicker than race pace, a walk back between.':
    '20 secondes chacune un peu plus vite que l’allure de course, retour en marchant.',
  'Warm kit off, layers on': 'Survêtement enlevé, vieux habits mis',
  'In the pen': 'Dans le sas',
  'It closes early: keep the layers on and move on the spot.':
    'Il ferme tôt : garde les vieux habits et bouge sur place.',
  'Layers off for the last minutes. Have the run open on the phone, waiting for the gun.':
    'Vieux habits enlevés pour les dernières minutes. Garde la course ouverte sur le téléphone, dans l’attente du coup de pistolet.',
  'Your own clock starts at the line.': 'Ton propre chrono part à la ligne.',
  'a minute of the day, 0 to 1439': 'une minute du jour, 0 à 1439',
  'minutes before the gun, 0 to 90': 'minutes avant le coup de pistolet, 0 à 90',
  'minutes of travel, 0 to 600': 'minutes de trajet, 0 à 600',
  'degrees Celsius, -40 to 50': 'degrés Celsius, −40 à 50',
  'a race of 5 minutes to 55 hours, in seconds': 'une course de 5 minutes à 55 heures, en secondes',
  'kilograms, 25 to 250': 'kilogrammes, 25 à 250',
  'In it {n} times 1 km at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Dont {n} fois 1 km à allure objectif, {pace}, deux minutes faciles entre chaque. Arrête-toi frais.',
  'In it {n} times 400 m at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Dont {n} fois 400 m à allure objectif, {pace}, deux minutes faciles entre chaque. Arrête-toi frais.',
  'Rest||day': 'Repos',
  'As in your usual week. A walk is fine.': 'Comme dans ta semaine habituelle. Une marche convient.',
  '{distance} easy': '{distance} facile',
  'You can talk in sentences.': 'Tu peux parler en phrases entières.',
  'Easy, with four strides at the end.': 'Facile, avec quatre lignes droites à la fin.',
  '{distance} steady, the longest of the week': '{distance} régulier, la plus longue de la semaine',
  'Easy. Practise breakfast, gel and water once more.':
    'Facile. Répète encore une fois petit déjeuner, gel et eau.',
  'Easy, the last ten minutes at goal pace, {pace}.':
    'Facile, les dix dernières minutes à allure objectif, {pace}.',
  '{distance} with goal pace in it': '{distance}, dont une partie à allure objectif',
  '{distance} very easy': '{distance} très facile',
  'Then three strides of 20 seconds. Lay out kit, number and breakfast.':
    'Puis trois lignes droites de 20 secondes. Prépare tenue, dossard et petit déjeuner.',
  'Race: {race}': 'Course : {race}',
  'By the plan.': 'Selon le plan.',
  'Bosquet et al. 2007: two weeks, volume down 41 to 60 %, intensity and frequency kept':
    'Bosquet et al. 2007 : deux semaines, volume réduit de 41 à 60 %, intensité et fréquence maintenues',
};
