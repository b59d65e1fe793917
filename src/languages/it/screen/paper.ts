import type { Catalogue } from '../../text.ts';

export const paper: Catalogue = {
  'clock||column': 'orologio',
  'take||column': 'prendi',
  'split||column': 'parziale',
  'safe||goal': 'sicuro',
  'dream||goal': 'sogno',
  'tape here, under the other end': 'nastro qui, sotto l’altro capo',
  'Wrist band': 'Braccialetto',
  '{name}: wrist band': '{name}: braccialetto',
  'Cut along the outer line. Fold along the dashes, so that the clock lies outside and the splits behind it. Wrap it around the wrist and tape the ends together. ○ offered by the race, ◆ yours: each is to be had before the line that it stands in.':
    'Taglia lungo la linea esterna. Piega sui tratteggi, così che l’orologio stia fuori e i parziali dietro. Avvolgilo al polso e unisci i capi con il nastro. ○ offerto dalla gara, ◆ tuo: ogni cosa si prende prima della riga in cui sta.',
  Paper: 'Carta',
  "A wrist band and a race sheet, one A4 page each. Print both, or choose the page in the print window. Print at 100 %, without the browser's own headers.":
    'Un braccialetto e un foglio di gara, una pagina A4 ciascuno. Stampa entrambi o scegli la pagina nella finestra di stampa. Stampa al 100 %, senza le intestazioni del browser.',
  'Boards||on the road': 'Cartelli',
  Kilometres: 'Chilometri',
  Miles: 'Miglia',
  Print: 'Stampa',
  'Race sheet': 'Foglio di gara',
  Before: 'Prima',
  'Not planned yet: see Race day.': 'Non ancora deciso: vedi Giorno di gara.',
  Checkpoints: 'Punti di controllo',
  'Cut-offs': 'Tempi limite',
  'Water and fuel': 'Acqua ed energia',
  'None in the plan.': 'Nessuno nel piano.',
  'Take care': 'Da tenere a mente',
  'Opening: to {place} at {pace}, {n} s per km slower than goal pace. No more than that.':
    'Apertura: fino a {place} a {pace}, {n} s al km più lento del passo obiettivo. Non di più.',
  'Opening: to {place} at {pace}, {n} s per km quicker than goal pace. No more than that.':
    'Apertura: fino a {place} a {pace}, {n} s al km più veloce del passo obiettivo. Non di più.',
  'Push: from {place} at {pace}, if the legs allow it.':
    'Spinta: da {place} a {pace}, se le gambe lo permettono.',
  'On hills keep the effort, not the pace; the times at the checkpoints know the hills.':
    'Sulle salite tieni lo sforzo, non il passo; i tempi ai punti di controllo conoscono le salite.',
  'Then settle: {pace} to the finish.': 'Poi assestati: {pace} fino all’arrivo.',
  'From the line: {pace} to the finish.': 'Dalla linea: {pace} fino all’arrivo.',
  'Then settle: {pace} to {place}.': 'Poi assestati: {pace} fino a {place}.',
  'From the line: {pace} to {place}.': 'Dalla linea: {pace} fino a {place}.',
  '{time} by your own clock': '{time} sul tuo orologio',
  "{time} by the gun's clock": '{time} sull’orologio dello sparo',
  'flag {time}, by the gun': 'bandiera {time}, dallo sparo',
  'flag {time}, by their own clock': 'bandiera {time}, sul suo orologio',
  'Goal pace': 'Passo obiettivo',
  '{perKm}, {perMile}': '{perKm}, {perMile}',
  'The plan finishes in': 'Il piano finisce in',
  'Safe goal': 'Obiettivo sicuro',
  'Dream goal': 'Obiettivo sogno',
  'water: {text}': 'acqua: {text}',
  '{time} after the gun': '{time} dopo lo sparo',
  'half||place': 'metà',
};
