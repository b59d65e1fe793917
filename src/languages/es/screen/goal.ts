import type { Catalogue } from '../../text.ts';

export const goal: Catalogue = {
  Goal: 'Objetivo',
  'What have you run lately, and what does it say about this race? A range, not a promise.':
    '¿Qué has corrido últimamente y qué dice de esta carrera? Un margen, no una promesa.',
  'What you know': 'Lo que sabes',
  'What it says': 'Lo que dice',
  'Fill in a recent result to see which times it points to.':
    'Escribe un resultado reciente para ver a qué tiempos apunta.',
  'What it would take': 'Lo que haría falta',
  'By formula': 'Por fórmula',
  '{n} of these come from your own {runs}.': {
    one: 'Uno de estos viene de tus propias {runs}.',
    other: '{n} de estos vienen de tus propias {runs}.',
  },
  'runs||noun': 'carreras',
  'Added||time': 'Añadido',
  '{distance} {unit} in {time}': '{distance} {unit} en {time}',
  'On a flat course on a normal day. “Added” is for weekly distance and for going long.':
    'En un recorrido llano un día normal. «Añadido» es por la distancia semanal y por alargar.',
  'On a flat course on a normal day.': 'En un recorrido llano un día normal.',
  '5K': '5 km',
  '10K': '10 km',
  'half-way ({distance} {unit})': 'mitad ({distance} {unit})',
  'What the goal means': 'Qué significa el objetivo',
  '{perKm} per km, {perMile} per mile. By your plan:': '{perKm} por km, {perMile} por milla. Según tu plan:',
  'Heat and hills': 'Calor y cuestas',
  'Fill in the temperature and open a course with heights to see what they ask of the goal.':
    'Escribe la temperatura y abre un recorrido con alturas para ver qué exigen al objetivo.',
  'Nothing in what you gave speaks against the goal.':
    'Nada de lo que has dado habla en contra del objetivo.',
  'Revise:': 'Revísalo:',
  'Consider:': 'Considera:',
  'With {climb} m of climbing an even effort takes {percent} % longer than on the flat: the middle of the range here is about {time}.':
    'Con {climb} m de desnivel un esfuerzo parejo tarda un {percent} % más que en llano: aquí el centro del margen son unos {time}.',
  'Results and goal': 'Resultados y objetivo',
  'Recent result {n}': 'Resultado reciente {n}',
  Distance: 'Distancia',
  Time: 'Tiempo',
  'Weeks ago': 'Hace cuántas semanas',
  'Remove result {n}': 'Quitar el resultado {n}',
  'Add a result': 'Añadir un resultado',
  'Races or time trials that you ran all out. Two distances say more than one.':
    'Carreras o pruebas corridas a tope. Dos distancias dicen más que una.',
  'Temperature at the race': 'Temperatura en la carrera',
  'Your goal': 'Tu objetivo',
  'For {name}, {distance} {unit}. The plan follows at once.':
    'Para {name}, {distance} {unit}. El plan lo sigue al momento.',
  'this race': 'esta carrera',
  'Middle of the range: {time}': 'Centro del margen: {time}',
  'Quick end of the likely range: {time}': 'Lado rápido del margen probable: {time}',
  'The inner bar holds half of runners with such results, the whole bar four in five. Quicker is left.':
    'La barra interior abarca a la mitad de los corredores con tales resultados, la barra entera a cuatro de cada cinco. Más rápido queda a la izquierda.',
  'Likely {quick} to {slow}, middle {middle}; goal {goal}':
    'Probable de {quick} a {slow}, centro {middle}; objetivo {goal}',
  'middle {time}': 'centro {time}',
  'goal {time}': 'objetivo {time}',
  'The range as a table': 'El margen como tabla',
  'what||of the range': 'qué',
  'from||a time': 'de',
  'to||a time': 'a',
  'half of runners': 'la mitad de los corredores',
  'four in five': 'cuatro de cada cinco',
  middle: 'centro',
  goal: 'objetivo',
  'Write the distance as a number, such as 10 or 21.1.':
    'Escribe la distancia como número, por ejemplo 10 o 21,1.',
  'Write the time as hours, minutes and seconds: 47:30 or 1:44:00.':
    'Escribe el tiempo en horas, minutos y segundos: 47:30 o 1:44:00.',
  'Write the weeks as a number, or leave them out.': 'Escribe las semanas como número, o déjalas vacías.',
  'Vickers and Vertosick 2016, 2303 runners: the usual formula is about right up to the half marathon, and at least 10 minutes too fast for half of recreational marathoners; the better models were still off by about 14 minutes (root mean square)':
    'Vickers y Vertosick 2016, 2303 corredores: la fórmula habitual acierta más o menos hasta la media maratón, y es al menos 10 minutos demasiado rápida para la mitad de los maratonianos populares; los mejores modelos aún erraban unos 14 minutos (media cuadrática)',
  'Width from race-day variation of about 3 %, differences between runners and the age of the result: our own figures, set wide':
    'Anchura por la variación del día de carrera, de un 3 %, las diferencias entre corredores y la edad del resultado: cifras nuestras, puestas anchas',
  Riegel: 'Riegel',
  'Riegel 1977, 1981: exponent 1.06, from efforts of 3.5 to 230 minutes':
    'Riegel 1977, 1981: exponente 1.06, de esfuerzos de 3.5 a 230 minutos',
  Cameron: 'Cameron',
  'Cameron 1998, fitted to record times': 'Cameron 1998, ajustado a tiempos récord',
  'Daniels and Gilbert': 'Daniels y Gilbert',
  'Daniels and Gilbert 1979: oxygen cost of a speed, and the share of the maximum that a duration allows':
    'Daniels y Gilbert 1979: coste de oxígeno de una velocidad y la parte del máximo que permite una duración',
  'Your results point to different times. Leave out any that you did not race all out.':
    'Tus resultados apuntan a tiempos distintos. Deja fuera los que no corriste a tope.',
  'Your results are more than half a year old. A recent race or time trial would say more.':
    'Tus resultados tienen más de medio año. Una carrera o prueba reciente diría más.',
  'This race is much longer than those you gave. A result nearer to its length would say more.':
    'Esta carrera es mucho más larga que las que diste. Un resultado más cercano a su distancia diría más.',
  'Beyond 3 h 50 min the usual formula was never fitted: take the slow side seriously.':
    'Más allá de 3 h 50 min la fórmula habitual nunca se ajustó: toma en serio el lado lento.',
  'Slowed on purpose: beyond what you have raced or trained for, most runners slow more than the formulas say.':
    'Frenado a propósito: más allá de lo que has corrido o entrenado, la mayoría se frena más de lo que dicen las fórmulas.',
  'a race distance between 1 km and 100 km, in metres':
    'una distancia de carrera entre 1 km y 100 km, en metros',
  'a time for this distance between 2:14 and 16:40 per km, in seconds':
    'un tiempo para esta distancia entre 2:14 y 16:40 por km, en segundos',
  'days since the race, from 0 to 3650': 'días desde la carrera, de 0 a 3650',
  'Ely et al. 2007: the warmer (heat, sun and humidity together), the slower everybody; who suffers most differs between studies':
    'Ely et al. 2007: cuanto más calor (calor, sol y humedad juntos), más lentos todos; quién lo sufre más difiere entre estudios',
  'Minetti et al. 2002: a climb costs more than the same descent gives back':
    'Minetti et al. 2002: una subida cuesta más de lo que devuelve la misma bajada',
  'At {n} degrees, do not hold the goal pace. Run by effort, open slower, and let the time be what it is.':
    'A {n} grados, no mantengas el ritmo objetivo. Corre por esfuerzo, abre más lento y deja que el tiempo sea el que sea.',
  'At {n} degrees and with sun or damp air, expect to be slower. Open no quicker than goal pace.':
    'A {n} grados y con sol o aire húmedo, cuenta con ir más lento. No abras más rápido que el ritmo objetivo.',
  '{source}. The limits of {from} and {to} degrees: {practice}':
    '{source}. Los límites de {from} y {to} grados: {practice}',
  'At or below freezing, ice decides the pace. Warm up longer, and look at the ground before the clock.':
    'A cero grados o menos, el hielo decide el ritmo. Calienta más rato y mira el suelo antes que el reloj.',
  '{n} m of climbing: slower than the same effort on the flat. Set the goal from a hilly result, or give yourself more minutes.':
    '{n} m de desnivel: más lento que el mismo esfuerzo en llano. Pon el objetivo a partir de un resultado con cuestas, o date más minutos.',
  '{n} m of climbing will cost some time. Plan by even effort, not even pace.':
    '{n} m de desnivel costarán algo de tiempo. Planea por esfuerzo parejo, no por ritmo parejo.',
  '{source}. The limits of {from} and {to} m a km: {practice}':
    '{source}. Los límites de {from} y {to} m por km: {practice}',
  'Keep your {n} km a week steady: enough for this race.':
    'Mantén tus {n} km semanales: bastan para esta carrera.',
  'Let the week grow towards {n} km, by no more than a tenth a week, and ease every fourth week.':
    'Haz crecer la semana hacia {n} km, no más de una décima parte por semana, y afloja cada cuarta semana.',
  'Once a week run 15 to 30 minutes in all at a pace that you could hold for an hour, in pieces with short rests.':
    'Una vez por semana corre de 15 a 30 minutos en total a un ritmo que aguantarías una hora, en piezas con pausas cortas.',
  'Once a week run long and easy, and practise gel, water and breakfast on it.':
    'Una vez por semana corre largo y suave, y practica gel, agua y desayuno.',
  'Once a week run short and quick: 6 to 10 times a minute, with full rest.':
    'Una vez por semana corre corto y rápido: de 6 a 10 veces un minuto, con pausa completa.',
  'All the rest easy: you can talk in sentences.': 'Todo lo demás suave: puedes hablar con frases enteras.',
  'This step is more than half a year away. Choose a goal in between, race for it, and ask again.':
    'Este paso queda a más de medio año. Elige un objetivo intermedio, compite por él y pregunta de nuevo.',
  'Then race the shorter distance, and put its time in here.':
    'Luego corre la distancia más corta y pon aquí su tiempo.',
  'Daniels: at most one point of the running index in four to six weeks':
    'Daniels: como mucho un punto del índice de carrera en cuatro a seis semanas',
  'Kinds and amounts of training: common practice, no source':
    'Tipos y cantidades de entreno: práctica común, sin fuente',
  'It asks for nothing more than you have shown.': 'No pide más de lo que ya has mostrado.',
  'It asks for {km} km in about {need} (now about {now}): often {fewest} to {most} weeks of steady training, and not everybody gets there.':
    'Pide {km} km en unos {need} (ahora unos {now}): a menudo de {fewest} a {most} semanas de entreno constante, y no todos llegan.',
  '{goal} is gentle: your results point to {quick} to {slow}. A calm race, or room for a quicker goal.':
    '{goal} es tranquilo: tus resultados apuntan a {quick} a {slow}. Una carrera en calma, o sitio para un objetivo más rápido.',
  '{goal} fits your results, which point to {quick} to {slow}. The chance on a normal day: {odds}.':
    '{goal} encaja con tus resultados, que apuntan a {quick} a {slow}. La probabilidad en un día normal: {odds}.',
  '{goal} is ambitious: your results point to {quick} to {slow}. It can happen on a very good day: {odds}. Keep a second goal nearer to {middle}.':
    '{goal} es ambicioso: tus resultados apuntan a {quick} a {slow}. Puede salir en un día muy bueno: {odds}. Ten un segundo objetivo más cerca de {middle}.',
  '{goal} is beyond what your results show now, {quick} to {slow} (chance: {odds}). Keep it for a later race, and run this one for about {middle}.':
    '{goal} está más allá de lo que muestran ahora tus resultados, {quick} a {slow} (probabilidad: {odds}). Guárdalo para otra carrera y corre esta en unos {middle}.',
  '{time} for a half marathon': '{time} para una media maratón',
  '{time} for a marathon': '{time} para una maratón',
  '{time} for {distance}': '{time} para {distance}',
  'Vickers and Vertosick 2016: predictions that know the weekly distance are better; fewer kilometres, slower marathon':
    'Vickers y Vertosick 2016: las predicciones que conocen la distancia semanal son mejores; menos kilómetros, maratón más lenta',
  'How much a weekly kilometre counts is our own cautious figure (common practice, no source)':
    'Cuánto cuenta un kilómetro semanal es una cifra prudente nuestra (práctica común, sin fuente)',
  Formula: 'Fórmula',
};
