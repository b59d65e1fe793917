import type { Catalogue } from '../../text.ts';

export const review: Catalogue = {
  'From||call': 'De',
  'To||call': 'À',
  'Rate between calls': 'Vitesse entre les annonces',
  'It believed {ahead} s.': 'Estimation : {ahead} s.',
  'It believed {ahead} s, give or take {off} s.': 'Estimation : {ahead} s, ±{off} s.',
  'Nothing was called.': 'Rien n’a été annoncé.',
  Calls: 'Annonces',
  'why did it say that?': 'pourquoi cette annonce ?',
  'Why: {why}.': 'Pourquoi : {why}.',
  'Hear this call': 'Écouter cette annonce',
  'seconds ahead (+) or behind (−)': 'secondes d’avance (+) ou de retard (−)',
  'a call sounded': 'une annonce',
  'Splits against plan, as a table': 'Partiels face au plan, en tableau',
  split: 'partiel',
  planned: 'prévu',
  'ahead or behind, s': 'écart, s',
  'run||as it was run': 'couru',
  'Pace, per {unit} (quicker is higher)': 'Allure, par {unit} (plus vite, plus haut)',
  'beats a minute': 'battements par minute',
  'Heart rate': 'Fréquence cardiaque',
  metres: 'mètres',
  Height: 'Altitude',
  'Projected finish at each checkpoint': 'Arrivée prévue à chaque point de passage',
  projected: 'prévue',
  'give or take': '±',
  'it was||finish time in the end': 'réelle',
  'as planned||pace of the opening': 'comme prévu',
  'too quick||pace of the opening': 'trop rapide',
  'slow||pace of the opening': 'lent',
  'Opening to {distance} {unit}': 'Début jusqu’à {distance} {unit}',
  '{run} run, {planned} planned per {unit}: {verdict}': '{run} couru, {planned} prévu par {unit} : {verdict}',
  'Second half against the first': 'Deuxième moitié face à la première',
  '{percent} % slower, hills and changes of target taken out':
    '{percent} % plus lente, côtes et changements d’allure prévus déduits',
  '{percent} % quicker, hills and changes of target taken out':
    '{percent} % plus rapide, côtes et changements d’allure prévus déduits',
  Stations: 'Ravitaillements',
  Signal: 'Réception',
  'good for {percent} % of the run; the longest gap {gap} s; {fixes} fixes, {unused} left out':
    'bonne sur {percent} % de la course ; plus long trou {gap} s ; {fixes} positions, {unused} écartées',
  'free||no target': 'libre',
  'asked||pace': 'demandé',
  minutes: 'minutes',
  'Pace and heart rate at each minute, as a table':
    'Allure et fréquence cardiaque à chaque minute, en tableau',
  '{n} words about pace': { one: 'une remarque sur l’allure', other: '{n} remarques sur l’allure' },
  'Not done to the end; {words}.': 'Pas menée au bout ; {words}.',
  'Done in {time}; {words}.': 'Terminée en {time} ; {words}.',
  'leg||of a session': 'bloc',
  'heart||rate': 'cœur',
  'waiting||for a position': 'attente',
  'good||reception': 'bonne',
  'poor||reception': 'faible',
  'lost||reception': 'perdue',
  'Reception along the way': 'Réception en chemin',
  'Reception along the way, as a table': 'Réception en chemin, en tableau',
  'from {unit}': 'du {unit}',
  'to {unit}': 'au {unit}',
  reception: 'réception',
  'GPX track': 'Trace GPX',
  'CSV table': 'Tableau CSV',
  'GeoJSON map': 'Carte GeoJSON',
  'Run with its log': 'Sortie avec son enregistrement',
  'All runs': 'Toutes les sorties',
  'In short': 'En bref',
  'Save this run': 'Enregistrer cette sortie',
  'Files stay on this device until you send them somewhere.':
    'Les fichiers restent sur cet appareil jusqu’à ce que tu les envoies quelque part.',
  'Pace from board to board, as a table': 'Allure de panneau en panneau, en tableau',
  'planned||pace': 'prévue',
  'Heart rate from board to board, as a table': 'Fréquence cardiaque de panneau en panneau, en tableau',
  'Height at each board, as a table': 'Altitude à chaque panneau, en tableau',
  'This browser keeps no runs here.': 'Ce navigateur ne garde aucune sortie ici.',
  '{n} runs added.': { one: 'Une sortie ajoutée.', other: '{n} sorties ajoutées.' },
  '{runs} {left}': '{runs} {left}',
  '{n} points or lines were left out.': {
    one: 'Un point ou une ligne laissé de côté.',
    other: '{n} points ou lignes laissés de côté.',
  },
  '{n} runs restored.': { one: 'Une sortie restaurée.', other: '{n} sorties restaurées.' },
  '{runs} The file was cut short. Open the page anew to see your settings.':
    '{runs} Le fichier était tronqué. Rouvre la page pour voir tes réglages.',
  '{runs} Open the page anew to see your settings.': '{runs} Rouvre la page pour voir tes réglages.',
  'This run cannot be read by this version.': 'Cette version ne peut pas lire cette sortie.',
  'The run is deleted.': 'La sortie est supprimée.',
  'Imported run': 'Sortie importée',
  '{distance} {unit}': '{distance} {unit}',
  'The run ended at {place}; the goal of {time} was not reached.':
    'La course s’est arrêtée à {place} ; l’objectif de {time} n’a pas été atteint.',
  'Finished in {time}: on plan to the second or two.':
    'Arrivée en {time} : dans les temps, à une ou deux secondes près.',
  'Finished in {time}, {off} ahead of the plan.': 'Arrivée en {time}, {off} d’avance sur le plan.',
  'Finished in {time}, {off} behind the plan.': 'Arrivée en {time}, {off} de retard sur le plan.',
  'The run took {time}. It came without a plan, so it is held against an even one.':
    'La course a duré {time}. Elle est venue sans plan : elle est donc comparée à une course régulière.',
  'The opening is not in the log.': 'Le début n’est pas dans l’enregistrement.',
  'The first {distance} went as planned: a good opening.':
    'Les premiers {distance} se sont passés comme prévu : un bon début.',
  'The first {distance} went {off} s/km quicker than planned: too quick an opening.':
    'Les premiers {distance} ont été {off} s/km plus rapides que prévu : un début trop rapide.',
  'The first {distance} went {off} s/km slower than planned.':
    'Premiers {distance} plus lents que prévu, de {off} s/km.',
  'There is too little of the run to say where time was won and lost.':
    'Il y a trop peu de la course pour dire où du temps a été gagné et perdu.',
  'Most was lost from {from} to {to} ({lost}), most was won from {wonFrom} to {wonTo} ({won}).':
    'Le plus perdu : de {from} à {to} ({lost}) ; le plus gagné : de {wonFrom} à {wonTo} ({won}).',
  'Most was lost from {from} to {to} ({lost}).': 'Le plus perdu : de {from} à {to} ({lost}).',
  'Most was won from {wonFrom} to {wonTo} ({won}); no part lost time.':
    'Le plus gagné : de {wonFrom} à {wonTo} ({won}) ; aucune partie n’a perdu de temps.',
  'No part won or lost time.': 'Aucune partie n’a gagné ni perdu de temps.',
  'The halves cannot be compared.': 'Les deux moitiés ne peuvent pas être comparées.',
  'The two halves were even.': 'Les deux moitiés étaient égales.',
  'The second half was {percent} % slower than the first, hills and changes of target taken out.':
    'La deuxième moitié a été {percent} % plus lente que la première, côtes et changements d’allure prévus déduits.',
  'The second half was {percent} % quicker than the first, hills and changes of target taken out.':
    'La deuxième moitié a été {percent} % plus rapide que la première, côtes et changements d’allure prévus déduits.',
  '{n} stations cost {time}.': {
    one: 'Un ravitaillement a coûté {time}.',
    other: '{n} ravitaillements ont coûté {time}.',
  },
  '{halves} {cost}': '{halves} {cost}',
  'Next time: find out first why it ended; with pain or illness, ask a doctor.':
    'La prochaine fois : cherche d’abord pourquoi elle s’est arrêtée ; en cas de douleur ou de maladie, demande l’avis d’un médecin.',
  'Next time: hold the opening back; what it won was paid for in the second half. Practise it three times.':
    'La prochaine fois : retiens le début ; ce qu’il a gagné s’est payé dans la deuxième moitié. Répète-le trois fois.',
  'Next time: a goal a little slower, or longer threshold and long runs before it.':
    'La prochaine fois : un objectif un peu plus lent, ou avant elle des séances au seuil et des sorties longues plus longues.',
  'Next time: practise drinking on the move; the stations cost more than the pace did.':
    'La prochaine fois : entraîne-toi à boire en courant ; les ravitaillements ont coûté plus que l’allure.',
  'Next time: hold the opening back. It cost nothing seen this time; it is the first thing that does.':
    'La prochaine fois : maîtrise le début. Il n’a rien coûté de visible cette fois ; c’est la première chose qui coûte.',
  'Next time: a goal a little quicker is realistic, on a day and a course like this one.':
    'La prochaine fois : un objectif un peu plus rapide est réaliste, un jour et sur un parcours comme ceux-ci.',
  'Next time: hold the plan against this result before setting the goal.':
    'La prochaine fois : confronte le plan à ce résultat avant de fixer l’objectif.',
  'Next time: the same again.': 'La prochaine fois : pareil.',
  'Ahead or behind, over the distance': 'Avance ou retard, sur la distance',
  '19 times in 20 within': '19 fois sur 20 dedans',
  'It came without a plan, so it is held against its own even pace; the calls are what would have been said.':
    'Elle est venue sans plan : elle est comparée à sa propre allure régulière ; les annonces sont ce qui aurait été dit.',
};
