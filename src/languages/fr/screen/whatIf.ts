import type { Catalogue } from '../../text.ts';

export const whatIf: Catalogue = {
  'Four in five finishes; the stroke is the middle one':
    'Quatre arrivées sur cinq ; le trait est celle du milieu',
  'Finishes from {quick} to {slow}, middle {middle}': 'Arrivées de {quick} à {slow}, milieu {middle}',
  'The finishes as a table': 'Les arrivées en tableau',
  'what||of the finishes': 'part',
  'one in ten is quicker than': '1 sur 10 est plus rapide que',
  'one in ten is slower than': '1 sur 10 est plus lente que',
  'Your plan run a thousand times by runners with your results. Not what will happen: what could.':
    'Ton plan couru mille fois par des coureurs qui ont tes résultats. Non pas ce qui arrivera : ce qui pourrait arriver.',
  'What it rests on': 'Sur quoi cela repose',
  'Taken from your results: about {time} on this course at an even effort, give or take {percent} %.':
    'Tiré de tes résultats : environ {time} sur ce parcours à effort régulier, à {percent} % près.',
  'Without a result of yours, the goal itself is taken for what you can do, so the chance is near even by nature. Put a result in under Goal.':
    'Sans résultat de toi, l’objectif lui-même est pris pour ce que tu sais faire ; les chances sont donc par nature proches d’une sur deux. Entre un résultat dans Objectif.',
  'From the gun to your line': 'Du coup de pistolet à ta ligne',
  'What it does not know': 'Ce que cela ignore',
  'What came out': 'Ce qui en sort',
  'A thousand runs are under way …': 'Mille courses sont en route …',
  'Goal {goal}, no opening.': 'Objectif {goal}, sans début à part.',
  'Goal {goal}, no opening, push from {from}.':
    'Objectif {goal}, sans début à part, accélération à partir de {from}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}.':
    'Objectif {goal}, début plus vite de {quicker} s par km sur {distance}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}, push from {from}.':
    'Objectif {goal}, début plus vite de {quicker} s par km sur {distance}, accélération à partir de {from}.',
  'Another opening': 'Un autre début',
  'Goal made': 'Objectif tenu',
  'Middle finish': 'Arrivée du milieu',
  'Against even, s': 'Face au régulier, s',
  '± is one standard error from the thousand runs, not the doubt of the model, which is larger.':
    '± est l’erreur type de mille courses, pas le doute sur le modèle, qui est plus grand.',
  'They run as most do: the pace wanders by {wander} % over a kilometre, a water station costs {station} s.':
    'Ils courent comme la plupart : l’allure fluctue de {wander} % sur un kilomètre, un point d’eau coûte {station} s.',
  'Moved by {n} runs of yours: the pace wanders by {wander} % over a kilometre, a water station costs {station} s, and legs that give all slow by {fade} % from the first half to the second, where most slow by {usual} %.':
    {
      one: 'Ajusté par une de tes sorties : l’allure fluctue de {wander} % sur un kilomètre, un point d’eau coûte {station} s, et des jambes qui donnent tout ralentissent de {fade} % de la première moitié à la deuxième, là où la plupart ralentissent de {usual} %.',
      other:
        'Ajusté par {n} de tes sorties : l’allure fluctue de {wander} % sur un kilomètre, un point d’eau coûte {station} s, et des jambes qui donnent tout ralentissent de {fade} % de la première moitié à la deuxième, là où la plupart ralentissent de {usual} %.',
    },
  'The simulation could not be run on this browser.': 'La simulation n’a pas pu tourner dans ce navigateur.',
  'Abbiss and Laursen 2008: over two minutes and more an even pace tends to serve best':
    'Abbiss et Laursen 2008 : à partir de deux minutes, une allure régulière convient le mieux en général',
  'Nikolaidis et al. 2019, 7258 half marathoners: each stretch slower than the one before, about 4 % in all':
    'Nikolaidis et al. 2019, 7258 coureurs de semi-marathon : chaque portion plus lente que la précédente, environ 4 % en tout',
  'Hanley 2015, world half-marathon championships: most start fast and slow after 5 km; the best are more even':
    'Hanley 2015, championnats du monde de semi-marathon : la plupart partent vite et ralentissent après 5 km ; les meilleurs sont plus réguliers',
  'Smyth 2018, 1.7 million marathons: fast starts go with slower finishes. Seen, not tried: quick starters also differ in ability':
    'Smyth 2018, 1,7 million de marathons : les départs rapides vont avec des fins plus lentes. Observé, pas essayé : ceux qui partent vite diffèrent aussi par leur niveau',
  "That tiredness adds up along Riegel's curve, how late a runner notices, wander and seconds at stations are our own assumptions":
    'Que la fatigue s’additionne le long de la courbe de Riegel, le retard avec lequel un coureur le remarque, la fluctuation et les secondes aux ravitaillements sont nos propres hypothèses',
  'A model, not a forecast. It takes your result as given, and everybody in it runs by the plan until the legs say no.':
    'Un modèle, pas une prévision. Il tient ton résultat pour acquis, et tout le monde y court selon le plan jusqu’à ce que les jambes disent non.',
  'It knows no heat, wind, crowd, cramp or stomach, and nobody who gives up.':
    'Il ne connaît ni chaleur, ni vent, ni foule, ni crampe, ni estomac, et personne n’y abandonne.',
  'No trial has tested a quick opening in the half marathon. Take differences of a few seconds as none.':
    'Aucun essai n’a testé un début rapide sur semi-marathon. Tiens des écarts de quelques secondes pour nuls.',
  'Every run of this plan made the goal. Four in five finish between {quick} and {slow}.':
    'Chaque course de ce plan a tenu l’objectif. Quatre sur cinq arrivent entre {quick} et {slow}.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost about {place}.':
    'Chances de tenir l’objectif : {odds}. Quatre sur cinq arrivent entre {quick} et {slow}. Quand il est manqué, il se perd surtout vers {place}.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost between {from} and {to}.':
    'Chances de tenir l’objectif : {odds}. Quatre sur cinq arrivent entre {quick} et {slow}. Quand il est manqué, il se perd surtout entre {from} et {to}.',
  '{quicker} s per km quicker for {distance}: neither wins nor costs anything to speak of.':
    '{quicker} s par km plus vite sur {distance} : ne gagne ni ne coûte rien de notable.',
  '{quicker} s per km quicker for {distance}: wins about {n} s on average.':
    '{quicker} s par km plus vite sur {distance} : gagne environ {n} s en moyenne.',
  '{quicker} s per km quicker for {distance}: costs about {n} s on average.':
    '{quicker} s par km plus vite sur {distance} : coûte environ {n} s en moyenne.',
  'Quicker by, s per km': 'Plus vite de, s par km',
};
