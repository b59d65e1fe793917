import type { Catalogue } from '../../text.ts';

export const runs: Catalogue = {
  'not looked at yet': 'noch nicht angesehen',
  'not done to the end': 'nicht bis zum Ende',
  'ended at {distance} km': 'bei {distance} km beendet',
  'cannot be read by this version': 'für diese Version nicht lesbar',
  '{name}, practice': '{name}, Training',
  'Delete for good?': 'Endgültig löschen?',
  'Delete for good': 'Endgültig löschen',
  Keep: 'Behalten',
  'Delete {run}': '{run} löschen',
  Delete: 'Löschen',
  'Over the runs': 'Über alle Läufe',
  'Threshold held, openings, evenness': 'Gehaltene Schwelle, Startphasen, Gleichmäßigkeit',
  'when||date of a run': 'wann',
  'threshold /km': 'Schwelle /km',
  'give or take, s': '± s',
  'opening too quick by, s/km': 'Startphase zu schnell um, s/km',
  'second half, %': 'zweite Hälfte, %',
  'wander, %||of the pace': 'Schwankung, %',
  'foot pod': 'Laufsensor',
  'Let these runs move the realistic goal, the what-if, and what is believed of this phone':
    'Diese Läufe dürfen die realistische Zielzeit, das „Was wäre, wenn“ und das, was über dieses Handy angenommen wird, mitbestimmen',
  'A trend of a few runs is weather, not climate. Raise training slowly, one thing at a time, and rest when something hurts.':
    'Ein Trend aus wenigen Läufen ist Wetter, kein Klima. Steigere das Training langsam, immer nur eines, und ruh dich aus, wenn etwas wehtut.',
  'Every run and session that this device has kept, and what each of them says.':
    'Jeder Lauf und jede Einheit, die dieses Gerät gespeichert hat, und was sie dir sagen.',
  'Putting the run together: {percent} %': 'Der Lauf wird zusammengesetzt: {percent} %',
  'Looking for runs.': 'Läufe werden gesucht.',
  'No runs yet. Run one, practise, or open a file: a GPX track from anywhere will do.':
    'Noch keine Läufe. Lauf einen, trainiere oder öffne eine Datei: Ein GPX-Track von irgendwoher genügt.',
  'Runs, the latest first': 'Läufe, der neueste zuerst',
  Files: 'Dateien',
  'Open a run: log or GPX': 'Lauf öffnen: Aufzeichnung oder GPX',
  'Save everything as one file': 'Alles als eine Datei sichern',
  'Restore everything': 'Alles wiederherstellen',
  'Runs stay on this device. Delete means deleted: there is no copy anywhere else but yours.':
    'Läufe bleiben auf diesem Gerät. Gelöscht heißt gelöscht: Nirgends gibt es eine Kopie außer deiner.',
  'a session': 'eine Einheit',
  'Threshold pace per km (quicker is higher)': 'Schwellentempo pro km (schneller ist höher)',
  'weeks, up to the last': 'Wochen, bis zur letzten',
  'Opening: above 0 it was quicker than planned. Second half: above 0 it was slower than the first, hills taken out. Wander: how much the pace swings from one kilometre to the next.':
    'Startphase: über 0 war sie schneller als geplant. Zweite Hälfte: über 0 war sie langsamer als die erste, Hügel herausgerechnet. Schwankung: wie sehr das Tempo von Kilometer zu Kilometer wechselt.',
  'a GPX track or a run saved by Soundline': 'ein GPX-Track oder ein von Soundline gesicherter Lauf',
};
