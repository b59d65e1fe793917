import type { Catalogue } from '../../text.ts';

export const review: Catalogue = {
  'From||call': 'De',
  'To||call': 'A',
  'Rate between calls': 'Velocidad entre avisos',
  'It believed {ahead} s.': 'Creía {ahead} s.',
  'It believed {ahead} s, give or take {off} s.': 'Creía {ahead} s, más o menos {off} s.',
  'Nothing was called.': 'No se dijo nada.',
  Calls: 'Avisos',
  'why did it say that?': '¿por qué dijo eso?',
  'Why: {why}.': 'Por qué: {why}.',
  'Hear this call': 'Oír este aviso',
  'seconds ahead (+) or behind (−)': 'segundos por delante (+) o por detrás (−)',
  'a call sounded': 'sonó un aviso',
  'Splits against plan, as a table': 'Parciales frente al plan, como tabla',
  split: 'parcial',
  planned: 'previsto',
  'ahead or behind, s': 'por delante o por detrás, s',
  'run||as it was run': 'corrido',
  'Pace, per {unit} (quicker is higher)': 'Ritmo, por {unit} (más rápido, más arriba)',
  'beats a minute': 'pulsaciones por minuto',
  'Heart rate': 'Pulso',
  metres: 'metros',
  Height: 'Altura',
  'Projected finish at each checkpoint': 'Llegada prevista en cada punto de control',
  projected: 'prevista',
  'give or take': 'más o menos',
  'it was||finish time in the end': 'fue',
  'as planned||pace of the opening': 'según el plan',
  'too quick||pace of the opening': 'demasiado rápida',
  'slow||pace of the opening': 'lenta',
  'Opening to {distance} {unit}': 'Apertura hasta {distance} {unit}',
  '{run} run, {planned} planned per {unit}: {verdict}':
    '{run} corrido, {planned} previsto por {unit}: {verdict}',
  'Second half against the first': 'Segunda mitad frente a la primera',
  '{percent} % slower, hills and changes of target taken out':
    'un {percent} % más lenta, sin contar cuestas ni cambios de ritmo previstos',
  '{percent} % quicker, hills and changes of target taken out':
    'un {percent} % más rápida, sin contar cuestas ni cambios de ritmo previstos',
  Stations: 'Avituallamientos',
  Signal: 'Señal',
  'good for {percent} % of the run; the longest gap {gap} s; {fixes} fixes, {unused} left out':
    'buena el {percent} % de la carrera; el hueco más largo {gap} s; {fixes} posiciones, {unused} descartadas',
  'free||no target': 'libre',
  'asked||pace': 'pedido',
  minutes: 'minutos',
  'Pace and heart rate at each minute, as a table': 'Ritmo y pulso en cada minuto, como tabla',
  '{n} words about pace': { one: 'un aviso de ritmo', other: '{n} avisos de ritmo' },
  'Not done to the end; {words}.': 'Sin acabar; {words}.',
  'Done in {time}; {words}.': 'Hecho en {time}; {words}.',
  'leg||of a session': 'tramo',
  'heart||rate': 'pulso',
  'waiting||for a position': 'esperando',
  'good||reception': 'buena',
  'poor||reception': 'mala',
  'lost||reception': 'perdida',
  'Reception along the way': 'Recepción en el camino',
  'Reception along the way, as a table': 'Recepción en el camino, como tabla',
  'from {unit}': 'desde {unit}',
  'to {unit}': 'hasta {unit}',
  reception: 'recepción',
  'GPX track': 'Traza GPX',
  'CSV table': 'Tabla CSV',
  'GeoJSON map': 'Mapa GeoJSON',
  'Run with its log': 'Carrera con su registro',
  'All runs': 'Todas las carreras',
  'Imported run': 'Carrera importada',
  'In short': 'En breve',
  'Save this run': 'Guardar esta carrera',
  'Files stay on this device until you send them somewhere.':
    'Los archivos se quedan en este dispositivo hasta que los mandes a algún sitio.',
  'Pace from board to board, as a table': 'Ritmo de cartel a cartel, como tabla',
  'planned||pace': 'previsto',
  'Heart rate from board to board, as a table': 'Pulso de cartel a cartel, como tabla',
  'Height at each board, as a table': 'Altura en cada cartel, como tabla',
  'This browser keeps no runs here.': 'Este navegador no guarda carreras aquí.',
  '{n} runs added.': { one: 'Una carrera añadida.', other: '{n} carreras añadidas.' },
  '{runs} {left}': '{runs} {left}',
  '{n} points or lines were left out.': {
    one: 'Un punto o línea quedó fuera.',
    other: '{n} puntos o líneas quedaron fuera.',
  },
  '{n} runs restored.': { one: 'Una carrera restaurada.', other: '{n} carreras restauradas.' },
  '{runs} The file was cut short. Open the page anew to see your settings.':
    '{runs} El archivo estaba cortado. Abre la página de nuevo para ver tus ajustes.',
  '{runs} Open the page anew to see your settings.': '{runs} Abre la página de nuevo para ver tus ajustes.',
  'This run cannot be read by this version.': 'Esta versión no puede leer esta carrera.',
  'The run is deleted.': 'La carrera está borrada.',
  '{distance} {unit}': '{distance} {unit}',
  'The run ended at {place}; the goal of {time} was not reached.':
    'La carrera acabó en {place}; el objetivo de {time} no se alcanzó.',
  'Finished in {time}: on plan to the second or two.': 'Meta en {time}: según el plan, al segundo o dos.',
  'Finished in {time}, {off} ahead of the plan.': 'Meta en {time}, {off} por delante del plan.',
  'Finished in {time}, {off} behind the plan.': 'Meta en {time}, {off} por detrás del plan.',
  'The run took {time}. It came without a plan, so it is held against an even one.':
    'La carrera duró {time}. Vino sin plan, así que se compara con una a ritmo parejo.',
  'The opening is not in the log.': 'La apertura no está en el registro.',
  'The first {distance} went as planned: a good opening.':
    'Los primeros {distance} fueron según el plan: una buena apertura.',
  'The first {distance} went {off} s/km quicker than planned: too quick an opening.':
    'Los primeros {distance} fueron {off} s/km más rápidos de lo planeado: una apertura demasiado rápida.',
  'The first {distance} went {off} s/km slower than planned.':
    'Los primeros {distance} fueron {off} s/km más lentos de lo previsto.',
  'There is too little of the run to say where time was won and lost.':
    'Hay muy poca carrera para decir dónde se ganó y se perdió tiempo.',
  'Most was lost from {from} to {to} ({lost}), most was won from {wonFrom} to {wonTo} ({won}).':
    'Lo más perdido fue de {from} a {to} ({lost}), lo más ganado de {wonFrom} a {wonTo} ({won}).',
  'Most was lost from {from} to {to} ({lost}).': 'Lo más perdido fue de {from} a {to} ({lost}).',
  'Most was won from {wonFrom} to {wonTo} ({won}); no part lost time.':
    'Lo más ganado fue de {wonFrom} a {wonTo} ({won}); ninguna parte perdió tiempo.',
  'No part won or lost time.': 'Ninguna parte ganó ni perdió tiempo.',
  'The halves cannot be compared.': 'Las mitades no se pueden comparar.',
  'The two halves were even.': 'Las dos mitades fueron parejas.',
  'The second half was {percent} % slower than the first, hills and changes of target taken out.':
    'La segunda mitad fue un {percent} % más lenta que la primera, sin contar cuestas ni cambios de ritmo previstos.',
  'The second half was {percent} % quicker than the first, hills and changes of target taken out.':
    'La segunda mitad fue un {percent} % más rápida que la primera, sin contar cuestas ni cambios de ritmo previstos.',
  '{n} stations cost {time}.': {
    one: 'Un avituallamiento costó {time}.',
    other: '{n} avituallamientos costaron {time}.',
  },
  '{halves} {cost}': '{halves} {cost}',
  'Next time: find out first why it ended; with pain or illness, ask a doctor.':
    'La próxima vez: averigua primero por qué acabó; con dolor o enfermedad, pregunta a un médico.',
  'Next time: hold the opening back; what it won was paid for in the second half. Practise it three times.':
    'La próxima vez: frena la apertura; lo que ganó se pagó en la segunda mitad. Practícala tres veces.',
  'Next time: a goal a little slower, or longer threshold and long runs before it.':
    'La próxima vez: un objetivo algo más lento, o más umbral y tiradas largas antes.',
  'Next time: practise drinking on the move; the stations cost more than the pace did.':
    'La próxima vez: practica beber en marcha; los avituallamientos costaron más que el ritmo.',
  'Next time: hold the opening back. It cost nothing seen this time; it is the first thing that does.':
    'La próxima vez: contén la apertura. Esta vez no se vio que costara nada; es lo primero que cuesta.',
  'Next time: a goal a little quicker is realistic, on a day and a course like this one.':
    'La próxima vez: un objetivo algo más rápido es realista, en un día y un recorrido como estos.',
  'Next time: hold the plan against this result before setting the goal.':
    'La próxima vez: compara el plan con este resultado antes de fijar el objetivo.',
  'Next time: the same again.': 'La próxima vez: lo mismo otra vez.',
  'Ahead or behind, over the distance': 'Por delante o por detrás, a lo largo de la distancia',
  '19 times in 20 within': '19 de cada 20 veces dentro',
  'It came without a plan, so it is held against its own even pace; the calls are what would have been said.':
    'Vino sin plan, así que se compara con su propio ritmo constante; los avisos son lo que se habría dicho.',
};
