import type { Catalogue } from '../../text.ts';

export const review: Catalogue = {
  'From||call': 'Von',
  'To||call': 'Bis',
  'Rate between calls': 'Tempo zwischen den Ansagen',
  'It believed {ahead} s.': 'Geschätzt: {ahead} s.',
  'It believed {ahead} s, give or take {off} s.': 'Geschätzt: {ahead} s, ±{off} s.',
  'Nothing was called.': 'Nichts wurde angesagt.',
  Calls: 'Ansagen',
  'why did it say that?': 'warum wurde das gesagt?',
  'Why: {why}.': 'Warum: {why}.',
  'Hear this call': 'Diese Ansage hören',
  'seconds ahead (+) or behind (−)': 'Sekunden Vorsprung (+) oder Rückstand (−)',
  'a call sounded': 'eine Ansage',
  'Splits against plan, as a table': 'Zwischenzeiten gegen den Plan, als Tabelle',
  split: 'Abschnitt',
  planned: 'geplant',
  'ahead or behind, s': 'zum Plan, s',
  'run||as it was run': 'gelaufen',
  'Pace, per {unit} (quicker is higher)': 'Tempo, pro {unit} (schneller ist höher)',
  'beats a minute': 'Schläge pro Minute',
  'Heart rate': 'Puls',
  metres: 'Meter',
  Height: 'Höhe',
  'Projected finish at each checkpoint': 'Erwartete Zielzeit an jedem Kontrollpunkt',
  projected: 'erwartet',
  'give or take': '±',
  'it was||finish time in the end': 'tatsächlich',
  'as planned||pace of the opening': 'wie geplant',
  'too quick||pace of the opening': 'zu schnell',
  'slow||pace of the opening': 'langsam',
  'Opening to {distance} {unit}': 'Startphase bis {distance} {unit}',
  '{run} run, {planned} planned per {unit}: {verdict}':
    '{run} gelaufen, {planned} geplant pro {unit}: {verdict}',
  'Second half against the first': 'Zweite Hälfte gegen die erste',
  '{percent} % slower, hills and changes of target taken out':
    '{percent} % langsamer, Hügel und geplante Tempowechsel herausgerechnet',
  '{percent} % quicker, hills and changes of target taken out':
    '{percent} % schneller, Hügel und geplante Tempowechsel herausgerechnet',
  Stations: 'Verpflegungsstellen',
  Signal: 'Empfang',
  'good for {percent} % of the run; the longest gap {gap} s; {fixes} fixes, {unused} left out':
    'gut auf {percent} % des Laufs; die längste Lücke {gap} s; {fixes} Positionen, {unused} weggelassen',
  'free||no target': 'frei',
  'asked||pace': 'Vorgabe',
  minutes: 'Minuten',
  'Pace and heart rate at each minute, as a table': 'Tempo und Puls in jeder Minute, als Tabelle',
  '{n} words about pace': { one: 'ein Tempohinweis', other: '{n} Tempohinweise' },
  'Not done to the end; {words}.': 'Nicht bis zum Ende; {words}.',
  'Done in {time}; {words}.': 'Fertig in {time}; {words}.',
  'leg||of a session': 'Abschnitt',
  'heart||rate': 'Puls',
  'waiting||for a position': 'wartet',
  'good||reception': 'gut',
  'poor||reception': 'schlecht',
  'lost||reception': 'verloren',
  'Reception along the way': 'Empfang auf dem Weg',
  'Reception along the way, as a table': 'Empfang auf dem Weg, als Tabelle',
  'from {unit}': 'von {unit}',
  'to {unit}': 'bis {unit}',
  reception: 'Empfang',
  'GPX track': 'GPX-Track',
  'CSV table': 'CSV-Tabelle',
  'GeoJSON map': 'GeoJSON-Karte',
  'Run with its log': 'Lauf mit Aufzeichnung',
  'All runs': 'Alle Läufe',
  'In short': 'In Kürze',
  'Save this run': 'Diesen Lauf sichern',
  'Files stay on this device until you send them somewhere.':
    'Dateien bleiben auf diesem Gerät, bis du sie irgendwohin schickst.',
  'Pace from board to board, as a table': 'Tempo von Tafel zu Tafel, als Tabelle',
  'planned||pace': 'geplant',
  'Heart rate from board to board, as a table': 'Puls von Tafel zu Tafel, als Tabelle',
  'Height at each board, as a table': 'Höhe an jeder Tafel, als Tabelle',
  'This browser keeps no runs here.': 'Dieser Browser speichert hier keine Läufe.',
  '{n} runs added.': { one: 'Ein Lauf hinzugefügt.', other: '{n} Läufe hinzugefügt.' },
  '{runs} {left}': '{runs} {left}',
  '{n} points or lines were left out.': {
    one: 'Ein Punkt oder eine Zeile wurde weggelassen.',
    other: '{n} Punkte oder Zeilen wurden weggelassen.',
  },
  '{n} runs restored.': { one: 'Ein Lauf wiederhergestellt.', other: '{n} Läufe wiederhergestellt.' },
  '{runs} The file was cut short. Open the page anew to see your settings.':
    '{runs} Die Datei war abgeschnitten. Öffne die Seite neu, um deine Einstellungen zu sehen.',
  '{runs} Open the page anew to see your settings.':
    '{runs} Öffne die Seite neu, um deine Einstellungen zu sehen.',
  'This run cannot be read by this version.': 'Diese Version kann den Lauf nicht lesen.',
  'The run is deleted.': 'Der Lauf ist gelöscht.',
  'Imported run': 'Importierter Lauf',
  '{distance} {unit}': '{distance} {unit}',
  'The run ended at {place}; the goal of {time} was not reached.':
    'Der Lauf endete bei {place}; die Zielzeit von {time} wurde nicht erreicht.',
  'Finished in {time}: on plan to the second or two.': 'Im Ziel in {time}: auf ein, zwei Sekunden im Plan.',
  'Finished in {time}, {off} ahead of the plan.': 'Im Ziel in {time}, {off} vor dem Plan.',
  'Finished in {time}, {off} behind the plan.': 'Im Ziel in {time}, {off} hinter dem Plan.',
  'The run took {time}. It came without a plan, so it is held against an even one.':
    'Der Lauf dauerte {time}. Er kam ohne Plan und wird deshalb an einem gleichmäßigen gemessen.',
  'The opening is not in the log.': 'Die Startphase fehlt in der Aufzeichnung.',
  'The first {distance} went as planned: a good opening.':
    'Die ersten {distance} liefen wie geplant: eine gute Startphase.',
  'The first {distance} went {off} s/km quicker than planned: too quick an opening.':
    'Die ersten {distance} liefen {off} s/km schneller als geplant: eine zu schnelle Startphase.',
  'The first {distance} went {off} s/km slower than planned.':
    'Die ersten {distance} waren {off} s/km langsamer als geplant.',
  'There is too little of the run to say where time was won and lost.':
    'Vom Lauf ist zu wenig da, um zu sagen, wo Zeit gewonnen und verloren wurde.',
  'Most was lost from {from} to {to} ({lost}), most was won from {wonFrom} to {wonTo} ({won}).':
    'Am meisten verloren von {from} bis {to} ({lost}), am meisten gewonnen von {wonFrom} bis {wonTo} ({won}).',
  'Most was lost from {from} to {to} ({lost}).': 'Am meisten verloren von {from} bis {to} ({lost}).',
  'Most was won from {wonFrom} to {wonTo} ({won}); no part lost time.':
    'Am meisten gewonnen von {wonFrom} bis {wonTo} ({won}); kein Teil verlor Zeit.',
  'No part won or lost time.': 'Kein Teil gewann oder verlor Zeit.',
  'The halves cannot be compared.': 'Die Hälften lassen sich nicht vergleichen.',
  'The two halves were even.': 'Die beiden Hälften waren gleich schnell.',
  'The second half was {percent} % slower than the first, hills and changes of target taken out.':
    'Die zweite Hälfte war {percent} % langsamer als die erste, Hügel und geplante Tempowechsel herausgerechnet.',
  'The second half was {percent} % quicker than the first, hills and changes of target taken out.':
    'Die zweite Hälfte war {percent} % schneller als die erste, Hügel und geplante Tempowechsel herausgerechnet.',
  '{n} stations cost {time}.': {
    one: 'Eine Verpflegungsstelle kostete {time}.',
    other: '{n} Verpflegungsstellen kosteten {time}.',
  },
  '{halves} {cost}': '{halves} {cost}',
  'Next time: find out first why it ended; with pain or illness, ask a doctor.':
    'Nächstes Mal: Finde zuerst heraus, warum es endete; bei Schmerzen oder Krankheit frag eine Ärztin oder einen Arzt.',
  'Next time: hold the opening back; what it won was paid for in the second half. Practise it three times.':
    'Nächstes Mal: Halte dich in der Startphase zurück; was sie gewann, wurde in der zweiten Hälfte bezahlt. Übe sie dreimal.',
  'Next time: a goal a little slower, or longer threshold and long runs before it.':
    'Nächstes Mal: eine etwas langsamere Zielzeit, oder vorher längere Schwellenläufe und lange Läufe.',
  'Next time: practise drinking on the move; the stations cost more than the pace did.':
    'Nächstes Mal: Übe das Trinken im Laufen; die Verpflegungsstellen kosteten mehr als das Tempo.',
  'Next time: hold the opening back. It cost nothing seen this time; it is the first thing that does.':
    'Nächstes Mal: Zügle die Startphase. Diesmal hat sie nichts Sichtbares gekostet; sie ist das Erste, was etwas kostet.',
  'Next time: a goal a little quicker is realistic, on a day and a course like this one.':
    'Nächstes Mal: Eine etwas schnellere Zielzeit ist realistisch, an so einem Tag und auf so einer Strecke.',
  'Next time: hold the plan against this result before setting the goal.':
    'Nächstes Mal: Halte den Plan gegen dieses Ergebnis, bevor du die Zielzeit setzt.',
  'Next time: the same again.': 'Nächstes Mal: noch einmal genauso.',
  'Ahead or behind, over the distance': 'Vorsprung oder Rückstand über die Strecke',
  '19 times in 20 within': '19 von 20 Malen darin',
  'It came without a plan, so it is held against its own even pace; the calls are what would have been said.':
    'Er kam ohne Plan und wird deshalb am eigenen gleichmäßigen Tempo gemessen; die Ansagen sind, was gesagt worden wäre.',
};
