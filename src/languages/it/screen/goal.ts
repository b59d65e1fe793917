import type { Catalogue } from '../../text.ts';

export const goal: Catalogue = {
  Goal: 'Obiettivo',
  'What have you run lately, and what does it say about this race? A range, not a promise.':
    'Che cosa hai corso di recente, e che cosa dice di questa gara? Un intervallo, non una promessa.',
  'What you know': 'Quello che sai',
  'What it says': 'Quello che dice',
  'Fill in a recent result to see which times it points to.':
    'Scrivi un risultato recente per vedere a quali tempi porta.',
  'What it would take': 'Che cosa ci vorrebbe',
  'By formula': 'Per formula',
  '{n} of these come from your own {runs}.': {
    one: 'Uno di questi viene dalle tue {runs}.',
    other: '{n} di questi vengono dalle tue {runs}.',
  },
  'runs||noun': 'corse',
  'Added||time': 'Aggiunto',
  '{distance} {unit} in {time}': '{distance} {unit} in {time}',
  'On a flat course on a normal day. “Added” is for weekly distance and for going long.':
    'Su un percorso piano in un giorno normale. «Aggiunto» è per la distanza settimanale e per l’allungare.',
  'On a flat course on a normal day.': 'Su un percorso piano in un giorno normale.',
  '5K': '5 km',
  '10K': '10 km',
  'half-way ({distance} {unit})': 'metà ({distance} {unit})',
  'What the goal means': 'Che cosa significa l’obiettivo',
  '{perKm} per km, {perMile} per mile. By your plan:':
    '{perKm} al km, {perMile} al miglio. Secondo il tuo piano:',
  'Heat and hills': 'Caldo e salite',
  'Fill in the temperature and open a course with heights to see what they ask of the goal.':
    'Scrivi la temperatura e apri un percorso con le quote per vedere che cosa chiedono all’obiettivo.',
  'Nothing in what you gave speaks against the goal.': 'Niente di ciò che hai dato parla contro l’obiettivo.',
  'Revise:': 'Rivedi:',
  'Consider:': 'Considera:',
  'With {climb} m of climbing an even effort takes {percent} % longer than on the flat: the middle of the range here is about {time}.':
    'Con {climb} m di dislivello uno sforzo costante richiede il {percent} % in più che in piano: il centro dell’intervallo qui è circa {time}.',
  'Results and goal': 'Risultati e obiettivo',
  'Recent result {n}': 'Risultato recente {n}',
  Distance: 'Distanza',
  Time: 'Tempo',
  'Weeks ago': 'Quante settimane fa',
  'Remove result {n}': 'Togli il risultato {n}',
  'Add a result': 'Aggiungi un risultato',
  'Races or time trials that you ran all out. Two distances say more than one.':
    'Gare o prove corse al massimo. Due distanze dicono più di una.',
  'Temperature at the race': 'Temperatura in gara',
  'Your goal': 'Il tuo obiettivo',
  'For {name}, {distance} {unit}. The plan follows at once.':
    'Per {name}, {distance} {unit}. Il piano segue subito.',
  'this race': 'questa gara',
  'Middle of the range: {time}': 'Centro dell’intervallo: {time}',
  'Quick end of the likely range: {time}': 'Lato veloce dell’intervallo probabile: {time}',
  'The inner bar holds half of runners with such results, the whole bar four in five. Quicker is left.':
    'La barra interna contiene metà di chi ha tali risultati, la barra intera quattro su cinque. Più veloce è a sinistra.',
  'Likely {quick} to {slow}, middle {middle}; goal {goal}':
    'Probabile da {quick} a {slow}, centro {middle}; obiettivo {goal}',
  'middle {time}': 'centro {time}',
  'goal {time}': 'obiettivo {time}',
  'The range as a table': 'L’intervallo come tabella',
  'what||of the range': 'che cosa',
  'from||a time': 'da',
  'to||a time': 'a',
  'half of runners': 'metà dei corridori',
  'four in five': 'quattro su cinque',
  middle: 'centro',
  goal: 'obiettivo',
  'Write the distance as a number, such as 10 or 21.1.':
    'Scrivi la distanza come numero, per esempio 10 o 21,1.',
  'Write the time as hours, minutes and seconds: 47:30 or 1:44:00.':
    'Scrivi il tempo come ore, minuti e secondi: 47:30 o 1:44:00.',
  'Write the weeks as a number, or leave them out.': 'Scrivi le settimane come numero, o lasciale vuote.',
  'Vickers and Vertosick 2016, 2303 runners: the usual formula is about right up to the half marathon, and at least 10 minutes too fast for half of recreational marathoners; the better models were still off by about 14 minutes (root mean square)':
    'Vickers e Vertosick 2016, 2303 corridori: la formula solita è più o meno giusta fino alla mezza maratona, e di almeno 10 minuti troppo veloce per metà dei maratoneti amatori; i modelli migliori sbagliavano ancora di circa 14 minuti (valore quadratico medio)',
  'Width from race-day variation of about 3 %, differences between runners and the age of the result: our own figures, set wide':
    'Ampiezza dalla variazione del giorno di gara di circa il 3 %, dalle differenze tra corridori e dall’età del risultato: cifre nostre, tenute larghe',
  Riegel: 'Riegel',
  'Riegel 1977, 1981: exponent 1.06, from efforts of 3.5 to 230 minutes':
    'Riegel 1977, 1981: esponente 1.06, da sforzi di 3.5–230 minuti',
  Cameron: 'Cameron',
  'Cameron 1998, fitted to record times': 'Cameron 1998, adattato ai tempi record',
  'Daniels and Gilbert': 'Daniels e Gilbert',
  'Daniels and Gilbert 1979: oxygen cost of a speed, and the share of the maximum that a duration allows':
    'Daniels e Gilbert 1979: costo in ossigeno di una velocità, e la quota del massimo che una durata permette',
  'Your results point to different times. Leave out any that you did not race all out.':
    'I tuoi risultati indicano tempi diversi. Lascia fuori quelli non corsi al massimo.',
  'Your results are more than half a year old. A recent race or time trial would say more.':
    'I tuoi risultati hanno più di mezzo anno. Una gara o una prova recente direbbe di più.',
  'This race is much longer than those you gave. A result nearer to its length would say more.':
    'Questa gara è molto più lunga di quelle che hai dato. Un risultato più vicino alla sua distanza direbbe di più.',
  'Beyond 3 h 50 min the usual formula was never fitted: take the slow side seriously.':
    'Oltre 3 h 50 min la formula solita non è mai stata adattata: prendi sul serio il lato lento.',
  'Slowed on purpose: beyond what you have raced or trained for, most runners slow more than the formulas say.':
    'Rallentato apposta: oltre ciò che hai gareggiato o allenato, i più rallentano più di quanto dicano le formule.',
  'a race distance between 1 km and 100 km, in metres': 'una distanza di gara tra 1 km e 100 km, in metri',
  'a time for this distance between 2:14 and 16:40 per km, in seconds':
    'un tempo per questa distanza tra 2:14 e 16:40 al km, in secondi',
  'days since the race, from 0 to 3650': 'giorni dalla gara, da 0 a 3650',
  'Ely et al. 2007: the warmer (heat, sun and humidity together), the slower everybody; who suffers most differs between studies':
    'Ely et al. 2007: più fa caldo (caldo, sole e umidità insieme), più tutti sono lenti; chi ne soffre di più varia tra gli studi',
  'Minetti et al. 2002: a climb costs more than the same descent gives back':
    'Minetti et al. 2002: una salita costa più di quanto renda la stessa discesa',
  'At {n} degrees, do not hold the goal pace. Run by effort, open slower, and let the time be what it is.':
    'A {n} gradi non tenere il passo obiettivo. Corri a sforzo, apri più piano e lascia che il tempo sia quello che è.',
  'At {n} degrees and with sun or damp air, expect to be slower. Open no quicker than goal pace.':
    'A {n} gradi e con sole o aria umida, aspettati di essere più lento. Non aprire più veloce del passo obiettivo.',
  '{source}. The limits of {from} and {to} degrees: {practice}':
    '{source}. I limiti di {from} e {to} gradi: {practice}',
  'At or below freezing, ice decides the pace. Warm up longer, and look at the ground before the clock.':
    'A zero gradi o meno il passo lo decide il ghiaccio. Riscaldati più a lungo e guarda per terra prima che l’orologio.',
  '{n} m of climbing: slower than the same effort on the flat. Set the goal from a hilly result, or give yourself more minutes.':
    '{n} m di dislivello: più lento dello stesso sforzo in piano. Fissa l’obiettivo da un risultato con salite, o datti più minuti.',
  '{n} m of climbing will cost some time. Plan by even effort, not even pace.':
    '{n} m di dislivello costeranno un po’ di tempo. Pianifica a sforzo costante, non a passo costante.',
  '{source}. The limits of {from} and {to} m a km: {practice}':
    '{source}. I limiti di {from} e {to} m al km: {practice}',
  'Keep your {n} km a week steady: enough for this race.':
    'Tieni costanti i tuoi {n} km alla settimana: bastano per questa gara.',
  'Let the week grow towards {n} km, by no more than a tenth a week, and ease every fourth week.':
    'Fai crescere la settimana verso {n} km, non più di un decimo alla settimana, e scarica ogni quarta settimana.',
  'Once a week run 15 to 30 minutes in all at a pace that you could hold for an hour, in pieces with short rests.':
    'Una volta alla settimana corri in tutto da 15 a 30 minuti a un passo che terresti per un’ora, a pezzi con brevi pause.',
  'Once a week run long and easy, and practise gel, water and breakfast on it.':
    'Una volta alla settimana corri lungo e lento, e provaci gel, acqua e colazione.',
  'Once a week run short and quick: 6 to 10 times a minute, with full rest.':
    'Una volta alla settimana corri breve e veloce: da 6 a 10 volte un minuto, con pausa piena.',
  'All the rest easy: you can talk in sentences.': 'Tutto il resto lento: puoi parlare a frasi intere.',
  'This step is more than half a year away. Choose a goal in between, race for it, and ask again.':
    'Questo passo è a più di mezzo anno. Scegli un obiettivo intermedio, gareggia per quello e chiedi di nuovo.',
  'Then race the shorter distance, and put its time in here.':
    'Poi corri la distanza più breve e metti qui il suo tempo.',
  'Daniels: at most one point of the running index in four to six weeks':
    'Daniels: al massimo un punto dell’indice di corsa in quattro–sei settimane',
  'Kinds and amounts of training: common practice, no source':
    'Tipi e quantità di allenamento: pratica comune, nessuna fonte',
  'It asks for nothing more than you have shown.': 'Non chiede più di quanto hai mostrato.',
  'It asks for {km} km in about {need} (now about {now}): often {fewest} to {most} weeks of steady training, and not everybody gets there.':
    'Chiede {km} km in circa {need} (ora circa {now}): spesso da {fewest} a {most} settimane di allenamento costante, e non tutti ci arrivano.',
  '{goal} is gentle: your results point to {quick} to {slow}. A calm race, or room for a quicker goal.':
    '{goal} è tranquillo: i tuoi risultati indicano da {quick} a {slow}. Una gara calma, o spazio per un obiettivo più veloce.',
  '{goal} fits your results, which point to {quick} to {slow}. The chance on a normal day: {odds}.':
    '{goal} va con i tuoi risultati, che indicano da {quick} a {slow}. La probabilità in un giorno normale: {odds}.',
  '{goal} is ambitious: your results point to {quick} to {slow}. It can happen on a very good day: {odds}. Keep a second goal nearer to {middle}.':
    '{goal} è ambizioso: i tuoi risultati indicano da {quick} a {slow}. Può riuscire in un giorno molto buono: {odds}. Tieni un secondo obiettivo più vicino a {middle}.',
  '{goal} is beyond what your results show now, {quick} to {slow} (chance: {odds}). Keep it for a later race, and run this one for about {middle}.':
    '{goal} va oltre ciò che i tuoi risultati mostrano ora, da {quick} a {slow} (probabilità: {odds}). Tienilo per un’altra gara e corri questa in circa {middle}.',
  '{time} for a half marathon': '{time} per una mezza maratona',
  '{time} for a marathon': '{time} per una maratona',
  '{time} for {distance}': '{time} per {distance}',
  'Vickers and Vertosick 2016: predictions that know the weekly distance are better; fewer kilometres, slower marathon':
    'Vickers e Vertosick 2016: le previsioni che conoscono la distanza settimanale sono migliori; meno chilometri, maratona più lenta',
  'How much a weekly kilometre counts is our own cautious figure (common practice, no source)':
    'Quanto conta un chilometro settimanale è una nostra cifra prudente (pratica comune, nessuna fonte)',
  Formula: 'Formula',
};
