import type { Catalogue } from '../../text.ts';

export const course: Catalogue = {
  'Open the course itself first: these places need a line to lie on.':
    'Öffne zuerst die Strecke selbst: Diese Orte brauchen eine Linie, auf der sie liegen.',
  'Places only: {n} of {m} are stations on your course.':
    'Nur Orte: {n} von {m} sind Verpflegungsstellen auf deiner Strecke.',
  '{n} stations found in the file and put into the plan.': {
    one: '{n} Verpflegungsstelle in der Datei gefunden und in den Plan übernommen.',
    other: '{n} Verpflegungsstellen in der Datei gefunden und in den Plan übernommen.',
  },
  Course: 'Strecke',
  'The line on the ground, from a file of the race or a run of yours. It is read here and goes nowhere.':
    'Die Linie am Boden, aus einer Datei des Veranstalters oder einem Lauf von dir. Sie wird hier gelesen und geht nirgendwohin.',
  'The course drawn': 'Die Strecke gezeichnet',
  'Places on the course': 'Orte auf der Strecke',
  Recorded: 'Aufgezeichnet',
  '{distance} {unit}, run {n} times': '{distance} {unit}, {n}-mal gelaufen',
  Official: 'Offiziell',
  'Scaled by': 'Angepasst um',
  Climb: 'Anstieg',
  'no heights in the file': 'keine Höhen in der Datei',
  'Run it the other way': 'Andersherum laufen',
  'Remove the course': 'Strecke entfernen',
  'The recording is {n} m longer than the race. Is it the right course, and the right distance in the plan?':
    'Die Aufzeichnung ist {n} m länger als das Rennen. Ist es die richtige Strecke, und stimmt die Distanz im Plan?',
  'The recording is {n} m shorter than the race. Is it the right course, and the right distance in the plan?':
    'Die Aufzeichnung ist {n} m kürzer als das Rennen. Ist es die richtige Strecke, und stimmt die Distanz im Plan?',
  "The recording is {n} m longer than the race. The race's measured distance counts; the line is fitted to it.":
    'Die Aufzeichnung ist {n} m länger als das Rennen. Es gilt die vermessene Distanz; die Linie wird ihr angepasst.',
  "The recording is {n} m shorter than the race. The race's measured distance counts; the line is fitted to it.":
    'Die Aufzeichnung ist {n} m kürzer als das Rennen. Es gilt die vermessene Distanz; die Linie wird ihr angepasst.',
  'The course, {name}, drawn as a line': 'Die Strecke {name}, als Linie gezeichnet',
  'start||place': 'Start',
  'finish||place': 'Ziel',
  station: 'Verpflegung',
  'what you carry||a mark': 'eigene Verpflegung',
  tunnel: 'Tunnel',
  'Height, {lowest} to {highest} m': 'Höhe, {lowest} bis {highest} m',
  'The way as a strip; the file holds no heights': 'Der Weg als Streifen; die Datei enthält keine Höhen',
  'Profile of the course': 'Profil der Strecke',
  'Place: {place} {unit}': 'Ort: {place} {unit}',
  'Course file': 'Streckendatei',
  'Another file': 'Andere Datei',
  'Open a course': 'Strecke öffnen',
  'Or drop it here. GPX with a track or a route; waypoints become stations. Or the log of a past run (.jsonl).':
    'Oder hier ablegen. GPX mit Track oder Route; Wegpunkte werden Verpflegungsstellen. Oder die Aufzeichnung eines früheren Laufs (.jsonl).',
  'The storage of this browser does not give the runs away.':
    'Der Speicher dieses Browsers gibt die Läufe nicht heraus.',
  'From a run on this device': 'Aus einem Lauf auf diesem Gerät',
  'No run is kept here yet.': 'Hier ist noch kein Lauf gespeichert.',
  'At {place} {unit}': 'Bei {place} {unit}',
  'Point on the map or the profile, or move the slider; then put something there.':
    'Zeige auf die Karte oder das Profil oder bewege den Regler; dann setze etwas dorthin.',
  'The course comes by here {n} times:': 'Die Strecke kommt hier {n}-mal vorbei:',
  'The station offers': 'Hier gibt es',
  'Station here': 'Verpflegungsstelle hier',
  'My {item} here': '{item} hier nehmen',
  'Checkpoint here': 'Kontrollpunkt hier',
  'Board {n} stands here': 'Tafel {n} steht hier',
  'Do not trust board {n}': 'Tafel {n} nicht trauen',
  'Tunnel from here': 'Tunnel ab hier',
  'Tunnel from {place} to here': 'Tunnel von {place} bis hier',
  'What lies on the way': 'Was am Weg liegt',
  'Remove {what} at {place}': '{what} bei {place} entfernen',
  'board {n} stands here': 'Tafel {n} steht hier',
  'board {n}, not trusted': 'Tafel {n}, gilt nicht',
  'my {item}': '{item} (mitgebracht)',
  'tunnel to {place}': 'Tunnel bis {place}',
  'Run||noun': 'Lauf',
  'Left out: {what}.': 'Weggelassen: {what}.',
  "The file holds {n} lines; taken is the one nearest to the race's distance.":
    'Die Datei enthält {n} Linien; genommen wird die, die der Distanz des Rennens am nächsten kommt.',
  'a run with fixes along its way': 'ein Lauf mit Positionen auf seinem Weg',
  '{n} good fixes': '{n} gute Positionen',
  'From the run {file}': 'Aus dem Lauf {file}',
  'Drawn from a run of yours: as good as its signal was, and without heights.':
    'Aus einem deiner Läufe gezeichnet: so gut wie der Empfang war und ohne Höhen.',
  'at most 64 MB': 'höchstens 64 MB',
  'the file: it could not be read from the disk': 'die Datei: Sie ließ sich nicht vom Speicher lesen',
  'at most 64 MB of GPX': 'höchstens 64 MB GPX',
  'a GPX file': 'eine GPX-Datei',
  'XML faults, the first at {place}': 'XML-Fehler, der erste bei {place}',
  'a gpx element at the top': 'ein gpx-Element ganz oben',
  'at least one usable point': 'mindestens ein brauchbarer Punkt',
  '{n} points without a usable lat': {
    one: '{n} Punkt ohne brauchbares lat',
    other: '{n} Punkte ohne brauchbares lat',
  },
  '{n} points without a usable lon': {
    one: '{n} Punkt ohne brauchbares lon',
    other: '{n} Punkte ohne brauchbares lon',
  },
  'a track or route of at least two points': 'ein Track oder eine Route aus mindestens zwei Punkten',
  'Without a course Soundline goes by the signal alone, which is some hundred metres wrong over a half marathon. Pressing at the boards mends most of that.':
    'Ohne Strecke richtet sich Soundline allein nach dem Signal, das über einen Halbmarathon einige hundert Meter falsch liegt. Drücken an den Kilometertafeln behebt das meiste davon.',
};
