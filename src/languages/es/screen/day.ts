import type { Catalogue } from '../../text.ts';

export const day: Catalogue = {
  'Today.': 'Hoy.',
  'Tomorrow.': 'Mañana.',
  'In {n} days.': 'Dentro de {n} días.',
  'That day is over.': 'Ese día ya pasó.',
  'Race day': 'Día de carrera',
  'From waking to the gun, by the clock.': 'Desde que te levantas hasta el disparo, por el reloj.',
  'What decides the day': 'Lo que decide el día',
  'The day by the clock': 'El día por el reloj',
  'evening before': 'la noche anterior',
  'Into the calendar (.ics)': 'Al calendario (.ics)',
  'With the date of the race, the day goes into your calendar.':
    'Con la fecha de la carrera, el día pasa a tu calendario.',
  'Said aloud': 'En voz alta',
  'On race day this page tells you each step, in the same voice as in the race, as long as it is open and the screen is on. A phone puts pages to sleep: the calendar is the one that rings for certain.':
    'El día de la carrera esta página te dice cada paso, con la misma voz que en la carrera, mientras esté abierta y la pantalla encendida. Un teléfono duerme las páginas: lo que suena seguro es el calendario.',
  'Tell me each step': 'Dime cada paso',
  'Stop telling me': 'Deja de decírmelo',
  'Hear how it sounds': 'Oír cómo suena',
  'Next: {what}. Keep this page open.': 'Siguiente: {what}. Deja esta página abierta.',
  '{day}/{month}': '{day}/{month}',
  'The last two weeks': 'Las dos últimas semanas',
  'Fill in the date, your running days and your weekly distance to see the last two weeks day by day: less running, as quick as ever.':
    'Escribe la fecha, tus días de carrera y tu distancia semanal para ver las dos últimas semanas día a día: correr menos, tan rápido como siempre.',
  'Less running, as quick as ever: {first} % less than your usual week, then {second} % less.':
    'Correr menos, igual de rápido: un {first} % menos que tu semana habitual, luego un {second} % menos.',
  'Date of the race': 'Fecha de la carrera',
  'The gun goes at': 'El disparo es a las',
  'The pen closes before the gun': 'El cajón cierra antes del disparo',
  'Travel, door to race': 'Viaje, de casa a la carrera',
  'Temperature at the start': 'Temperatura en la salida',
  'You run in a week': 'Corres por semana',
  'On which days you run': 'Qué días corres',
  'Your long run is on': 'Tu tirada larga es el',
  'This needs {expected}.': 'Esto necesita {expected}.',
  '{time}: {what}. {reason}': '{time}: {what}. {reason}',
  '{what} at {time}': '{what} a las {time}',
  'All steps, one after the other.': 'Todos los pasos, uno tras otro.',
  'Take an old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Lleva una prenda vieja o una bolsa de basura con agujeros para cabeza y brazos; quítatela justo antes del disparo.',
  'An old warm top, a bin bag with holes for head and arms over it, and gloves; take them off just before the gun.':
    'Una prenda vieja de abrigo, encima una bolsa de basura con agujeros para cabeza y brazos, y guantes; quítatelos justo antes del disparo.',
  'An old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Una prenda vieja o una bolsa de basura con agujeros para cabeza y brazos; quítatela justo antes del disparo.',
  'Nothing over the race kit, unless it rains or blows: then a bin bag with holes.':
    'Nada sobre la ropa de carrera, salvo que llueva o haga viento: entonces una bolsa con agujeros.',
  'Nothing over the race kit. Stand in the shade, and wet your head if there is water.':
    'Nada sobre la ropa de carrera. Ponte a la sombra y mójate la cabeza si hay agua.',
  'Fradkin et al. 2010: a warm-up helped in 79 % of criteria over 32 studies':
    'Fradkin et al. 2010: un calentamiento ayudó en el 79 % de los criterios de 32 estudios',
  '{lower} to {upper} g of carbohydrate, as much as you are used to. {text}':
    'de {lower} a {upper} g de hidratos, lo que acostumbres. {text}',
  '{lower} to {upper} g of carbohydrate for each kg of body mass, as much as you are used to. {text}':
    'de {lower} a {upper} g de hidratos por cada kg de peso, lo que acostumbres. {text}',
  'Get up': 'Levantarse',
  'Time to eat and leave without hurry. Ill or feverish? Stay at home.':
    'Tiempo para comer y salir sin prisa. ¿Enfermo o con fiebre? Quédate en casa.',
  'Breakfast, packed the evening before': 'Desayuno, preparado la noche anterior',
  'Wallis and Podlogar 2022: 1 to 4 g/kg in the 1 to 4 hours before':
    'Wallis y Podlogar 2022: de 1 a 4 g/kg en las 1 a 4 horas anteriores',
  'Leave||for the race': 'Salir de casa',
  '{n} min of travel.': '{n} min de viaje.',
  'Last full drink': 'Último trago grande',
  'From here on only sips if thirsty, so that nothing is left to lose in the pen.':
    'Desde aquí solo sorbos si hay sed, para no tener ganas de orinar en el cajón.',
  Arrive: 'Llegar',
  'Toilet first, then the bag, then a look at the way to the pen.':
    'Primero el baño, luego la bolsa, luego un vistazo al camino del cajón.',
  'Warm-up: {n} min easy': 'Calentamiento: {n} min suaves',
  'So easy that you could talk; off the road.': 'Tan suave que podrías hablar; fuera de la calzada.',
  '{n} strides': '{n} progresivos',
  '20 seconds each at a little quicker than race pace, a walk back between.':
    '20 segundos cada uno, algo más rápido que el ritmo de carrera, y vuelta andando.',
  'Warm kit off, layers on': 'Fuera el abrigo, puestas las capas',
  'In the pen': 'En el cajón',
  'It closes early: keep the layers on and move on the spot.':
    'Cierra pronto: deja las capas puestas y muévete en el sitio.',
  'Layers off for the last minutes. Have the run open on the phone, waiting for the gun.':
    'Fuera las capas para los últimos minutos. Ten la carrera abierta en el teléfono, esperando el disparo.',
  'Your own clock starts at the line.': 'Tu propio reloj empieza en la línea.',
  'a minute of the day, 0 to 1439': 'un minuto del día, de 0 a 1439',
  'minutes before the gun, 0 to 90': 'minutos antes del disparo, de 0 a 90',
  'minutes of travel, 0 to 600': 'minutos de viaje, de 0 a 600',
  'degrees Celsius, -40 to 50': 'grados Celsius, de -40 a 50',
  'a race of 5 minutes to 55 hours, in seconds': 'una carrera de 5 minutos a 55 horas, en segundos',
  'kilograms, 25 to 250': 'kilogramos, de 25 a 250',
  'In it {n} times 1 km at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Dentro, {n} veces 1 km a ritmo objetivo, {pace}, con dos minutos suaves en medio. Acaba fresco.',
  'In it {n} times 400 m at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Dentro, {n} veces 400 m a ritmo objetivo, {pace}, con dos minutos suaves en medio. Acaba fresco.',
  'Rest||day': 'Descanso',
  'As in your usual week. A walk is fine.': 'Como en tu semana habitual. Un paseo está bien.',
  '{distance} easy': '{distance} suaves',
  'You can talk in sentences.': 'Puedes hablar con frases enteras.',
  'Easy, with four strides at the end.': 'Suave, con cuatro progresivos al final.',
  '{distance} steady, the longest of the week': '{distance} constantes, la más larga de la semana',
  'Easy. Practise breakfast, gel and water once more.': 'Suave. Practica otra vez desayuno, gel y agua.',
  'Easy, the last ten minutes at goal pace, {pace}.':
    'Suave, los últimos diez minutos a ritmo objetivo, {pace}.',
  '{distance} with goal pace in it': '{distance} con ritmo objetivo dentro',
  '{distance} very easy': '{distance} muy suaves',
  'Then three strides of 20 seconds. Lay out kit, number and breakfast.':
    'Luego tres progresivos de 20 segundos. Prepara la ropa, el dorsal y el desayuno.',
  'Race: {race}': 'Carrera: {race}',
  'By the plan.': 'Según el plan.',
  'Bosquet et al. 2007: two weeks, volume down 41 to 60 %, intensity and frequency kept':
    'Bosquet et al. 2007: dos semanas, volumen reducido del 41 al 60 %, intensidad y frecuencia mantenidas',
};
