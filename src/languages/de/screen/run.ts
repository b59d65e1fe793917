import type { Catalogue } from '../../text.ts';

export const run: Catalogue = {
  'Loud voice': 'Laute Stimme',
  'For a crowd: harsher, and as loud as it can be.': 'Im Gedränge: härter und so laut, wie es geht.',
  'A run was cut off': 'Ein Lauf wurde unterbrochen',
  'Its last sign was {time} ago. Its log is safe on this device, and its clock has gone on.':
    'Das letzte Lebenszeichen ist {time} her. Die Aufzeichnung ist auf diesem Gerät sicher, und die Uhr ist weitergelaufen.',
  'Go on with it': 'Fortsetzen',
  'It is over': 'Er ist vorbei',
  'In a pocket or on an arm': 'In der Tasche oder am Arm',
  'A guard swallows touches and rain. One finger that rests opens it.':
    'Ein Schutz fängt Berührungen und Regen ab. Ein Finger, der liegen bleibt, öffnet ihn.',
  "Use the headset's buttons": 'Tasten am Headset benutzen',
  'One press marks a board, two ask, three hush; with a pacer in the plan, three say level with them. Your own music stops for it.':
    'Einmal drücken markiert eine Tafel, zweimal fragt, dreimal bringt zum Schweigen; mit Zugläufer im Plan heißt dreimal: auf seiner Höhe. Deine eigene Musik hält dafür an.',
  'Without them your own music plays on, no quieter, and calls sound over it.':
    'Ohne sie spielt deine Musik weiter, nicht leiser, und die Ansagen erklingen darüber.',
  'Guarded: hold to open': 'Geschützt: zum Öffnen halten',
  'No position yet': 'Noch keine Position',
  'Stand in the open. The first may take half a minute.':
    'Stell dich ins Freie. Die erste kann eine halbe Minute dauern.',
  'Position comes': 'Position kommt',
  'Position to {distance} m, as the receiver says': 'Position auf {distance} m, laut Empfänger',
  'Position only to {distance} m': 'Position nur auf {distance} m',
  'It settles within a minute in the open.': 'Im Freien pendelt sie sich in einer Minute ein.',
  'Last position {s} s ago': 'Letzte Position vor {s} s',
  'No position for {s} s': 'Seit {s} s keine Position',
  'Your clock and plan go on.': 'Deine Uhr und dein Plan laufen weiter.',
  'Position refused': 'Position verweigert',
  'Allow it for this page in the browser settings, then switch on again. Without it only the clock runs.':
    'Erlaube sie für diese Seite in den Einstellungen des Browsers und schalte dann wieder ein. Ohne sie läuft nur die Uhr.',
  'This browser has no position': 'Dieser Browser hat keine Position',
  'Only the clock runs.': 'Nur die Uhr läuft.',
  'Screen stays on': 'Bildschirm bleibt an',
  'Screen kept on by a silent video': 'Bildschirm durch stummes Video wach',
  'Screen may go dark': 'Bildschirm kann dunkel werden',
  'Set its time-out in the phone to the longest. Dark means no position.':
    'Stell die Bildschirmsperre des Handys auf die längste Zeit. Dunkel heißt keine Position.',
  'Sound on': 'Ton an',
  'Voice is being loaded': 'Stimme wird geladen',
  'Sound asleep': 'Ton schläft',
  'Touch the screen once.': 'Tippe einmal auf den Bildschirm.',
  'No sound': 'Kein Ton',
  'The voice could not be loaded. Open the page again.':
    'Die Stimme konnte nicht geladen werden. Öffne die Seite noch einmal.',
  Instruments: 'Instrumente',
  'Level with the pacer': 'Auf Höhe des Zugläufers',
  'Quiet for 10 min': '10 min Ruhe',
  'Speak again ({min} min)': 'Wieder sprechen ({min} min)',
  '{name}: {distance} {unit} in {time}.': '{name}: {distance} {unit} in {time}.',
  'Change the plan': 'Plan ändern',
  'Check this phone': 'Handy prüfen',
  'The browser will ask whether this page may know where you are. Soundline needs it to tell how far along the course you are. It stays on this device.':
    'Der Browser fragt gleich, ob diese Seite wissen darf, wo du bist. Soundline braucht das, um zu sagen, wie weit auf der Strecke du bist. Es bleibt auf diesem Gerät.',
  'A browser gives no position to a page that is locked or out of sight. So the screen is kept on, black, for the whole run: turn its brightness down, and do not press the power button.':
    'Ein Browser gibt einer gesperrten oder verdeckten Seite keine Position. Deshalb bleibt der Bildschirm den ganzen Lauf über an, in Schwarz: Stell ihn dunkler und drücke nicht die Ein-/Aus-Taste.',
  'Put your earphones in now. You will hear each call over your own music.':
    'Setz jetzt deine Kopfhörer auf. Du hörst jede Ansage über deiner eigenen Musik.',
  Safety: 'Sicherheit',
  'Traffic, marshals and your body come first. Some races and roads do not allow earphones: their rules and the law decide. Chest pain or faintness: stop and get help.':
    'Verkehr, Streckenposten und dein Körper gehen vor. Manche Rennen und Straßen erlauben keine Kopfhörer: Ihre Regeln und das Gesetz entscheiden. Schmerzen in der Brust oder das Gefühl, ohnmächtig zu werden: anhalten und Hilfe holen.',
  'This run is in another window of this device. Go on there, or close that window and switch on here.':
    'Dieser Lauf ist in einem anderen Fenster dieses Geräts offen. Mach dort weiter oder schließe das Fenster und schalte hier ein.',
  'Practise the day at home': 'Den Tag zu Hause üben',
  'Practised at home a simulated runner runs your plan, in real time, on these very screens; nothing else is simulated.':
    'Beim Üben zu Hause läuft ein simulierter Läufer deinen Plan, in Echtzeit, auf genau diesen Seiten; sonst ist nichts simuliert.',
  'A simulated runner waits for your start.': 'Ein simulierter Läufer wartet auf deinen Start.',
  Gun: 'Startschuss',
  'Gun heard': 'Startschuss gehört',
  'press when it fires': 'drücke, wenn er fällt',
  'press on the line': 'drücke auf der Linie',
  'Or leave your hands alone and run: the start is found when you begin to run.':
    'Oder lass die Hände frei und lauf: Der Start wird gefunden, sobald du losläufst.',
  'Try the sound': 'Ton ausprobieren',
  'No position: by the clock': 'Keine Position: nach der Uhr',
  'Position ±{distance} m': 'Position ±{distance} m',
  'Poor position ±{distance} m': 'Schwache Position ±{distance} m',
  'No position': 'Keine Position',
  'screen may go dark': 'Bildschirm kann dunkel werden',
  'no sound: touch': 'kein Ton: tippen',
  'not recorded': 'keine Aufzeichnung',
  Running: 'Unterwegs',
  'Press at a board. Hold to ask where you stand.':
    'Drücke an einer Tafel. Halte, um zu fragen, wo du stehst.',
  '{figure} s ahead': '{figure} s Vorsprung',
  '{figure} s behind': '{figure} s Rückstand',
  Finished: 'Im Ziel',
  Stopped: 'Beendet',
  'by the gun': 'nach Bruttozeit',
  'against plan': 'gegen den Plan',
  'Save the log': 'Aufzeichnung sichern',
  'This was a practice at home: its log goes when you are done.':
    'Das war eine Übung zu Hause: Die Aufzeichnung verschwindet, wenn du fertig bist.',
  'The log holds every position and press of this run. It stays on this device, under Past runs, until you remove it; save it to have it elsewhere as well.':
    'Die Aufzeichnung enthält jede Position und jeden Tastendruck dieses Laufs. Sie bleibt auf diesem Gerät, unter Rückblick, bis du sie entfernst; sichere sie, um sie auch anderswo zu haben.',
  'What was called': 'Was angesagt wurde',
  '{n} of them could not be sounded.': {
    one: 'Eine davon konnte nicht erklingen.',
    other: '{n} davon konnten nicht erklingen.',
  },
  'Hold again: end the run': 'Noch einmal halten: Lauf beenden',
  'Tones alone': 'Nur Töne',
  Little: 'Wenig',
  'As usual': 'Wie üblich',
  Everything: 'Alles',
  'Your checkpoints, your own food, and what asks you to act.':
    'Deine Kontrollpunkte, deine eigene Verpflegung und alles, worauf du reagieren musst.',
  'Also boards, stations and the signal, where there is time for them.':
    'Dazu Tafeln, Verpflegungsstellen und der Empfang, wo Zeit dafür ist.',
  'Also every board in a short race, and when you have time in hand near the end.':
    'Dazu jede Tafel in einem kurzen Rennen, und wenn du kurz vor dem Ziel Zeit übrig hast.',
  'How much is said': 'Wie viel gesagt wird',
  'No reading': 'Kein Wert',
  'On plan': 'Im Plan',
  '{thing} in {distance} {unit}': '{thing} in {distance} {unit}',
  'push||near the finish': 'Endspurt',
  'On the way a press anywhere marks a board, and a hold asks where you stand.':
    'Unterwegs markiert ein Druck irgendwo auf den Bildschirm eine Tafel; langes Drücken fragt, wie du liegst.',
  'Look at this run': 'Diesen Lauf ansehen',
};
