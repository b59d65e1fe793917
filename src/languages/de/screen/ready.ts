import type { Catalogue } from '../../text.ts';

export const ready: Catalogue = {
  Position: 'Position',
  Screen: 'Bildschirm',
  Sound: 'Ton',
  'Earphone delay': 'Verzögerung der Kopfhörer',
  Buttons: 'Tasten',
  Vibration: 'Vibration',
  Steps: 'Schritte',
  Battery: 'Akku',
  Log: 'Aufzeichnung',
  Offline: 'Offline',
  'Refused.': 'Verweigert.',
  'Allow it for this page in the browser and in the system settings. Without it places are told by the plan’s clock.':
    'Erlaube sie für diese Seite im Browser und in den Systemeinstellungen. Ohne sie werden Orte nach der Uhr des Plans angesagt.',
  'This browser has none.': 'Dieser Browser hat keine.',
  'Use another browser.': 'Nimm einen anderen Browser.',
  'Nothing yet.': 'Noch nichts.',
  'Go into the open. The first may take half a minute.':
    'Geh ins Freie. Die erste kann eine halbe Minute dauern.',
  'It comes, and does not say how exact.': 'Sie kommt, sagt aber nicht, wie genau.',
  'To {distance} m.||exact': 'Auf {distance} m.',
  'Only to {distance} m.||exact': 'Nur auf {distance} m.',
  'Stay in the open a minute. If it stays so, allow the exact position in the settings.':
    'Bleib eine Minute im Freien. Bleibt es so, erlaube in den Einstellungen die genaue Position.',
  'This iOS lets an installed page go dark.': 'Dieses iOS lässt eine installierte Seite dunkel werden.',
  'Update to 18.4, or run in a tab of the browser, or set Auto-Lock to Never for the race.':
    'Aktualisiere auf 18.4, laufe in einem Tab des Browsers oder stelle die automatische Sperre fürs Rennen auf „Nie“.',
  'Stays on.': 'Bleibt an.',
  'Kept on by a silent video.': 'Durch ein stummes Video wach gehalten.',
  'It may pause your music.': 'Es kann deine Musik anhalten.',
  'May go dark.': 'Kann dunkel werden.',
  'Switch low-power mode off. Else set the screen’s time-out to the longest: dark means no position.':
    'Schalte den Stromsparmodus aus. Sonst stelle die Bildschirmsperre auf die längste Zeit: Dunkel heißt keine Position.',
  'The voice is not here.': 'Die Stimme ist nicht da.',
  'Open the page again with a network.': 'Öffne die Seite noch einmal mit Netz.',
  'The voice is being loaded.': 'Die Stimme wird geladen.',
  'Heard.': 'Gehört.',
  'Not heard.': 'Nicht gehört.',
  'Turn the volume up, switch silent mode off, connect the earphones, and play again.':
    'Dreh die Lautstärke auf, schalte den Stummmodus aus, verbinde die Kopfhörer und spiel noch einmal ab.',
  'Put your earphones in and play the sample.': 'Setz deine Kopfhörer auf und spiel die Probe ab.',
  'Not measured. It may be left out.': 'Nicht gemessen. Darf wegbleiben.',
  'Calls begin {ms} ms earlier, as measured before.': 'Ansagen beginnen {ms} ms früher, wie zuvor gemessen.',
  'About {ms} ms, your finger included.': 'Etwa {ms} ms, deinen Finger eingerechnet.',
  'Too little to matter.': 'Zu wenig, um zu zählen.',
  'Checkpoints and countdowns begin {ms} ms earlier from now on. Other earphones: measure again.':
    'Kontrollpunkte und Countdowns beginnen ab jetzt {ms} ms früher. Andere Kopfhörer: neu messen.',
  'Not used. The screen does all that they do.': 'Nicht benutzt. Der Bildschirm kann alles, was sie können.',
  'They come through.': 'Sie kommen an.',
  'Press the headset’s button once.': 'Drücke einmal die Taste am Headset.',
  'If nothing comes, the screen does all that it does.':
    'Kommt nichts an: Der Bildschirm kann alles, was sie kann.',
  'Charge before the start, turn the brightness down, and switch low-power mode off.':
    'Lade vor dem Start, stell den Bildschirm dunkler und schalte den Stromsparmodus aus.',
  'This browser does not say.': 'Dieser Browser sagt es nicht.',
  'Little room.': 'Wenig Platz.',
  'Free some storage on the phone.': 'Schaffe etwas Speicherplatz auf dem Handy.',
  'Kept on this device until you remove it.': 'Bleibt auf diesem Gerät, bis du sie entfernst.',
  'Kept on this device, but the browser may remove it.':
    'Bleibt auf diesem Gerät, aber der Browser kann sie entfernen.',
  'Install Soundline, or save the log after the run.':
    'Installiere Soundline oder sichere die Aufzeichnung nach dem Lauf.',
  'Counted where the position fails.': 'Gezählt, wo die Position ausfällt.',
  'Refused. Tunnels are bridged by your pace alone.':
    'Verweigert. Tunnel werden allein mit deinem Tempo überbrückt.',
  'This device does not count them.': 'Dieses Gerät zählt sie nicht.',
  'You will be asked.': 'Du wirst gefragt.',
  'Beside the sound.': 'Zusätzlich zum Ton.',
  'Not on this device: the sound alone.': 'Nicht auf diesem Gerät: nur der Ton.',
  'Works without a network.': 'Funktioniert ohne Netz.',
  'Being stored.': 'Wird gespeichert.',
  'Needs a network to open.': 'Braucht zum Öffnen ein Netz.',
  'Do not close the page before the race.': 'Schließ die Seite vor dem Rennen nicht.',
  'position||in a list': 'Position',
  'screen||in a list': 'Bildschirm',
  'sound||in a list': 'Ton',
  'Not ready: {names}.': 'Nicht bereit: {names}.',
  'Still open: {names}.': 'Noch offen: {names}.',
  'Ready.': 'Bereit.',
  fine: 'gut',
  'could be better': 'könnte besser sein',
  missing: 'fehlt',
  'open||not known yet': 'offen',
  'Install Soundline': 'Soundline installieren',
  'Install first: Share, then Add to Home Screen, and set up your plan there.':
    'Zuerst installieren: Teilen, dann „Zum Home-Bildschirm“, und richte deinen Plan dort ein.',
  'A tab and the installed app do not share what they store.':
    'Ein Tab und die installierte App teilen nicht, was sie speichern.',
  'Installed it opens without a network, and the browser keeps its logs.':
    'Installiert öffnet es ohne Netz, und der Browser behält die Aufzeichnungen.',
  'Ready to race?': 'Bereit fürs Rennen?',
  'Tries each thing that a race needs, on this device, as it will be used. It takes a minute.':
    'Prüft alles, was ein Rennen braucht, auf diesem Gerät und so, wie es benutzt wird. Es dauert eine Minute.',
  'You will be asked for your position. It stays on this device. Stand outside, with your earphones in.':
    'Du wirst nach deiner Position gefragt. Sie bleibt auf diesem Gerät. Stell dich ins Freie, die Kopfhörer auf den Ohren.',
  'Begin the check': 'Prüfung beginnen',
  Ready: 'Bereit',
  'Not ready yet': 'Noch nicht bereit',
  Checks: 'Prüfungen',
  'No page can see whether low-power mode is on, or how bright the screen is: switch the one off and turn the other down. Do not press the power button during the run.':
    'Keine Seite kann sehen, ob der Stromsparmodus an ist oder wie hell der Bildschirm ist: Schalte den einen aus und stell den anderen dunkler. Drücke im Lauf nicht die Ein-/Aus-Taste.',
  'To the start': 'Zum Start',
  'To the start all the same': 'Trotzdem zum Start',
  'Learn the tones': 'Töne lernen',
  'Play the sample': 'Probe abspielen',
  'Did you hear it?': 'Hast du es gehört?',
  Yes: 'Ja',
  No: 'Nein',
  'Tap with each beat': 'Tippe bei jedem Schlag',
  'Measure||press': 'Messen',
  'No earlier': 'Nicht vorziehen',
};
