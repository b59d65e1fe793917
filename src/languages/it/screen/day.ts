import type { Catalogue } from '../../text.ts';

export const day: Catalogue = {
  'Today.': 'Oggi.',
  'Tomorrow.': 'Domani.',
  'In {n} days.': 'Tra {n} giorni.',
  'That day is over.': 'Quel giorno è passato.',
  'Race day': 'Giorno di gara',
  'From waking to the gun, by the clock.': 'Dalla sveglia allo sparo, ora per ora.',
  'What decides the day': 'Che cosa decide la giornata',
  'The day by the clock': 'La giornata ora per ora',
  'evening before': 'la sera prima',
  'Into the calendar (.ics)': 'Nel calendario (.ics)',
  'With the date of the race, the day goes into your calendar.':
    'Con la data della gara, la giornata va nel tuo calendario.',
  'Said aloud': 'A voce',
  'On race day this page tells you each step, in the same voice as in the race, as long as it is open and the screen is on. A phone puts pages to sleep: the calendar is the one that rings for certain.':
    'Il giorno della gara questa pagina ti dice ogni passo, con la stessa voce della gara, finché è aperta e lo schermo è acceso. Un telefono addormenta le pagine: quello che suona di sicuro è il calendario.',
  'Tell me each step': 'Dimmi ogni passo',
  'Stop telling me': 'Smetti di dirmelo',
  'Hear how it sounds': 'Senti come suona',
  'Next: {what}. Keep this page open.': 'Poi: {what}. Tieni aperta questa pagina.',
  '{day}/{month}': '{day}/{month}',
  'The last two weeks': 'Le ultime due settimane',
  'Fill in the date, your running days and your weekly distance to see the last two weeks day by day: less running, as quick as ever.':
    'Scrivi la data, i tuoi giorni di corsa e la distanza settimanale per vedere le ultime due settimane giorno per giorno: correre meno, veloce come sempre.',
  'Less running, as quick as ever: {first} % less than your usual week, then {second} % less.':
    'Meno corsa, veloce come sempre: {first} % in meno della tua settimana solita, poi {second} % in meno.',
  'Date of the race': 'Data della gara',
  'The gun goes at': 'Lo sparo è alle',
  'The pen closes before the gun': 'La griglia chiude prima dello sparo',
  'Travel, door to race': 'Viaggio, da casa alla gara',
  'Temperature at the start': 'Temperatura alla partenza',
  'You run in a week': 'Corri alla settimana',
  'On which days you run': 'In quali giorni corri',
  'Your long run is on': 'Il tuo lungo è di',
  'This needs {expected}.': 'Serve {expected}.',
  '{time}: {what}. {reason}': '{time}: {what}. {reason}',
  '{what} at {time}': '{what} alle {time}',
  'All steps, one after the other.': 'Tutti i passi, uno dopo l’altro.',
  'Take an old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Porta una maglia vecchia o un sacco per rifiuti con fori per testa e braccia; toglilo poco prima dello sparo.',
  'An old warm top, a bin bag with holes for head and arms over it, and gloves; take them off just before the gun.':
    'Una maglia vecchia e calda, sopra un sacco per rifiuti con fori per testa e braccia, e guanti; toglili poco prima dello sparo.',
  'An old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Una maglia vecchia o un sacco per rifiuti con fori per testa e braccia; toglilo poco prima dello sparo.',
  'Nothing over the race kit, unless it rains or blows: then a bin bag with holes.':
    'Niente sopra gli abiti da gara, salvo pioggia o vento: allora un sacco per rifiuti con fori.',
  'Nothing over the race kit. Stand in the shade, and wet your head if there is water.':
    'Niente sopra gli abiti da gara. Stai all’ombra e bagnati la testa se c’è acqua.',
  'Fradkin et al. 2010: a warm-up helped in 79 % of criteria over 32 studies':
    'Fradkin et al. 2010: un riscaldamento ha aiutato nel 79 % dei criteri di 32 studi',
  '{lower} to {upper} g of carbohydrate, as much as you are used to. {text}':
    'da {lower} a {upper} g di carboidrati, quanto sei abituato. {text}',
  '{lower} to {upper} g of carbohydrate for each kg of body mass, as much as you are used to. {text}':
    'da {lower} a {upper} g di carboidrati per ogni kg di peso, quanto sei abituato. {text}',
  'Get up': 'Sveglia',
  'Time to eat and leave without hurry. Ill or feverish? Stay at home.':
    'Tempo per mangiare e partire senza fretta. Malato o con la febbre? Resta a casa.',
  'Breakfast, packed the evening before': 'Colazione, preparata la sera prima',
  'Wallis and Podlogar 2022: 1 to 4 g/kg in the 1 to 4 hours before':
    'Wallis e Podlogar 2022: da 1 a 4 g/kg nelle 1–4 ore prima',
  'Leave||for the race': 'Parti',
  '{n} min of travel.': '{n} min di viaggio.',
  'Last full drink': 'Ultima bevuta abbondante',
  'From here on only sips if thirsty, so that nothing is left to lose in the pen.':
    'Da qui solo sorsi se hai sete, così non ti scapperà in griglia.',
  Arrive: 'Arriva',
  'Toilet first, then the bag, then a look at the way to the pen.':
    'Prima il bagno, poi la borsa, poi uno sguardo alla strada per la griglia.',
  'Warm-up: {n} min easy': 'Riscaldamento: {n} min lenti',
  'So easy that you could talk; off the road.': 'Così lento che potresti parlare; fuori dalla strada.',
  '{n} strides': '{n} allunghi',
  '20 seconds each at a little quicker than race pace, a walk back between.':
    '20 secondi ciascuno, un po’ più veloce del passo gara, e ritorno camminando.',
  'Warm kit off, layers on': 'Via gli abiti caldi, strati addosso',
  'In the pen': 'In griglia',
  'It closes early: keep the layers on and move on the spot.':
    'Chiude presto: tieni gli strati e muoviti sul posto.',
  'Layers off for the last minutes. Have the run open on the phone, waiting for the gun.':
    'Via gli strati per gli ultimi minuti. Tieni la corsa aperta sul telefono, in attesa dello sparo.',
  'Your own clock starts at the line.': 'Il tuo orologio comincia alla linea.',
  'a minute of the day, 0 to 1439': 'un minuto del giorno, da 0 a 1439',
  'minutes before the gun, 0 to 90': 'minuti prima dello sparo, da 0 a 90',
  'minutes of travel, 0 to 600': 'minuti di viaggio, da 0 a 600',
  'degrees Celsius, -40 to 50': 'gradi Celsius, da -40 a 50',
  'a race of 5 minutes to 55 hours, in seconds': 'una gara da 5 minuti a 55 ore, in secondi',
  'kilograms, 25 to 250': 'chilogrammi, da 25 a 250',
  'In it {n} times 1 km at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Dentro, {n} volte 1 km a passo obiettivo, {pace}, due minuti lenti in mezzo. Finisci fresco.',
  'In it {n} times 400 m at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Dentro, {n} volte 400 m a passo obiettivo, {pace}, due minuti lenti in mezzo. Finisci fresco.',
  'Rest||day': 'Riposo',
  'As in your usual week. A walk is fine.': 'Come nella tua settimana solita. Una passeggiata va bene.',
  '{distance} easy': '{distance} lenti',
  'You can talk in sentences.': 'Puoi parlare a frasi intere.',
  'Easy, with four strides at the end.': 'Lento, con quattro allunghi alla fine.',
  '{distance} steady, the longest of the week': '{distance} costanti, la più lunga della settimana',
  'Easy. Practise breakfast, gel and water once more.':
    'Lento. Prova ancora una volta colazione, gel e acqua.',
  'Easy, the last ten minutes at goal pace, {pace}.':
    'Lento, gli ultimi dieci minuti a passo obiettivo, {pace}.',
  '{distance} with goal pace in it': '{distance} con dentro il passo obiettivo',
  '{distance} very easy': '{distance} molto lenti',
  'Then three strides of 20 seconds. Lay out kit, number and breakfast.':
    'Poi tre allunghi di 20 secondi. Prepara abiti, pettorale e colazione.',
  'Race: {race}': 'Gara: {race}',
  'By the plan.': 'Secondo il piano.',
  'Bosquet et al. 2007: two weeks, volume down 41 to 60 %, intensity and frequency kept':
    'Bosquet et al. 2007: due settimane, volume ridotto dal 41 al 60 %, intensità e frequenza mantenute',
};
