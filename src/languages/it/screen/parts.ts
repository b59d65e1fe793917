import type { Catalogue } from '../../text.ts';

export const parts: Catalogue = {
  'Plan||noun': 'Piano',
  'Practice||noun': 'Allenamento',
  'Rehearse||verb': 'Prova',
  'Run||verb': 'Corsa',
  'Past runs': 'Corse fatte',
  Screens: 'Schermate',
  'Calls, newest first': 'Avvisi, il più recente prima',
  '(tone)': '(suono)',
  'Seconds ahead or behind over the distance; the grey band holds the truth 19 times in 20':
    'Secondi di vantaggio o di ritardo lungo la distanza; la fascia grigia contiene la verità 19 volte su 20',
  ahead: 'avanti',
  behind: 'indietro',
  'Nothing to draw yet': 'Ancora niente da disegnare',
  '{n} {unit}': '{n} {unit}',
  'At {place}: {n} seconds ahead': {
    one: 'A {place}: {n} secondo avanti',
    other: 'A {place}: {n} secondi avanti',
  },
  'At {place}: {n} seconds behind': {
    one: 'A {place}: {n} secondo indietro',
    other: 'A {place}: {n} secondi indietro',
  },
  'Hold for {n} seconds': 'Tieni premuto {n} secondi',
  'The screens are not in {language} yet: they are in English.':
    'Le schermate non sono ancora in {language}: sono in inglese.',
  'The screens in {language} could not be loaded. Open the page again with a network.':
    'Le schermate in {language} non si sono potute caricare. Riapri la pagina con la rete.',
  'There is no voice in {language} yet: calls are in English.':
    'Non c’è ancora una voce in {language}: gli avvisi sono in inglese.',
  'The voice in {language} could not be loaded: calls are in English.':
    'La voce in {language} non si è potuta caricare: gli avvisi sono in inglese.',
  Language: 'Lingua',
  'This screen could not be loaded. Open the page again with a network.':
    'Questa schermata non si è potuta caricare. Riapri la pagina con la rete.',
  'This browser keeps no pages for later: Soundline needs a network here.':
    'Questo browser non conserva pagine: qui Soundline ha bisogno della rete.',
  'Being stored for use without a network …': 'Si conserva per l’uso senza rete …',
  'Stored for use without a network. The voice is checked at the first touch.':
    'Salvato per l’uso senza rete. La voce si verifica al primo tocco.',
  'Ready offline.': 'Pronta senza rete.',
  'Not ready offline. Open the page again with a network.':
    'Non pronta senza rete. Riapri la pagina con la rete.',
  'A newer version is here.': 'C’è una versione più nuova.',
  'Take it now': 'Prendila ora',
  'The voice is being loaded ({size} MB).': 'Si carica la voce ({size} MB).',
  'No sound: the voice could not be loaded. {why}': 'Nessun suono: la voce non si è potuta caricare. {why}',
  'on plan': 'in linea',
  'no reading': 'nessuna lettura',
  'No reading yet': 'Ancora nessuna lettura',
  'On plan, give or take {sd}': 'In linea col piano, più o meno {sd}',
  '{seconds} seconds ahead, give or take {sd}': {
    one: '{seconds} secondo avanti, più o meno {sd}',
    other: '{seconds} secondi avanti, più o meno {sd}',
  },
  '{seconds} seconds behind, give or take {sd}': {
    one: '{seconds} secondo indietro, più o meno {sd}',
    other: '{seconds} secondi indietro, più o meno {sd}',
  },
  'To the content': 'Al contenuto',
};
