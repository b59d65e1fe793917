import type { Catalogue } from '../../text.ts';

export const goal: Catalogue = {
  Goal: 'Zielzeit',
  'What have you run lately, and what does it say about this race? A range, not a promise.':
    'Was bist du zuletzt gelaufen, und was sagt das über dieses Rennen? Eine Spanne, kein Versprechen.',
  'What you know': 'Was du weißt',
  'What it says': 'Was es sagt',
  'Fill in a recent result to see which times it points to.':
    'Trag ein Ergebnis ein, um zu sehen, auf welche Zeiten es deutet.',
  'What it would take': 'Was es bräuchte',
  'By formula': 'Nach Formel',
  '{n} of these come from your own {runs}.': {
    one: 'Eines davon stammt aus deinen eigenen {runs}.',
    other: '{n} davon stammen aus deinen eigenen {runs}.',
  },
  'runs||noun': 'Läufen',
  'Added||time': 'Zuschlag',
  '{distance} {unit} in {time}': '{distance} {unit} in {time}',
  'On a flat course on a normal day. “Added” is for weekly distance and for going long.':
    'Auf flacher Strecke an einem normalen Tag. „Zuschlag“ steht für Wochenkilometer und für die längere Distanz.',
  'On a flat course on a normal day.': 'Auf flacher Strecke an einem normalen Tag.',
  '5K': '5 km',
  '10K': '10 km',
  'half-way ({distance} {unit})': 'Hälfte ({distance} {unit})',
  'What the goal means': 'Was die Zielzeit bedeutet',
  '{perKm} per km, {perMile} per mile. By your plan:':
    '{perKm} pro km, {perMile} pro Meile. Nach deinem Plan:',
  'Heat and hills': 'Hitze und Hügel',
  'Fill in the temperature and open a course with heights to see what they ask of the goal.':
    'Trag die Temperatur ein und öffne eine Strecke mit Höhen, um zu sehen, was sie für die Zielzeit bedeuten.',
  'Nothing in what you gave speaks against the goal.': 'Nichts an deinen Angaben spricht gegen die Zielzeit.',
  'Revise:': 'Ändern:',
  'Consider:': 'Zu bedenken:',
  'With {climb} m of climbing an even effort takes {percent} % longer than on the flat: the middle of the range here is about {time}.':
    'Mit {climb} m Anstieg dauert es bei gleichmäßiger Anstrengung {percent} % länger als im Flachen: Die Mitte der Spanne liegt hier bei etwa {time}.',
  'Results and goal': 'Ergebnisse und Zielzeit',
  'Recent result {n}': 'Letztes Ergebnis {n}',
  Distance: 'Distanz',
  Time: 'Zeit',
  'Weeks ago': 'Vor wie vielen Wochen',
  'Remove result {n}': 'Ergebnis {n} entfernen',
  'Add a result': 'Ergebnis hinzufügen',
  'Races or time trials that you ran all out. Two distances say more than one.':
    'Wettkämpfe oder Testläufe, bei denen du alles gegeben hast. Zwei Distanzen sagen mehr als eine.',
  'Temperature at the race': 'Temperatur beim Rennen',
  'Your goal': 'Deine Zielzeit',
  'For {name}, {distance} {unit}. The plan follows at once.':
    'Für {name}, {distance} {unit}. Der Plan folgt sofort.',
  'this race': 'dieses Rennen',
  'Middle of the range: {time}': 'Mitte der Spanne: {time}',
  'Quick end of the likely range: {time}': 'Schnelles Ende der wahrscheinlichen Spanne: {time}',
  'The inner bar holds half of runners with such results, the whole bar four in five. Quicker is left.':
    'Der innere Balken umfasst die Hälfte der Läufer mit solchen Ergebnissen, der ganze vier von fünf. Links ist schneller.',
  'Likely {quick} to {slow}, middle {middle}; goal {goal}':
    'Wahrscheinlich {quick} bis {slow}, Mitte {middle}; Zielzeit {goal}',
  'middle {time}': 'Mitte {time}',
  'goal {time}': 'Zielzeit {time}',
  'The range as a table': 'Die Spanne als Tabelle',
  'what||of the range': 'Anteil',
  'from||a time': 'von',
  'to||a time': 'bis',
  'half of runners': 'Hälfte der Läufer',
  'four in five': 'vier von fünf',
  middle: 'Mitte',
  goal: 'Zielzeit',
  'Write the distance as a number, such as 10 or 21.1.': 'Schreib die Distanz als Zahl, etwa 10 oder 21,1.',
  'Write the time as hours, minutes and seconds: 47:30 or 1:44:00.':
    'Schreib die Zeit als Stunden, Minuten und Sekunden: 47:30 oder 1:44:00.',
  'Write the weeks as a number, or leave them out.': 'Schreib die Wochen als Zahl oder lass sie weg.',
  'Vickers and Vertosick 2016, 2303 runners: the usual formula is about right up to the half marathon, and at least 10 minutes too fast for half of recreational marathoners; the better models were still off by about 14 minutes (root mean square)':
    'Vickers und Vertosick 2016, 2303 Läufer: Die übliche Formel stimmt bis zum Halbmarathon ungefähr und ist für die Hälfte der Freizeit-Marathonläufer mindestens 10 Minuten zu schnell; auch die besseren Modelle lagen noch etwa 14 Minuten daneben (quadratisches Mittel)',
  'Width from race-day variation of about 3 %, differences between runners and the age of the result: our own figures, set wide':
    'Breite aus der Tagesform von etwa 3 %, den Unterschieden zwischen Läufern und dem Alter des Ergebnisses: unsere eigenen Werte, weit angesetzt',
  Riegel: 'Riegel',
  'Riegel 1977, 1981: exponent 1.06, from efforts of 3.5 to 230 minutes':
    'Riegel 1977, 1981: Exponent 1,06, aus Leistungen von 3,5 bis 230 Minuten',
  Cameron: 'Cameron',
  'Cameron 1998, fitted to record times': 'Cameron 1998, an Rekordzeiten angepasst',
  'Daniels and Gilbert': 'Daniels und Gilbert',
  'Daniels and Gilbert 1979: oxygen cost of a speed, and the share of the maximum that a duration allows':
    'Daniels und Gilbert 1979: Sauerstoffbedarf eines Tempos und der Anteil am Maximum, den eine Dauer zulässt',
  'Your results point to different times. Leave out any that you did not race all out.':
    'Deine Ergebnisse deuten auf verschiedene Zeiten. Lass weg, was du nicht mit vollem Einsatz gelaufen bist.',
  'Your results are more than half a year old. A recent race or time trial would say more.':
    'Deine Ergebnisse sind älter als ein halbes Jahr. Ein Wettkampf oder Testlauf aus letzter Zeit würde mehr sagen.',
  'This race is much longer than those you gave. A result nearer to its length would say more.':
    'Dieses Rennen ist viel länger als die, die du angegeben hast. Ein Ergebnis näher an dieser Länge würde mehr sagen.',
  'Beyond 3 h 50 min the usual formula was never fitted: take the slow side seriously.':
    'Für mehr als 3 h 50 min wurde die übliche Formel nie gemacht: Nimm die langsame Seite ernst.',
  'Slowed on purpose: beyond what you have raced or trained for, most runners slow more than the formulas say.':
    'Mit Absicht vorsichtig: Jenseits dessen, was sie im Wettkampf oder im Training gelaufen sind, werden die meisten langsamer, als die Formeln sagen.',
  'a race distance between 1 km and 100 km, in metres':
    'eine Wettkampfdistanz zwischen 1 km und 100 km, in Metern',
  'a time for this distance between 2:14 and 16:40 per km, in seconds':
    'eine Zeit für diese Distanz zwischen 2:14 und 16:40 pro km, in Sekunden',
  'days since the race, from 0 to 3650': 'Tage seit dem Wettkampf, 0 bis 3650',
  'Ely et al. 2007: the warmer (heat, sun and humidity together), the slower everybody; who suffers most differs between studies':
    'Ely et al. 2007: je wärmer (Hitze, Sonne und Feuchte zusammen), desto langsamer alle; wer am meisten leidet, ist von Studie zu Studie verschieden',
  'Minetti et al. 2002: a climb costs more than the same descent gives back':
    'Minetti et al. 2002: Ein Anstieg kostet mehr, als dasselbe Gefälle zurückgibt',
  'At {n} degrees, do not hold the goal pace. Run by effort, open slower, and let the time be what it is.':
    'Bei {n} Grad halte nicht am Zieltempo fest. Lauf nach Anstrengung, geh es langsamer an, und nimm die Zeit, wie sie kommt.',
  'At {n} degrees and with sun or damp air, expect to be slower. Open no quicker than goal pace.':
    'Bei {n} Grad und mit Sonne oder feuchter Luft rechne damit, langsamer zu sein. Geh es nicht schneller an als im Zieltempo.',
  '{source}. The limits of {from} and {to} degrees: {practice}':
    '{source}. Die Grenzen von {from} und {to} Grad: {practice}',
  'At or below freezing, ice decides the pace. Warm up longer, and look at the ground before the clock.':
    'Um den Gefrierpunkt und darunter bestimmt das Eis das Tempo. Wärm dich länger auf, und schau auf den Boden, bevor du auf die Uhr schaust.',
  '{n} m of climbing: slower than the same effort on the flat. Set the goal from a hilly result, or give yourself more minutes.':
    '{n} m Anstieg: langsamer als dieselbe Anstrengung im Flachen. Setze die Zielzeit nach einem hügeligen Ergebnis oder gib dir mehr Minuten.',
  '{n} m of climbing will cost some time. Plan by even effort, not even pace.':
    '{n} m Anstieg werden etwas Zeit kosten. Plane nach gleicher Anstrengung, nicht nach gleichem Tempo.',
  '{source}. The limits of {from} and {to} m a km: {practice}':
    '{source}. Die Grenzen von {from} und {to} m pro km: {practice}',
  'Keep your {n} km a week steady: enough for this race.':
    'Halte deine {n} km pro Woche: genug für dieses Rennen.',
  'Let the week grow towards {n} km, by no more than a tenth a week, and ease every fourth week.':
    'Lass die Woche auf {n} km wachsen, um höchstens ein Zehntel pro Woche, und mach jede vierte Woche leichter.',
  'Once a week run 15 to 30 minutes in all at a pace that you could hold for an hour, in pieces with short rests.':
    'Lauf einmal pro Woche insgesamt 15 bis 30 Minuten in einem Tempo, das du eine Stunde halten könntest, in Stücken mit kurzen Pausen.',
  'Once a week run long and easy, and practise gel, water and breakfast on it.':
    'Lauf einmal pro Woche lang und locker und übe dabei Gel, Wasser und Frühstück.',
  'Once a week run short and quick: 6 to 10 times a minute, with full rest.':
    'Lauf einmal pro Woche kurz und schnell: 6- bis 10-mal eine Minute, mit voller Erholung.',
  'All the rest easy: you can talk in sentences.': 'Alles andere locker: Du kannst in ganzen Sätzen reden.',
  'This step is more than half a year away. Choose a goal in between, race for it, and ask again.':
    'Dieser Schritt dauert mehr als ein halbes Jahr. Wähle ein Ziel dazwischen, lauf dafür ein Rennen und frag wieder.',
  'Then race the shorter distance, and put its time in here.':
    'Dann lauf die kürzere Distanz als Wettkampf und trage die Zeit hier ein.',
  'Daniels: at most one point of the running index in four to six weeks':
    'Daniels: höchstens ein Punkt des Laufindex in vier bis sechs Wochen',
  'Kinds and amounts of training: common practice, no source':
    'Arten und Mengen des Trainings: gängige Praxis, ohne Quelle',
  'It asks for nothing more than you have shown.': 'Das verlangt nicht mehr, als du gezeigt hast.',
  'It asks for {km} km in about {need} (now about {now}): often {fewest} to {most} weeks of steady training, and not everybody gets there.':
    'Das verlangt {km} km in etwa {need} (jetzt etwa {now}): oft {fewest} bis {most} Wochen stetiges Training, und nicht alle kommen dorthin.',
  '{goal} is gentle: your results point to {quick} to {slow}. A calm race, or room for a quicker goal.':
    '{goal} ist zurückhaltend: Deine Ergebnisse deuten auf {quick} bis {slow}. Ein ruhiges Rennen oder Platz für eine schnellere Zielzeit.',
  '{goal} fits your results, which point to {quick} to {slow}. The chance on a normal day: {odds}.':
    '{goal} passt zu deinen Ergebnissen, die auf {quick} bis {slow} deuten. Die Chance an einem normalen Tag: {odds}.',
  '{goal} is ambitious: your results point to {quick} to {slow}. It can happen on a very good day: {odds}. Keep a second goal nearer to {middle}.':
    '{goal} ist ehrgeizig: Deine Ergebnisse deuten auf {quick} bis {slow}. An einem sehr guten Tag kann es gelingen: {odds}. Halte eine zweite Zielzeit näher an {middle} bereit.',
  '{goal} is beyond what your results show now, {quick} to {slow} (chance: {odds}). Keep it for a later race, and run this one for about {middle}.':
    '{goal} liegt jenseits dessen, was deine Ergebnisse jetzt zeigen, {quick} bis {slow} (Chance: {odds}). Heb sie dir für ein späteres Rennen auf und lauf dieses auf etwa {middle}.',
  '{time} for a half marathon': 'Halbmarathon in {time}',
  '{time} for a marathon': 'Marathon in {time}',
  '{time} for {distance}': '{distance} in {time}',
  'Vickers and Vertosick 2016: predictions that know the weekly distance are better; fewer kilometres, slower marathon':
    'Vickers und Vertosick 2016: Vorhersagen, die die Wochenkilometer kennen, sind besser; weniger Kilometer, langsamerer Marathon',
  'How much a weekly kilometre counts is our own cautious figure (common practice, no source)':
    'Wie viel ein Wochenkilometer zählt, ist unser eigener vorsichtiger Wert (gängige Praxis, ohne Quelle)',
  Formula: 'Formel',
};
