import type { Catalogue } from '../../text.ts';

export const whatIf: Catalogue = {
  'Four in five finishes; the stroke is the middle one':
    'Cuatro de cada cinco llegadas; el trazo es la del centro',
  'Finishes from {quick} to {slow}, middle {middle}': 'Llegadas de {quick} a {slow}, centro {middle}',
  'The finishes as a table': 'Las llegadas como tabla',
  'what||of the finishes': 'qué',
  'one in ten is quicker than': 'una de cada diez es más rápida que',
  'one in ten is slower than': 'una de cada diez es más lenta que',
  'Your plan run a thousand times by runners with your results. Not what will happen: what could.':
    'Tu plan corrido mil veces por corredores con tus resultados. No lo que pasará: lo que podría pasar.',
  'What it rests on': 'En qué se apoya',
  'Taken from your results: about {time} on this course at an even effort, give or take {percent} %.':
    'Tomado de tus resultados: unos {time} en este recorrido con esfuerzo parejo, más o menos un {percent} %.',
  'Without a result of yours, the goal itself is taken for what you can do, so the chance is near even by nature. Put a result in under Goal.':
    'Sin un resultado tuyo, se toma el objetivo mismo como lo que puedes hacer, así que la probabilidad ronda por fuerza la mitad. Pon un resultado en Objetivo.',
  'From the gun to your line': 'Del disparo a tu línea',
  'What it does not know': 'Lo que no sabe',
  'What came out': 'Qué salió',
  'A thousand runs are under way …': 'Mil carreras en marcha …',
  'Goal {goal}, no opening.': 'Objetivo {goal}, sin apertura.',
  'Goal {goal}, no opening, push from {from}.': 'Objetivo {goal}, sin apertura, empujón desde {from}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}.':
    'Objetivo {goal}, apertura {quicker} s por km más rápida durante {distance}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}, push from {from}.':
    'Objetivo {goal}, apertura {quicker} s por km más rápida durante {distance}, empujón desde {from}.',
  'Another opening': 'Otra apertura',
  'Goal made': 'Objetivo logrado',
  'Middle finish': 'Llegada del centro',
  'Against even, s': 'Frente a constante, s',
  '± is one standard error from the thousand runs, not the doubt of the model, which is larger.':
    '± es un error estándar de las mil carreras, no la duda del modelo, que es mayor.',
  'They run as most do: the pace wanders by {wander} % over a kilometre, a water station costs {station} s.':
    'Corren como la mayoría: el ritmo oscila un {wander} % en un kilómetro, un avituallamiento de agua cuesta {station} s.',
  'Moved by {n} runs of yours: the pace wanders by {wander} % over a kilometre, a water station costs {station} s, and legs that give all slow by {fade} % from the first half to the second, where most slow by {usual} %.':
    {
      one: 'Movido por una carrera tuya: el ritmo oscila un {wander} % en un kilómetro, un avituallamiento de agua cuesta {station} s y las piernas que lo dan todo se frenan un {fade} % de la primera mitad a la segunda, donde la mayoría se frena un {usual} %.',
      other:
        'Movido por {n} carreras tuyas: el ritmo oscila un {wander} % en un kilómetro, un avituallamiento de agua cuesta {station} s y las piernas que lo dan todo se frenan un {fade} % de la primera mitad a la segunda, donde la mayoría se frena un {usual} %.',
    },
  'The simulation could not be run on this browser.': 'La simulación no pudo correr en este navegador.',
  'Abbiss and Laursen 2008: over two minutes and more an even pace tends to serve best':
    'Abbiss y Laursen 2008: a partir de dos minutos un ritmo parejo suele ser lo mejor',
  'Nikolaidis et al. 2019, 7258 half marathoners: each stretch slower than the one before, about 4 % in all':
    'Nikolaidis et al. 2019, 7258 corredores de media maratón: cada parte más lenta que la anterior, un 4 % en total',
  'Hanley 2015, world half-marathon championships: most start fast and slow after 5 km; the best are more even':
    'Hanley 2015, mundiales de media maratón: la mayoría sale rápido y se frena tras 5 km; los mejores van más parejos',
  'Smyth 2018, 1.7 million marathons: fast starts go with slower finishes. Seen, not tried: quick starters also differ in ability':
    'Smyth 2018, 1,7 millones de maratones: las salidas rápidas van con llegadas más lentas. Visto, no probado: quien sale rápido también difiere en capacidad',
  "That tiredness adds up along Riegel's curve, how late a runner notices, wander and seconds at stations are our own assumptions":
    'Que el cansancio se suma según la curva de Riegel, lo tarde que lo nota un corredor, el vaivén y los segundos en los avituallamientos son suposiciones nuestras',
  'A model, not a forecast. It takes your result as given, and everybody in it runs by the plan until the legs say no.':
    'Un modelo, no un pronóstico. Toma tu resultado como dado, y todos en él corren según el plan hasta que las piernas dicen no.',
  'It knows no heat, wind, crowd, cramp or stomach, and nobody who gives up.':
    'No sabe de calor, viento, gentío, calambres ni estómago, ni de quien abandona.',
  'No trial has tested a quick opening in the half marathon. Take differences of a few seconds as none.':
    'Ningún ensayo ha probado una apertura rápida en la media maratón. Toma como nulas las diferencias de pocos segundos.',
  'Every run of this plan made the goal. Four in five finish between {quick} and {slow}.':
    'Todas las carreras de este plan lograron el objetivo. Cuatro de cada cinco acaban entre {quick} y {slow}.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost about {place}.':
    'Probabilidad del objetivo: {odds}. Cuatro de cada cinco acaban entre {quick} y {slow}. Cuando se falla, suele perderse hacia {place}.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost between {from} and {to}.':
    'Probabilidad del objetivo: {odds}. Cuatro de cada cinco acaban entre {quick} y {slow}. Cuando se falla, suele perderse entre {from} y {to}.',
  '{quicker} s per km quicker for {distance}: neither wins nor costs anything to speak of.':
    '{quicker} s por km más rápido durante {distance}: ni gana ni cuesta nada digno de mención.',
  '{quicker} s per km quicker for {distance}: wins about {n} s on average.':
    '{quicker} s por km más rápido durante {distance}: gana unos {n} s de media.',
  '{quicker} s per km quicker for {distance}: costs about {n} s on average.':
    '{quicker} s por km más rápido durante {distance}: cuesta unos {n} s de media.',
  'Quicker by, s per km': 'Más rápido en, s por km',
};
