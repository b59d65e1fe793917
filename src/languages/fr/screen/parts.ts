import type { Catalogue } from '../../text.ts';

export const parts: Catalogue = {
  'Plan||noun': 'Plan',
  'Practice||noun': 'Séances',
  'Rehearse||verb': 'Répéter',
  'Run||verb': 'Courir',
  'Past runs': 'Sorties passées',
  Screens: 'Écrans',
  'Calls, newest first': 'Annonces, la plus récente d’abord',
  '(tone)': '(son)',
  'Seconds ahead or behind over the distance; the grey band holds the truth 19 times in 20':
    'Secondes d’avance ou de retard sur la distance ; la bande grise contient la vérité 19 fois sur 20',
  ahead: 'avance',
  behind: 'retard',
  'Nothing to draw yet': 'Rien à dessiner pour l’instant',
  '{n} {unit}': '{n} {unit}',
  'At {place}: {n} seconds ahead': {
    one: 'À {place} : {n} seconde d’avance',
    other: 'À {place} : {n} secondes d’avance',
  },
  'At {place}: {n} seconds behind': {
    one: 'À {place} : {n} seconde de retard',
    other: 'À {place} : {n} secondes de retard',
  },
  'Hold for {n} seconds': 'Maintiens {n} secondes',
  'The screens are not in {language} yet: they are in English.':
    'Les écrans n’existent pas encore dans cette langue ({language}) : ils sont en anglais.',
  'The screens in {language} could not be loaded. Open the page again with a network.':
    'Les écrans dans cette langue ({language}) n’ont pas pu être chargés. Rouvre la page avec du réseau.',
  'There is no voice in {language} yet: calls are in English.':
    'Il n’y a pas encore de voix dans cette langue ({language}) : les annonces sont en anglais.',
  'The voice in {language} could not be loaded: calls are in English.':
    'La voix dans cette langue ({language}) n’a pas pu être chargée : les annonces sont en anglais.',
  Language: 'Langue',
  'This screen could not be loaded. Open the page again with a network.':
    'Cet écran n’a pas pu être chargé. Rouvre la page avec du réseau.',
  'This browser keeps no pages for later: Soundline needs a network here.':
    'Ce navigateur ne garde aucune page pour plus tard : ici, Soundline a besoin du réseau.',
  'Being stored for use without a network …': 'Enregistrement pour un usage sans réseau …',
  'Stored for use without a network. The voice is checked at the first touch.':
    'Enregistré pour fonctionner sans réseau. La voix est vérifiée au premier contact.',
  'Ready offline.': 'Prêt hors ligne.',
  'Not ready offline. Open the page again with a network.':
    'Pas prêt hors ligne. Rouvre la page avec du réseau.',
  'A newer version is here.': 'Une nouvelle version est là.',
  'Take it now': 'La prendre maintenant',
  'The voice is being loaded ({size} MB).': 'La voix se charge ({size} Mo).',
  'No sound: the voice could not be loaded. {why}': 'Pas de son : la voix n’a pas pu être chargée. {why}',
  'on plan': 'dans les temps',
  'no reading': 'pas de mesure',
  'No reading yet': 'Pas encore de mesure',
  'On plan, give or take {sd}': 'Dans les temps, à {sd} près',
  '{seconds} seconds ahead, give or take {sd}': {
    one: '{seconds} seconde d’avance, à {sd} près',
    other: '{seconds} secondes d’avance, à {sd} près',
  },
  '{seconds} seconds behind, give or take {sd}': {
    one: '{seconds} seconde de retard, à {sd} près',
    other: '{seconds} secondes de retard, à {sd} près',
  },
  'To the content': 'Au contenu',
};
