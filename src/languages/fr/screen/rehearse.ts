import type { Catalogue } from '../../text.ts';

export const rehearse: Catalogue = {
  'Demo race': 'Course de démonstration',
  'My plan': 'Mon plan',
  'Rate||of a replay': 'Vitesse',
  'Soundline is a voice in your ear while you race. It tells you how many seconds you are ahead of or behind your plan, at the moment it matters. Hear a whole race before you run it.':
    'Soundline est une voix dans ton oreille pendant que tu cours. Elle te dit de combien de secondes tu es en avance ou en retard sur ton plan, au moment où ça compte. Écoute une course entière avant de la courir.',
  Rehearsal: 'Répétition',
  'Between calls the race runs at the rate you choose; while the voice speaks it runs at true speed.':
    'Entre les annonces, la course défile à la vitesse que tu choisis ; pendant que la voix parle, elle va en temps réel.',
  'The race': 'La course',
  '{distance} {unit} in {time}, on a measured course': '{distance} {unit} en {time}, sur un parcours mesuré',
  'Ahead by four.': 'Avance quatre.',
  'Four seconds in hand: above the water line.': 'Quatre secondes de réserve : au-dessus de la ligne d’eau.',
  'Behind by four.': 'Retard quatre.',
  'Four seconds owed: below it.': 'Quatre secondes de dette : au-dessous.',
  Pause: 'Pause',
  'Go on': 'Continuer',
  'End||press': 'Arrêter',
  'Hear the demo race': 'Écouter la course de démonstration',
  'Hear my race': 'Écouter ma course',
  'Where the runner is': 'Où est le coureur',
  time: 'temps',
  'pace /{unit}': 'allure /{unit}',
  finish: 'arrivée',
  'What was said': 'Ce qui a été dit',
  'Your own race': 'Ta propre course',
  '{plan}: distance and goal; the course, food and the morning if you like.':
    '{plan} : distance et objectif ; le parcours, les ravitaillements et le matin si tu veux.',
  'Make a plan': 'Fais un plan',
  'Hear it here, at home: choose “My plan” and press.':
    'Écoute-le ici, à la maison : choisis « Mon plan » et appuie.',
  'On the day {check}, then {run}: the phone in a pocket, the earphones in.':
    'Le jour J, {check}, puis {run} : le téléphone en poche, les écouteurs aux oreilles.',
  'check the phone': 'vérifie le téléphone',
  'switch on': 'allume',
};
