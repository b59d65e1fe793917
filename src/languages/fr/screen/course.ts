import type { Catalogue } from '../../text.ts';

export const course: Catalogue = {
  'Open the course itself first: these places need a line to lie on.':
    'Ouvre d’abord le parcours : ces lieux ont besoin d’un tracé où se placer.',
  'Places only: {n} of {m} are stations on your course.':
    'Des lieux seulement : {n} sur {m} sont des ravitaillements de ton parcours.',
  '{n} stations found in the file and put into the plan.': {
    one: '{n} ravitaillement trouvé dans le fichier et mis dans le plan.',
    other: '{n} ravitaillements trouvés dans le fichier et mis dans le plan.',
  },
  Course: 'Parcours',
  'The line on the ground, from a file of the race or a run of yours. It is read here and goes nowhere.':
    'Le tracé au sol, d’un fichier de la course ou d’une de tes sorties. Il est lu ici et ne va nulle part.',
  'The course drawn': 'Le parcours dessiné',
  'Places on the course': 'Lieux du parcours',
  Recorded: 'Enregistré',
  '{distance} {unit}, run {n} times': '{distance} {unit}, courus {n} fois',
  Official: 'Officiel',
  'Scaled by': 'Ajusté de',
  Climb: 'Dénivelé',
  'no heights in the file': 'pas d’altitudes dans le fichier',
  'Run it the other way': 'Le courir dans l’autre sens',
  'Remove the course': 'Retirer le parcours',
  'The recording is {n} m longer than the race. Is it the right course, and the right distance in the plan?':
    'L’enregistrement fait {n} m de plus que la course. Est-ce le bon parcours, et la bonne distance dans le plan ?',
  'The recording is {n} m shorter than the race. Is it the right course, and the right distance in the plan?':
    'L’enregistrement fait {n} m de moins que la course. Est-ce le bon parcours, et la bonne distance dans le plan ?',
  "The recording is {n} m longer than the race. The race's measured distance counts; the line is fitted to it.":
    'L’enregistrement fait {n} m de plus que la course. La distance mesurée de la course fait foi ; le tracé y est ajusté.',
  "The recording is {n} m shorter than the race. The race's measured distance counts; the line is fitted to it.":
    'L’enregistrement fait {n} m de moins que la course. La distance mesurée de la course fait foi ; le tracé y est ajusté.',
  'The course, {name}, drawn as a line': 'Le parcours, {name}, dessiné d’un trait',
  'start||place': 'départ',
  'finish||place': 'arrivée',
  station: 'ravitaillement',
  'what you carry||a mark': 'ce que tu emportes',
  tunnel: 'tunnel',
  'Height, {lowest} to {highest} m': 'Altitude, {lowest} à {highest} m',
  'The way as a strip; the file holds no heights': 'Le chemin en ruban ; le fichier n’a pas d’altitudes',
  'Profile of the course': 'Profil du parcours',
  'Place: {place} {unit}': 'Lieu : {place} {unit}',
  'Course file': 'Fichier du parcours',
  'Another file': 'Un autre fichier',
  'Open a course': 'Ouvrir un parcours',
  'Or drop it here. GPX with a track or a route; waypoints become stations. Or the log of a past run (.jsonl).':
    'Ou dépose-le ici. Un GPX avec une trace ou un itinéraire ; les points d’intérêt deviennent des ravitaillements. Ou l’enregistrement d’une ancienne sortie (.jsonl).',
  'The storage of this browser does not give the runs away.':
    'Le stockage de ce navigateur ne donne pas les sorties.',
  'From a run on this device': 'D’une sortie sur cet appareil',
  'No run is kept here yet.': 'Aucune sortie n’est encore gardée ici.',
  'At {place} {unit}': 'À {place} {unit}',
  'Point on the map or the profile, or move the slider; then put something there.':
    'Pointe sur la carte ou le profil, ou déplace le curseur ; puis mets-y quelque chose.',
  'The course comes by here {n} times:': 'Le parcours passe ici {n} fois :',
  'The station offers': 'Ici, on trouve',
  'Station here': 'Ravitaillement ici',
  'My {item} here': 'Mon {item} ici',
  'Checkpoint here': 'Point de passage ici',
  'Board {n} stands here': 'Le panneau {n} est ici',
  'Do not trust board {n}': 'Ne pas se fier au panneau {n}',
  'Tunnel from here': 'Tunnel à partir d’ici',
  'Tunnel from {place} to here': 'Tunnel de {place} jusqu’ici',
  'What lies on the way': 'Ce qu’il y a sur le chemin',
  'Remove {what} at {place}': 'Retirer : {what}, à {place}',
  'board {n} stands here': 'le panneau {n} est ici',
  'board {n}, not trusted': 'panneau {n}, pas fiable',
  'my {item}': '{item}, à moi',
  'tunnel to {place}': 'tunnel jusqu’à {place}',
  'Run||noun': 'Sortie',
  'Left out: {what}.': 'Laissé de côté : {what}.',
  "The file holds {n} lines; taken is the one nearest to the race's distance.":
    'Le fichier contient {n} tracés ; celui qui est le plus proche de la distance de la course est retenu.',
  'a run with fixes along its way': 'une sortie avec des positions en chemin',
  '{n} good fixes': '{n} bonnes positions',
  'From the run {file}': 'De la sortie {file}',
  'Drawn from a run of yours: as good as its signal was, and without heights.':
    'Dessiné d’après une de tes sorties : aussi bon que l’était son signal, et sans altitudes.',
  'at most 64 MB': '64 Mo au plus',
  'the file: it could not be read from the disk': 'le fichier : il n’a pas pu être lu sur le disque',
  'at most 64 MB of GPX': '64 Mo de GPX au plus',
  'a GPX file': 'un fichier GPX',
  'XML faults, the first at {place}': 'erreurs XML, la première à {place}',
  'a gpx element at the top': 'un élément gpx tout en haut',
  'at least one usable point': 'au moins un point utilisable',
  '{n} points without a usable lat': {
    one: '{n} point sans lat utilisable',
    other: '{n} points sans lat utilisable',
  },
  '{n} points without a usable lon': {
    one: '{n} point sans lon utilisable',
    other: '{n} points sans lon utilisable',
  },
  'a track or route of at least two points': 'une trace ou un itinéraire d’au moins deux points',
  'Without a course Soundline goes by the signal alone, which is some hundred metres wrong over a half marathon. Pressing at the boards mends most of that.':
    'Sans parcours, Soundline ne suit que le signal, faux de quelques centaines de mètres sur un semi-marathon. Appuyer aux bornes corrige presque tout.',
};
