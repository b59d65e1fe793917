import type { Catalogue } from '../../text.ts';

export const day: Catalogue = {
  'Today.': 'Heute.',
  'Tomorrow.': 'Morgen.',
  'In {n} days.': 'In {n} Tagen.',
  'That day is over.': 'Dieser Tag ist vorbei.',
  'Race day': 'Renntag',
  'From waking to the gun, by the clock.': 'Vom Aufwachen bis zum Startschuss, nach der Uhr.',
  'What decides the day': 'Was den Tag bestimmt',
  'The day by the clock': 'Der Tag nach der Uhr',
  'evening before': 'Vorabend',
  'Into the calendar (.ics)': 'In den Kalender (.ics)',
  'With the date of the race, the day goes into your calendar.':
    'Mit dem Datum des Rennens kommt der Tag in deinen Kalender.',
  'Said aloud': 'Zum Anhören',
  'On race day this page tells you each step, in the same voice as in the race, as long as it is open and the screen is on. A phone puts pages to sleep: the calendar is the one that rings for certain.':
    'Am Renntag sagt dir diese Seite jeden Schritt, mit derselben Stimme wie im Rennen, solange sie offen und der Bildschirm an ist. Ein Handy legt Seiten schlafen: Sicher klingelt nur der Kalender.',
  'Tell me each step': 'Sag mir jeden Schritt',
  'Stop telling me': 'Nichts mehr sagen',
  'Hear how it sounds': 'Anhören, wie es klingt',
  'Next: {what}. Keep this page open.': 'Als Nächstes: {what}. Lass diese Seite offen.',
  '{day}/{month}': '{day}.{month}.',
  'The last two weeks': 'Die letzten zwei Wochen',
  'Fill in the date, your running days and your weekly distance to see the last two weeks day by day: less running, as quick as ever.':
    'Trag Datum, Lauftage und Wochenkilometer ein, um die letzten zwei Wochen Tag für Tag zu sehen: weniger laufen, so schnell wie immer.',
  'Less running, as quick as ever: {first} % less than your usual week, then {second} % less.':
    'Weniger laufen, so schnell wie immer: {first} % weniger als in deiner üblichen Woche, dann {second} % weniger.',
  'Date of the race': 'Datum des Rennens',
  'The gun goes at': 'Startschuss um',
  'The pen closes before the gun': 'Startblock schließt vor dem Startschuss',
  'Travel, door to race': 'Anreise, von der Haustür bis zum Rennen',
  'Temperature at the start': 'Temperatur am Start',
  'You run in a week': 'Du läufst pro Woche',
  'On which days you run': 'An welchen Tagen du läufst',
  'Your long run is on': 'Dein langer Lauf ist am',
  'This needs {expected}.': 'Hier gehört hin: {expected}.',
  '{time}: {what}. {reason}': '{time}: {what}. {reason}',
  '{what} at {time}': '{what} um {time}',
  'All steps, one after the other.': 'Alle Schritte, einer nach dem anderen.',
  'Take an old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Nimm ein altes Oberteil mit oder einen Müllsack mit Löchern für Kopf und Arme; zieh es kurz vor dem Startschuss aus.',
  'An old warm top, a bin bag with holes for head and arms over it, and gloves; take them off just before the gun.':
    'Ein altes warmes Oberteil, darüber ein Müllsack mit Löchern für Kopf und Arme, und Handschuhe; zieh alles kurz vor dem Startschuss aus.',
  'An old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Ein altes Oberteil oder ein Müllsack mit Löchern für Kopf und Arme; zieh es kurz vor dem Startschuss aus.',
  'Nothing over the race kit, unless it rains or blows: then a bin bag with holes.':
    'Nichts über den Laufsachen, außer bei Regen oder Wind: dann ein Müllsack mit Löchern.',
  'Nothing over the race kit. Stand in the shade, and wet your head if there is water.':
    'Nichts über den Laufsachen. Steh im Schatten und mach den Kopf nass, wenn es Wasser gibt.',
  'Fradkin et al. 2010: a warm-up helped in 79 % of criteria over 32 studies':
    'Fradkin et al. 2010: Aufwärmen half bei 79 % der Kriterien aus 32 Studien',
  '{lower} to {upper} g of carbohydrate, as much as you are used to. {text}':
    '{lower} bis {upper} g Kohlenhydrate, so viel du gewohnt bist. {text}',
  '{lower} to {upper} g of carbohydrate for each kg of body mass, as much as you are used to. {text}':
    '{lower} bis {upper} g Kohlenhydrate pro kg Körpergewicht, so viel du gewohnt bist. {text}',
  'Get up': 'Aufstehen',
  'Time to eat and leave without hurry. Ill or feverish? Stay at home.':
    'Zeit, ohne Eile zu essen und aufzubrechen. Krank oder fiebrig? Bleib zu Hause.',
  'Breakfast, packed the evening before': 'Frühstück, am Vorabend eingepackt',
  'Wallis and Podlogar 2022: 1 to 4 g/kg in the 1 to 4 hours before':
    'Wallis und Podlogar 2022: 1 bis 4 g/kg in den 1 bis 4 Stunden davor',
  'Leave||for the race': 'Aufbrechen',
  '{n} min of travel.': '{n} min Anreise.',
  'Last full drink': 'Letztes Mal richtig trinken',
  'From here on only sips if thirsty, so that nothing is left to lose in the pen.':
    'Ab jetzt nur noch Schlucke, wenn du Durst hast, damit im Startblock nichts mehr drückt.',
  Arrive: 'Ankommen',
  'Toilet first, then the bag, then a look at the way to the pen.':
    'Erst zur Toilette, dann die Tasche abgeben, dann den Weg zum Startblock ansehen.',
  'Warm-up: {n} min easy': 'Aufwärmen: {n} min locker',
  'So easy that you could talk; off the road.': 'So locker, dass du reden könntest; abseits der Straße.',
  '{n} strides': '{n} Steigerungen',
  '20 seconds each at a little quicker than race pace, a walk back between.':
    'Je 20 Sekunden etwas schneller als Renntempo, dazwischen zurückgehen.',
  'Warm kit off, layers on': 'Trainingszeug aus, alte Sachen über',
  'In the pen': 'Im Startblock',
  'It closes early: keep the layers on and move on the spot.':
    'Er schließt früh: Lass die alten Sachen an und beweg dich auf der Stelle.',
  'Layers off for the last minutes. Have the run open on the phone, waiting for the gun.':
    'Alte Sachen aus für die letzten Minuten. Hab den Lauf auf dem Handy offen, bereit für den Startschuss.',
  'Your own clock starts at the line.': 'Deine eigene Uhr startet an der Linie.',
  'a minute of the day, 0 to 1439': 'eine Minute des Tages, 0 bis 1439',
  'minutes before the gun, 0 to 90': 'Minuten vor dem Startschuss, 0 bis 90',
  'minutes of travel, 0 to 600': 'Minuten Anreise, 0 bis 600',
  'degrees Celsius, -40 to 50': 'Grad Celsius, −40 bis 50',
  'a race of 5 minutes to 55 hours, in seconds': 'ein Rennen von 5 Minuten bis 55 Stunden, in Sekunden',
  'kilograms, 25 to 250': 'Kilogramm, 25 bis 250',
  'In it {n} times 1 km at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Darin {n}-mal 1 km im Zieltempo, {pace}, dazwischen zwei Minuten locker. Hör auf, solange du frisch bist.',
  'In it {n} times 400 m at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Darin {n}-mal 400 m im Zieltempo, {pace}, dazwischen zwei Minuten locker. Hör auf, solange du frisch bist.',
  'Rest||day': 'Ruhetag',
  'As in your usual week. A walk is fine.': 'Wie in deiner üblichen Woche. Ein Spaziergang passt.',
  '{distance} easy': '{distance} locker',
  'You can talk in sentences.': 'Du kannst in ganzen Sätzen reden.',
  'Easy, with four strides at the end.': 'Locker, mit vier Steigerungen am Ende.',
  '{distance} steady, the longest of the week': '{distance} gleichmäßig, der längste der Woche',
  'Easy. Practise breakfast, gel and water once more.': 'Locker. Übe Frühstück, Gel und Wasser noch einmal.',
  'Easy, the last ten minutes at goal pace, {pace}.':
    'Locker, die letzten zehn Minuten im Zieltempo, {pace}.',
  '{distance} with goal pace in it': '{distance}, teils im Zieltempo',
  '{distance} very easy': '{distance} sehr locker',
  'Then three strides of 20 seconds. Lay out kit, number and breakfast.':
    'Dann drei Steigerungen von 20 Sekunden. Leg Sachen, Startnummer und Frühstück bereit.',
  'Race: {race}': 'Rennen: {race}',
  'By the plan.': 'Nach Plan.',
  'Bosquet et al. 2007: two weeks, volume down 41 to 60 %, intensity and frequency kept':
    'Bosquet et al. 2007: zwei Wochen, Umfang um 41 bis 60 % gesenkt, Intensität und Häufigkeit beibehalten',
};
