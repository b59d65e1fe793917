import type { Catalogue } from '../../text.ts';

export const parts: Catalogue = {
  'Plan||noun': 'Plan',
  'Practice||noun': 'Training',
  'Rehearse||verb': 'Proben',
  'Run||verb': 'Laufen',
  'Past runs': 'Rückblick',
  Screens: 'Seiten',
  'Calls, newest first': 'Ansagen, neueste zuerst',
  '(tone)': '(Ton)',
  'Seconds ahead or behind over the distance; the grey band holds the truth 19 times in 20':
    'Sekunden Vorsprung oder Rückstand über die Strecke; das graue Band enthält die Wahrheit 19 von 20 Malen',
  ahead: 'Vorsprung',
  behind: 'Rückstand',
  'Nothing to draw yet': 'Noch nichts zu zeichnen',
  '{n} {unit}': '{n} {unit}',
  'At {place}: {n} seconds ahead': {
    one: 'Bei {place}: {n} Sekunde Vorsprung',
    other: 'Bei {place}: {n} Sekunden Vorsprung',
  },
  'At {place}: {n} seconds behind': {
    one: 'Bei {place}: {n} Sekunde Rückstand',
    other: 'Bei {place}: {n} Sekunden Rückstand',
  },
  'Hold for {n} seconds': '{n} Sekunden halten',
  'The screens are not in {language} yet: they are in English.':
    'Die Seiten gibt es noch nicht auf {language}: Sie sind auf Englisch.',
  'The screens in {language} could not be loaded. Open the page again with a network.':
    'Die Seiten auf {language} konnten nicht geladen werden. Öffne die Seite noch einmal mit Netz.',
  'There is no voice in {language} yet: calls are in English.':
    'Für {language} gibt es noch keine Stimme: Die Ansagen sind auf Englisch.',
  'The voice in {language} could not be loaded: calls are in English.':
    'Die Stimme für {language} konnte nicht geladen werden: Die Ansagen sind auf Englisch.',
  Language: 'Sprache',
  'This screen could not be loaded. Open the page again with a network.':
    'Diese Seite konnte nicht geladen werden. Öffne sie noch einmal mit Netz.',
  'This browser keeps no pages for later: Soundline needs a network here.':
    'Dieser Browser bewahrt keine Seiten für später auf: Soundline braucht hier ein Netz.',
  'Being stored for use without a network …': 'Wird für den Gebrauch ohne Netz gespeichert …',
  'Stored for use without a network. The voice is checked at the first touch.':
    'Für die Nutzung ohne Netz gespeichert. Die Stimme wird bei der ersten Berührung geprüft.',
  'Ready offline.': 'Offline bereit.',
  'Not ready offline. Open the page again with a network.':
    'Nicht offline bereit. Öffne die Seite noch einmal mit Netz.',
  'A newer version is here.': 'Eine neuere Version ist da.',
  'Take it now': 'Jetzt übernehmen',
  'The voice is being loaded ({size} MB).': 'Die Stimme wird geladen ({size} MB).',
  'No sound: the voice could not be loaded. {why}': 'Kein Ton: Die Stimme konnte nicht geladen werden. {why}',
  'on plan': 'im Plan',
  'no reading': 'kein Wert',
  'No reading yet': 'Noch kein Wert',
  'On plan, give or take {sd}': 'Im Plan, plus/minus {sd}',
  '{seconds} seconds ahead, give or take {sd}': {
    one: '{seconds} Sekunde Vorsprung, plus/minus {sd}',
    other: '{seconds} Sekunden Vorsprung, plus/minus {sd}',
  },
  '{seconds} seconds behind, give or take {sd}': {
    one: '{seconds} Sekunde Rückstand, plus/minus {sd}',
    other: '{seconds} Sekunden Rückstand, plus/minus {sd}',
  },
  'To the content': 'Zum Inhalt',
};
