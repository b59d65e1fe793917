import type { Catalogue } from '../../text.ts';

export const whatIf: Catalogue = {
  'Four in five finishes; the stroke is the middle one':
    'Vier von fünf Zielzeiten; der Strich ist die mittlere',
  'Finishes from {quick} to {slow}, middle {middle}': 'Zielzeiten von {quick} bis {slow}, Mitte {middle}',
  'The finishes as a table': 'Die Zielzeiten als Tabelle',
  'what||of the finishes': 'Anteil',
  'one in ten is quicker than': '1 von 10 ist schneller als',
  'one in ten is slower than': '1 von 10 ist langsamer als',
  'Your plan run a thousand times by runners with your results. Not what will happen: what could.':
    'Dein Plan, tausendmal gelaufen von Läufern mit deinen Ergebnissen. Nicht, was passieren wird: was passieren könnte.',
  'What it rests on': 'Worauf es beruht',
  'Taken from your results: about {time} on this course at an even effort, give or take {percent} %.':
    'Aus deinen Ergebnissen: etwa {time} auf dieser Strecke bei gleichmäßiger Anstrengung, plus/minus {percent} %.',
  'Without a result of yours, the goal itself is taken for what you can do, so the chance is near even by nature. Put a result in under Goal.':
    'Ohne ein Ergebnis von dir gilt die Zielzeit selbst als das, was du kannst; die Chance liegt deshalb von Natur aus nahe der Hälfte. Trage unter Zielzeit ein Ergebnis ein.',
  'From the gun to your line': 'Vom Startschuss bis zu deiner Linie',
  'What it does not know': 'Was es nicht weiß',
  'What came out': 'Was herauskam',
  'A thousand runs are under way …': 'Tausend Läufe sind unterwegs …',
  'Goal {goal}, no opening.': 'Zielzeit {goal}, keine Startphase.',
  'Goal {goal}, no opening, push from {from}.': 'Zielzeit {goal}, keine Startphase, Endspurt ab {from}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}.':
    'Zielzeit {goal}, Startphase {quicker} s pro km schneller über {distance}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}, push from {from}.':
    'Zielzeit {goal}, Startphase {quicker} s pro km schneller über {distance}, Endspurt ab {from}.',
  'Another opening': 'Eine andere Startphase',
  'Goal made': 'Ziel erreicht',
  'Middle finish': 'Mittlere Zielzeit',
  'Against even, s': 'Gegen gleichmäßig, s',
  '± is one standard error from the thousand runs, not the doubt of the model, which is larger.':
    '± ist ein Standardfehler der tausend Läufe, nicht der Zweifel am Modell; der ist größer.',
  'They run as most do: the pace wanders by {wander} % over a kilometre, a water station costs {station} s.':
    'Sie laufen wie die meisten: Das Tempo schwankt um {wander} % über einen Kilometer, eine Wasserstelle kostet {station} s.',
  'Moved by {n} runs of yours: the pace wanders by {wander} % over a kilometre, a water station costs {station} s, and legs that give all slow by {fade} % from the first half to the second, where most slow by {usual} %.':
    {
      one: 'Ein Lauf von dir hat es verschoben: Das Tempo schwankt um {wander} % über einen Kilometer, eine Wasserstelle kostet {station} s, und Beine, die alles geben, werden von der ersten zur zweiten Hälfte um {fade} % langsamer; bei den meisten sind es {usual} %.',
      other:
        '{n} Läufe von dir haben es verschoben: Das Tempo schwankt um {wander} % über einen Kilometer, eine Wasserstelle kostet {station} s, und Beine, die alles geben, werden von der ersten zur zweiten Hälfte um {fade} % langsamer; bei den meisten sind es {usual} %.',
    },
  'The simulation could not be run on this browser.': 'Die Simulation konnte in diesem Browser nicht laufen.',
  'Abbiss and Laursen 2008: over two minutes and more an even pace tends to serve best':
    'Abbiss und Laursen 2008: Ab zwei Minuten Dauer ist ein gleichmäßiges Tempo meist am besten',
  'Nikolaidis et al. 2019, 7258 half marathoners: each stretch slower than the one before, about 4 % in all':
    'Nikolaidis et al. 2019, 7258 Halbmarathonläufer: jeder Teil langsamer als der davor, zusammen etwa 4 %',
  'Hanley 2015, world half-marathon championships: most start fast and slow after 5 km; the best are more even':
    'Hanley 2015, Halbmarathon-Weltmeisterschaften: Die meisten starten schnell und werden nach 5 km langsamer; die Besten sind gleichmäßiger',
  'Smyth 2018, 1.7 million marathons: fast starts go with slower finishes. Seen, not tried: quick starters also differ in ability':
    'Smyth 2018, 1,7 Millionen Marathons: Schnelle Starts gehen mit langsameren Schlussteilen einher. Beobachtet, nicht erprobt: Schnellstarter unterscheiden sich auch im Können',
  "That tiredness adds up along Riegel's curve, how late a runner notices, wander and seconds at stations are our own assumptions":
    'Dass sich Müdigkeit entlang der Kurve von Riegel aufsummiert, wie spät ein Läufer etwas merkt, das Schwanken und die Sekunden an den Verpflegungsstellen sind unsere eigenen Annahmen',
  'A model, not a forecast. It takes your result as given, and everybody in it runs by the plan until the legs say no.':
    'Ein Modell, keine Vorhersage. Es nimmt dein Ergebnis als gegeben, und alle darin laufen nach dem Plan, bis die Beine nein sagen.',
  'It knows no heat, wind, crowd, cramp or stomach, and nobody who gives up.':
    'Es kennt weder Hitze noch Wind, Gedränge, Krämpfe oder Magen, und niemanden, der aufgibt.',
  'No trial has tested a quick opening in the half marathon. Take differences of a few seconds as none.':
    'Kein Versuch hat eine schnelle Startphase im Halbmarathon geprüft. Nimm Unterschiede von wenigen Sekunden als keine.',
  'Every run of this plan made the goal. Four in five finish between {quick} and {slow}.':
    'Jeder Lauf nach diesem Plan hat die Zielzeit erreicht. Vier von fünf kommen zwischen {quick} und {slow} ins Ziel.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost about {place}.':
    'Chance auf die Zielzeit: {odds}. Vier von fünf kommen zwischen {quick} und {slow} ins Ziel. Wo sie verfehlt wird, geht sie meist um {place} verloren.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost between {from} and {to}.':
    'Chance auf die Zielzeit: {odds}. Vier von fünf kommen zwischen {quick} und {slow} ins Ziel. Wo sie verfehlt wird, geht sie meist zwischen {from} und {to} verloren.',
  '{quicker} s per km quicker for {distance}: neither wins nor costs anything to speak of.':
    '{quicker} s pro km schneller über {distance}: gewinnt und kostet nichts Nennenswertes.',
  '{quicker} s per km quicker for {distance}: wins about {n} s on average.':
    '{quicker} s pro km schneller über {distance}: gewinnt im Mittel etwa {n} s.',
  '{quicker} s per km quicker for {distance}: costs about {n} s on average.':
    '{quicker} s pro km schneller über {distance}: kostet im Mittel etwa {n} s.',
  'Quicker by, s per km': 'Schneller um, s pro km',
};
