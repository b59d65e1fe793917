import type { Catalogue } from '../../text.ts';

export const paper: Catalogue = {
  'clock||column': 'reloj',
  'take||column': 'tomar',
  'split||column': 'parcial',
  'safe||goal': 'seguro',
  'dream||goal': 'sueño',
  'tape here, under the other end': 'pega aquí la cinta, bajo el otro extremo',
  'Wrist band': 'Pulsera',
  '{name}: wrist band': '{name}: pulsera',
  'Cut along the outer line. Fold along the dashes, so that the clock lies outside and the splits behind it. Wrap it around the wrist and tape the ends together. ○ offered by the race, ◆ yours: each is to be had before the line that it stands in.':
    'Corta por la línea exterior. Dobla por los guiones, de modo que el reloj quede fuera y los parciales detrás. Ponla alrededor de la muñeca y pega los extremos. ○ ofrece la carrera, ◆ tuyo: cada cosa llega antes de la línea en la que está.',
  Paper: 'Papel',
  "A wrist band and a race sheet, one A4 page each. Print both, or choose the page in the print window. Print at 100 %, without the browser's own headers.":
    'Una pulsera y una hoja de carrera, una página A4 cada una. Imprime las dos o elige la página en la ventana de impresión. Imprime al 100 %, sin los encabezados del navegador.',
  'Boards||on the road': 'Carteles',
  Kilometres: 'Kilómetros',
  Miles: 'Millas',
  Print: 'Imprimir',
  'Race sheet': 'Hoja de carrera',
  Before: 'Antes',
  'Not planned yet: see Race day.': 'Aún sin planear: mira Día de carrera.',
  Checkpoints: 'Puntos de control',
  'Cut-offs': 'Tiempos de corte',
  'Water and fuel': 'Agua y energía',
  'None in the plan.': 'Ninguno en el plan.',
  'Take care': 'A tener en cuenta',
  'Opening: to {place} at {pace}, {n} s per km slower than goal pace. No more than that.':
    'Apertura: hasta {place} a {pace}, {n} s por km más lento que el ritmo objetivo. No más que eso.',
  'Opening: to {place} at {pace}, {n} s per km quicker than goal pace. No more than that.':
    'Apertura: hasta {place} a {pace}, {n} s por km más rápido que el ritmo objetivo. No más que eso.',
  'Push: from {place} at {pace}, if the legs allow it.':
    'Empujón: desde {place} a {pace}, si las piernas lo permiten.',
  'On hills keep the effort, not the pace; the times at the checkpoints know the hills.':
    'En las cuestas mantén el esfuerzo, no el ritmo; los tiempos de los puntos de control conocen las cuestas.',
  'Then settle: {pace} to the finish.': 'Luego asiéntate: {pace} hasta la meta.',
  'From the line: {pace} to the finish.': 'Desde la línea: {pace} hasta la meta.',
  'Then settle: {pace} to {place}.': 'Luego asiéntate: {pace} hasta {place}.',
  'From the line: {pace} to {place}.': 'Desde la línea: {pace} hasta {place}.',
  '{time} by your own clock': '{time} por tu propio reloj',
  "{time} by the gun's clock": '{time} por el reloj del disparo',
  'flag {time}, by the gun': 'bandera {time}, por el disparo',
  'flag {time}, by their own clock': 'bandera {time}, por su propio reloj',
  'Goal pace': 'Ritmo objetivo',
  '{perKm}, {perMile}': '{perKm}, {perMile}',
  'The plan finishes in': 'El plan acaba en',
  'Safe goal': 'Objetivo seguro',
  'Dream goal': 'Objetivo sueño',
  'water: {text}': 'agua: {text}',
  '{time} after the gun': '{time} después del disparo',
  'half||place': 'mitad',
};
