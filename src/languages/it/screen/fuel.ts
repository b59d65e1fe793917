import type { Catalogue } from '../../text.ts';

export const fuel: Catalogue = {
  '{lower} to {upper} g of carbohydrate for each kg of body mass':
    'da {lower} a {upper} g di carboidrati per ogni kg di peso',
  '{lower} to {upper} g of carbohydrate ({lowerKg} to {upperKg} g for each kg)':
    'da {lower} a {upper} g di carboidrati (da {lowerKg} a {upperKg} g per ogni kg)',
  'For less than an hour: eat as usual.': 'Per meno di un’ora: mangia come al solito.',
  'The {n} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    'Le {n} ore prima: {range} ogni 24 ore, tutti i pasti insieme, e poca corsa. È molto cibo: provalo prima di un lungo.',
  'From {fewest} to {most} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    'Da {fewest} a {most} ore prima: {range} ogni 24 ore, tutti i pasti insieme, e poca corsa. È molto cibo: provalo prima di un lungo.',
  'In the plan now: nothing to take. The voice tells you 200 to 300 m ahead.':
    'Ora nel piano: niente da prendere. La voce ti avvisa 200–300 m prima.',
  'In the plan now: {list} {unit}. The voice tells you 200 to 300 m ahead.':
    'Ora nel piano: {list} {unit}. La voce ti avvisa 200–300 m prima.',
  '{item} at {place}': '{item} a {place}',
  Fuel: 'Energia',
  'What to carry and when to take it, so that water follows. Only what you have practised.':
    'Che cosa portare e quando prenderlo, così che segua l’acqua. Solo ciò che hai provato.',
  'How you fuel': 'Come ti alimenti',
  'Fuel plan': 'Piano di energia',
  'On the way': 'In gara',
  'Under an hour nothing is needed on the way.': 'Sotto l’ora in gara non serve niente.',
  'For {time} of running {lower} to {upper} g of carbohydrate an hour is usual, whatever you weigh.':
    'Per {time} di corsa sono usuali da {lower} a {upper} g di carboidrati l’ora, qualunque sia il tuo peso.',
  'Put into the plan': 'Metti nel piano',
  Water: 'Acqua',
  'No water stations in the plan yet. Put them on the course, or into the plan.':
    'Nel piano non ci sono ancora ristori con acqua. Mettili sul percorso o nel piano.',
  Breakfast: 'Colazione',
  '{fewest} to {most} hours before the gun: {range}. {advice}':
    'Da {fewest} a {most} ore prima dello sparo: {range}. {advice}',
  'The days before': 'I giorni prima',
  Clock: 'Ora',
  What: 'Cosa',
  'Water at': 'Acqua a',
  'To carry: {count}, {grams} g in all, {rate} g an hour.':
    'Da portare: {count}, {grams} g in tutto, {rate} g l’ora.',
  'Take it': 'Prendilo',
  'Half-way': 'A metà',
  'At 10 miles': 'A 10 miglia',
  'By the hour': 'A ore',
  'Carbohydrate an hour': 'Carboidrati l’ora',
  'What you take': 'Che cosa prendi',
  'Carbohydrate in one': 'Carboidrati in uno',
  'The packet says it.': 'È scritto sulla confezione.',
  'Body mass': 'Peso',
  'For breakfast and the days before. It stays on this device; leave it out and figures are for each kg.':
    'Per la colazione e i giorni prima. Resta su questo dispositivo; se lo lasci vuoto, le cifre sono per ogni kg.',
  'Write grams an hour as a number, 1 to {n}.': 'Scrivi i grammi l’ora come numero, da 1 a {n}.',
  'Write the carbohydrate of one as grams, 1 to {n}: it stands on the packet.':
    'Scrivi i carboidrati di uno in grammi, da 1 a {n}: è scritto sulla confezione.',
  'Burke et al. 2011; Jeukendrup 2014': 'Burke et al. 2011; Jeukendrup 2014',
  'Thomas et al. 2016, joint position statement': 'Thomas et al. 2016, dichiarazione congiunta',
  'joint position statement 2016, as quoted by a secondary page; the statement itself not seen':
    'dichiarazione congiunta del 2016, citata da una pagina secondaria; la dichiarazione stessa non è stata vista',
  'The breakfast that you know from long runs: bread, oats, rice or the like, little fat and fibre. Nearer the gun, the lower figure.':
    'La colazione che conosci dai lunghi: pane, avena, riso o simili, pochi grassi e fibre. Più vicino allo sparo, la cifra bassa.',
  'Wallis and Podlogar 2022': 'Wallis e Podlogar 2022',
  'two to three hours before, and the choice of food: common practice, no source':
    'da due a tre ore prima, e la scelta del cibo: pratica comune, nessuna fonte',
  'Under an hour nothing is needed on the way. A rinse of the mouth is enough.':
    'Sotto l’ora in gara non serve niente. Basta sciacquare la bocca.',
  'For a race of this length {lower} to {upper} g an hour is usual. More only if you have practised it.':
    'Per una gara di questa durata sono usuali da {lower} a {upper} g l’ora. Di più solo se l’hai provato.',
  'This comes to {g} g an hour over the whole race: the first one is not at the start, and none falls into the last quarter of an hour.':
    'In tutto sono {g} g l’ora su tutta la gara: il primo non è alla partenza, e nessuno cade nell’ultimo quarto d’ora.',
  'No water follows one of these: carry some, or move it by hand.':
    'A uno di questi non segue acqua: portane un po’, o spostalo a mano.',
  'One of these waits long for water. Look whether a station is missing.':
    'Uno di questi aspetta a lungo l’acqua. Guarda se manca un ristoro.',
  'This race ends before 10 miles.': 'Questa gara finisce prima di 10 miglia.',
  'Two or three sips after the gel.': 'Due o tre sorsi dopo il gel.',
  'A sip or two if you are thirsty; else run on.': 'Un sorso o due se hai sete; altrimenti tira dritto.',
  'instead of {place}': 'invece di {place}',
};
