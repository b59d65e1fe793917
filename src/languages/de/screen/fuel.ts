import type { Catalogue } from '../../text.ts';

export const fuel: Catalogue = {
  '{lower} to {upper} g of carbohydrate for each kg of body mass':
    '{lower} bis {upper} g Kohlenhydrate pro kg Körpergewicht',
  '{lower} to {upper} g of carbohydrate ({lowerKg} to {upperKg} g for each kg)':
    '{lower} bis {upper} g Kohlenhydrate ({lowerKg} bis {upperKg} g pro kg)',
  'For less than an hour: eat as usual.': 'Für weniger als eine Stunde: iss wie sonst.',
  'The {n} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    'Die {n} Stunden davor: {range} je 24 Stunden, alle Mahlzeiten zusammen, und wenig laufen. Das ist viel Essen: Probier es erst vor einem langen Lauf aus.',
  'From {fewest} to {most} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    '{fewest} bis {most} Stunden davor: {range} je 24 Stunden, alle Mahlzeiten zusammen, und wenig laufen. Das ist viel Essen: Probier es erst vor einem langen Lauf aus.',
  'In the plan now: nothing to take. The voice tells you 200 to 300 m ahead.':
    'Jetzt im Plan: nichts einzunehmen. Die Stimme sagt es dir 200 bis 300 m vorher.',
  'In the plan now: {list} {unit}. The voice tells you 200 to 300 m ahead.':
    'Jetzt im Plan: {list} {unit}. Die Stimme sagt es dir 200 bis 300 m vorher.',
  '{item} at {place}': '{item} bei {place}',
  Fuel: 'Verpflegung',
  'What to carry and when to take it, so that water follows. Only what you have practised.':
    'Was du mitnimmst und wann du es nimmst, damit danach Wasser kommt. Nur, was du im Training erprobt hast.',
  'How you fuel': 'Wie du dich verpflegst',
  'Fuel plan': 'Verpflegungsplan',
  'On the way': 'Unterwegs',
  'Under an hour nothing is needed on the way.': 'Unter einer Stunde braucht es unterwegs nichts.',
  'For {time} of running {lower} to {upper} g of carbohydrate an hour is usual, whatever you weigh.':
    'Für {time} Laufen sind {lower} bis {upper} g Kohlenhydrate pro Stunde üblich, egal wie schwer du bist.',
  'Put into the plan': 'In den Plan übernehmen',
  Water: 'Wasser',
  'No water stations in the plan yet. Put them on the course, or into the plan.':
    'Noch keine Wasserstellen im Plan. Setze sie auf die Strecke oder trage sie in den Plan ein.',
  Breakfast: 'Frühstück',
  '{fewest} to {most} hours before the gun: {range}. {advice}':
    '{fewest} bis {most} Stunden vor dem Startschuss: {range}. {advice}',
  'The days before': 'Die Tage davor',
  Clock: 'Uhr',
  What: 'Was',
  'Water at': 'Wasser bei',
  'To carry: {count}, {grams} g in all, {rate} g an hour.':
    'Mitzunehmen: {count}, zusammen {grams} g, {rate} g pro Stunde.',
  'Take it': 'Einnehmen',
  'Half-way': 'Zur Hälfte',
  'At 10 miles': 'Bei 10 Meilen',
  'By the hour': 'Pro Stunde',
  'Carbohydrate an hour': 'Kohlenhydrate pro Stunde',
  'What you take': 'Was du nimmst',
  'Carbohydrate in one': 'Kohlenhydrate in einem',
  'The packet says it.': 'Steht auf der Packung.',
  'Body mass': 'Körpergewicht',
  'For breakfast and the days before. It stays on this device; leave it out and figures are for each kg.':
    'Für das Frühstück und die Tage davor. Es bleibt auf diesem Gerät; ohne Angabe gelten die Zahlen pro kg.',
  'Write grams an hour as a number, 1 to {n}.': 'Schreib Gramm pro Stunde als Zahl, 1 bis {n}.',
  'Write the carbohydrate of one as grams, 1 to {n}: it stands on the packet.':
    'Schreib die Kohlenhydrate in einem als Gramm, 1 bis {n}: Es steht auf der Packung.',
  'Burke et al. 2011; Jeukendrup 2014': 'Burke et al. 2011; Jeukendrup 2014',
  'Thomas et al. 2016, joint position statement':
    'Thomas et al. 2016, gemeinsame Stellungnahme der Fachverbände',
  'joint position statement 2016, as quoted by a secondary page; the statement itself not seen':
    'gemeinsame Stellungnahme der Fachverbände 2016, zitiert nach einer anderen Seite; die Stellungnahme selbst nicht gesehen',
  'The breakfast that you know from long runs: bread, oats, rice or the like, little fat and fibre. Nearer the gun, the lower figure.':
    'Das Frühstück, das du von langen Läufen kennst: Brot, Haferflocken, Reis oder Ähnliches, wenig Fett und Ballaststoffe. Näher am Startschuss der kleinere Wert.',
  'Wallis and Podlogar 2022': 'Wallis und Podlogar 2022',
  'two to three hours before, and the choice of food: common practice, no source':
    'zwei bis drei Stunden davor, und die Wahl der Speisen: gängige Praxis, ohne Quelle',
  'Under an hour nothing is needed on the way. A rinse of the mouth is enough.':
    'Unter einer Stunde braucht es unterwegs nichts. Den Mund ausspülen genügt.',
  'For a race of this length {lower} to {upper} g an hour is usual. More only if you have practised it.':
    'Für ein Rennen dieser Länge sind {lower} bis {upper} g pro Stunde üblich. Mehr nur, wenn du es geübt hast.',
  'This comes to {g} g an hour over the whole race: the first one is not at the start, and none falls into the last quarter of an hour.':
    'Das sind {g} g pro Stunde über das ganze Rennen: Das erste kommt nicht am Start, und keines fällt in die letzte Viertelstunde.',
  'No water follows one of these: carry some, or move it by hand.':
    'Nach einem davon kommt kein Wasser: Nimm welches mit oder verschiebe es von Hand.',
  'One of these waits long for water. Look whether a station is missing.':
    'Eines davon wartet lange auf Wasser. Sieh nach, ob eine Verpflegungsstelle fehlt.',
  'This race ends before 10 miles.': 'Dieses Rennen endet vor 10 Meilen.',
  'Two or three sips after the gel.': 'Zwei, drei Schlucke nach dem Gel.',
  'A sip or two if you are thirsty; else run on.':
    'Ein, zwei Schlucke, wenn du Durst hast; sonst lauf weiter.',
  'instead of {place}': 'statt {place}',
};
