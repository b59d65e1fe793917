import type { Catalogue } from '../../text.ts';

export const fuel: Catalogue = {
  '{lower} to {upper} g of carbohydrate for each kg of body mass':
    'de {lower} a {upper} g de hidratos por cada kg de peso',
  '{lower} to {upper} g of carbohydrate ({lowerKg} to {upperKg} g for each kg)':
    'de {lower} a {upper} g de hidratos (de {lowerKg} a {upperKg} g por cada kg)',
  'For less than an hour: eat as usual.': 'Para menos de una hora: come como siempre.',
  'The {n} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    'Las {n} horas anteriores: {range} cada 24 horas, sumando todas las comidas, y poco correr. Es mucha comida: pruébalo antes de una tirada larga.',
  'From {fewest} to {most} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    'De {fewest} a {most} horas antes: {range} cada 24 horas, sumando todas las comidas, y poco correr. Es mucha comida: pruébalo antes de una tirada larga.',
  'In the plan now: nothing to take. The voice tells you 200 to 300 m ahead.':
    'En el plan ahora: nada que tomar. La voz te avisa 200 a 300 m antes.',
  'In the plan now: {list} {unit}. The voice tells you 200 to 300 m ahead.':
    'En el plan ahora: {list} {unit}. La voz te avisa 200 a 300 m antes.',
  '{item} at {place}': '{item} en {place}',
  Fuel: 'Energía',
  'What to carry and when to take it, so that water follows. Only what you have practised.':
    'Qué llevar y cuándo tomarlo, para que le siga agua. Solo lo que has practicado.',
  'How you fuel': 'Cómo te alimentas',
  'Fuel plan': 'Plan de energía',
  'On the way': 'En carrera',
  'Under an hour nothing is needed on the way.': 'Por debajo de una hora no hace falta nada en carrera.',
  'For {time} of running {lower} to {upper} g of carbohydrate an hour is usual, whatever you weigh.':
    'Para {time} corriendo lo habitual son de {lower} a {upper} g de hidratos por hora, peses lo que peses.',
  'Put into the plan': 'Pasarlo al plan',
  Water: 'Agua',
  'No water stations in the plan yet. Put them on the course, or into the plan.':
    'Aún no hay avituallamientos con agua en el plan. Ponlos en el recorrido o en el plan.',
  Breakfast: 'Desayuno',
  '{fewest} to {most} hours before the gun: {range}. {advice}':
    'De {fewest} a {most} horas antes del disparo: {range}. {advice}',
  'The days before': 'Los días anteriores',
  Clock: 'Reloj',
  What: 'Qué',
  'Water at': 'Agua en',
  'To carry: {count}, {grams} g in all, {rate} g an hour.':
    'Para llevar: {count}, {grams} g en total, {rate} g por hora.',
  'Take it': 'Tomarlo',
  'Half-way': 'A mitad',
  'At 10 miles': 'En las 10 millas',
  'By the hour': 'Por horas',
  'Carbohydrate an hour': 'Hidratos por hora',
  'What you take': 'Qué tomas',
  'Carbohydrate in one': 'Hidratos en cada uno',
  'The packet says it.': 'Lo pone en el envase.',
  'Body mass': 'Peso',
  'For breakfast and the days before. It stays on this device; leave it out and figures are for each kg.':
    'Para el desayuno y los días anteriores. Se queda en este dispositivo; si lo dejas vacío, las cifras son por cada kg.',
  'Write grams an hour as a number, 1 to {n}.': 'Escribe los gramos por hora como número, de 1 a {n}.',
  'Write the carbohydrate of one as grams, 1 to {n}: it stands on the packet.':
    'Escribe los hidratos de uno en gramos, de 1 a {n}: lo pone en el envase.',
  'Burke et al. 2011; Jeukendrup 2014': 'Burke et al. 2011; Jeukendrup 2014',
  'Thomas et al. 2016, joint position statement': 'Thomas et al. 2016, declaración conjunta',
  'joint position statement 2016, as quoted by a secondary page; the statement itself not seen':
    'declaración conjunta de 2016, citada por una página secundaria; la declaración misma no se vio',
  'The breakfast that you know from long runs: bread, oats, rice or the like, little fat and fibre. Nearer the gun, the lower figure.':
    'El desayuno que conoces de las tiradas largas: pan, avena, arroz o similar, poca grasa y fibra. Cuanto más cerca del disparo, la cifra baja.',
  'Wallis and Podlogar 2022': 'Wallis y Podlogar 2022',
  'two to three hours before, and the choice of food: common practice, no source':
    'de dos a tres horas antes, y la elección de la comida: práctica común, sin fuente',
  'Under an hour nothing is needed on the way. A rinse of the mouth is enough.':
    'Por debajo de una hora no hace falta nada en carrera. Basta con enjuagarse la boca.',
  'For a race of this length {lower} to {upper} g an hour is usual. More only if you have practised it.':
    'Para una carrera de esta duración lo habitual son de {lower} a {upper} g por hora. Más, solo si lo has practicado.',
  'This comes to {g} g an hour over the whole race: the first one is not at the start, and none falls into the last quarter of an hour.':
    'Esto suma {g} g por hora en toda la carrera: el primero no es en la salida y ninguno cae en el último cuarto de hora.',
  'No water follows one of these: carry some, or move it by hand.':
    'A uno de estos no le sigue agua: lleva algo o muévelo a mano.',
  'One of these waits long for water. Look whether a station is missing.':
    'Uno de estos espera mucho el agua. Mira si falta un avituallamiento.',
  'This race ends before 10 miles.': 'Esta carrera acaba antes de las 10 millas.',
  'Two or three sips after the gel.': 'Dos o tres sorbos después del gel.',
  'A sip or two if you are thirsty; else run on.': 'Un sorbo o dos si tienes sed; si no, sigue.',
  'instead of {place}': 'en vez de {place}',
};
