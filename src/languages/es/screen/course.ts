import type { Catalogue } from '../../text.ts';

export const course: Catalogue = {
  'Open the course itself first: these places need a line to lie on.':
    'Abre primero el recorrido: estos lugares necesitan una línea en la que estar.',
  'Places only: {n} of {m} are stations on your course.':
    'Solo lugares: {n} de {m} son avituallamientos de tu recorrido.',
  '{n} stations found in the file and put into the plan.': {
    one: '{n} avituallamiento encontrado en el archivo y añadido al plan.',
    other: '{n} avituallamientos encontrados en el archivo y añadidos al plan.',
  },
  Course: 'Recorrido',
  'The line on the ground, from a file of the race or a run of yours. It is read here and goes nowhere.':
    'La línea sobre el terreno, de un archivo de la carrera o de una carrera tuya. Se lee aquí y no va a ningún sitio.',
  'The course drawn': 'El recorrido dibujado',
  'Places on the course': 'Lugares del recorrido',
  Recorded: 'Grabado',
  '{distance} {unit}, run {n} times': '{distance} {unit}, corrido {n} veces',
  Official: 'Oficial',
  'Scaled by': 'Escalado por',
  Climb: 'Desnivel',
  'no heights in the file': 'no hay alturas en el archivo',
  'Run it the other way': 'Correrlo al revés',
  'Remove the course': 'Quitar el recorrido',
  'The recording is {n} m longer than the race. Is it the right course, and the right distance in the plan?':
    'La grabación es {n} m más larga que la carrera. ¿Es el recorrido correcto y la distancia correcta en el plan?',
  'The recording is {n} m shorter than the race. Is it the right course, and the right distance in the plan?':
    'La grabación es {n} m más corta que la carrera. ¿Es el recorrido correcto y la distancia correcta en el plan?',
  "The recording is {n} m longer than the race. The race's measured distance counts; the line is fitted to it.":
    'La grabación es {n} m más larga que la carrera. Vale la distancia medida de la carrera; la línea se ajusta a ella.',
  "The recording is {n} m shorter than the race. The race's measured distance counts; the line is fitted to it.":
    'La grabación es {n} m más corta que la carrera. Vale la distancia medida de la carrera; la línea se ajusta a ella.',
  'The course, {name}, drawn as a line': 'El recorrido, {name}, dibujado como línea',
  'start||place': 'salida',
  'finish||place': 'meta',
  station: 'avituallamiento',
  'what you carry||a mark': 'lo que llevas',
  tunnel: 'túnel',
  'Height, {lowest} to {highest} m': 'Altura, de {lowest} a {highest} m',
  'The way as a strip; the file holds no heights': 'El camino como una tira; el archivo no tiene alturas',
  'Profile of the course': 'Perfil del recorrido',
  'Place: {place} {unit}': 'Lugar: {place} {unit}',
  'Course file': 'Archivo del recorrido',
  'Another file': 'Otro archivo',
  'Open a course': 'Abrir un recorrido',
  'Or drop it here. GPX with a track or a route; waypoints become stations. Or the log of a past run (.jsonl).':
    'O suéltalo aquí. GPX con una traza o una ruta; los puntos se convierten en avituallamientos. O el registro de una carrera pasada (.jsonl).',
  'The storage of this browser does not give the runs away.':
    'El almacén de este navegador no entrega las carreras.',
  'From a run on this device': 'De una carrera en este dispositivo',
  'No run is kept here yet.': 'Aquí aún no se guarda ninguna carrera.',
  'At {place} {unit}': 'En {place} {unit}',
  'Point on the map or the profile, or move the slider; then put something there.':
    'Señala en el mapa o en el perfil, o mueve el control; luego pon algo ahí.',
  'The course comes by here {n} times:': 'El recorrido pasa por aquí {n} veces:',
  'The station offers': 'El avituallamiento ofrece',
  'Station here': 'Puesto aquí',
  'My {item} here': 'Mi {item} aquí',
  'Checkpoint here': 'Punto de control aquí',
  'Board {n} stands here': 'El cartel {n} está aquí',
  'Do not trust board {n}': 'No fiarse del cartel {n}',
  'Tunnel from here': 'Túnel desde aquí',
  'Tunnel from {place} to here': 'Túnel de {place} hasta aquí',
  'What lies on the way': 'Qué hay en el camino',
  'Remove {what} at {place}': 'Quitar {what} en {place}',
  'board {n} stands here': 'el cartel {n} está aquí',
  'board {n}, not trusted': 'cartel {n}, no fiable',
  'my {item}': 'mi {item}',
  'tunnel to {place}': 'túnel hasta {place}',
  'Run||noun': 'Carrera',
  'Left out: {what}.': 'Omitido: {what}.',
  "The file holds {n} lines; taken is the one nearest to the race's distance.":
    'El archivo contiene {n} líneas; se toma la más cercana a la distancia de la carrera.',
  'a run with fixes along its way': 'una carrera con posiciones en su camino',
  '{n} good fixes': '{n} posiciones buenas',
  'From the run {file}': 'De la carrera {file}',
  'Drawn from a run of yours: as good as its signal was, and without heights.':
    'Dibujado de una carrera tuya: tan bueno como fue su señal, y sin alturas.',
  'at most 64 MB': '64 MB como mucho',
  'the file: it could not be read from the disk': 'el archivo: no se pudo leer del disco',
  'at most 64 MB of GPX': '64 MB de GPX como mucho',
  'a GPX file': 'un archivo GPX',
  'XML faults, the first at {place}': 'Fallos de XML, el primero en {place}',
  'a gpx element at the top': 'un elemento gpx arriba del todo',
  'at least one usable point': 'al menos un punto utilizable',
  '{n} points without a usable lat': {
    one: '{n} punto sin un lat utilizable',
    other: '{n} puntos sin un lat utilizable',
  },
  '{n} points without a usable lon': {
    one: '{n} punto sin un lon utilizable',
    other: '{n} puntos sin un lon utilizable',
  },
  'a track or route of at least two points': 'una traza o ruta de al menos dos puntos',
  'Without a course Soundline goes by the signal alone, which is some hundred metres wrong over a half marathon. Pressing at the boards mends most of that.':
    'Sin recorrido, Soundline se guía solo por la señal, que yerra unos cientos de metros en una media maratón. Pulsar en los carteles corrige casi todo.',
};
