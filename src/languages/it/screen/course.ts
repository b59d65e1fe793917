import type { Catalogue } from '../../text.ts';

export const course: Catalogue = {
  'Open the course itself first: these places need a line to lie on.':
    'Apri prima il percorso: questi punti hanno bisogno di una linea su cui stare.',
  'Places only: {n} of {m} are stations on your course.':
    'Solo punti: {n} di {m} sono ristori del tuo percorso.',
  '{n} stations found in the file and put into the plan.': {
    one: '{n} ristoro trovato nel file e messo nel piano.',
    other: '{n} ristori trovati nel file e messi nel piano.',
  },
  Course: 'Percorso',
  'The line on the ground, from a file of the race or a run of yours. It is read here and goes nowhere.':
    'La linea sul terreno, da un file della gara o da una tua corsa. Si legge qui e non va da nessuna parte.',
  'The course drawn': 'Il percorso disegnato',
  'Places on the course': 'Punti del percorso',
  Recorded: 'Registrato',
  '{distance} {unit}, run {n} times': '{distance} {unit}, corso {n} volte',
  Official: 'Ufficiale',
  'Scaled by': 'Scala',
  Climb: 'Dislivello',
  'no heights in the file': 'nessuna quota nel file',
  'Run it the other way': 'Correrlo al contrario',
  'Remove the course': 'Togli il percorso',
  'The recording is {n} m longer than the race. Is it the right course, and the right distance in the plan?':
    'La registrazione è {n} m più lunga della gara. È il percorso giusto, e la distanza giusta nel piano?',
  'The recording is {n} m shorter than the race. Is it the right course, and the right distance in the plan?':
    'La registrazione è {n} m più corta della gara. È il percorso giusto, e la distanza giusta nel piano?',
  "The recording is {n} m longer than the race. The race's measured distance counts; the line is fitted to it.":
    'La registrazione è {n} m più lunga della gara. Vale la distanza misurata della gara; la linea le viene adattata.',
  "The recording is {n} m shorter than the race. The race's measured distance counts; the line is fitted to it.":
    'La registrazione è {n} m più corta della gara. Vale la distanza misurata della gara; la linea le viene adattata.',
  'The course, {name}, drawn as a line': 'Il percorso, {name}, disegnato come linea',
  'start||place': 'partenza',
  'finish||place': 'arrivo',
  station: 'ristoro',
  'what you carry||a mark': 'quello che porti',
  tunnel: 'galleria',
  'Height, {lowest} to {highest} m': 'Quota, da {lowest} a {highest} m',
  'The way as a strip; the file holds no heights': 'La strada come striscia; il file non ha quote',
  'Profile of the course': 'Profilo del percorso',
  'Place: {place} {unit}': 'Punto: {place} {unit}',
  'Course file': 'File del percorso',
  'Another file': 'Un altro file',
  'Open a course': 'Apri un percorso',
  'Or drop it here. GPX with a track or a route; waypoints become stations. Or the log of a past run (.jsonl).':
    'Oppure lascialo cadere qui. GPX con una traccia o una rotta; i punti diventano ristori. O il registro di una corsa passata (.jsonl).',
  'The storage of this browser does not give the runs away.': 'La memoria di questo browser non dà le corse.',
  'From a run on this device': 'Da una corsa su questo dispositivo',
  'No run is kept here yet.': 'Qui non è ancora conservata nessuna corsa.',
  'At {place} {unit}': 'A {place} {unit}',
  'Point on the map or the profile, or move the slider; then put something there.':
    'Indica sulla mappa o sul profilo, o sposta il cursore; poi metti lì qualcosa.',
  'The course comes by here {n} times:': 'Il percorso passa di qui {n} volte:',
  'The station offers': 'Il ristoro offre',
  'Station here': 'Ristoro qui',
  'My {item} here': 'Il mio {item} qui',
  'Checkpoint here': 'Punto di controllo qui',
  'Board {n} stands here': 'Il cartello {n} è qui',
  'Do not trust board {n}': 'Non fidarti del cartello {n}',
  'Tunnel from here': 'Galleria da qui',
  'Tunnel from {place} to here': 'Galleria da {place} fin qui',
  'What lies on the way': 'Che cosa c’è lungo la strada',
  'Remove {what} at {place}': 'Togli {what} a {place}',
  'board {n} stands here': 'il cartello {n} è qui',
  'board {n}, not trusted': 'cartello {n}, non affidabile',
  'my {item}': 'il mio {item}',
  'tunnel to {place}': 'galleria fino a {place}',
  'Run||noun': 'Corsa',
  'Left out: {what}.': 'Lasciato fuori: {what}.',
  "The file holds {n} lines; taken is the one nearest to the race's distance.":
    'Il file contiene {n} linee; si prende quella più vicina alla distanza della gara.',
  'a run with fixes along its way': 'una corsa con posizioni lungo la strada',
  '{n} good fixes': '{n} posizioni buone',
  'From the run {file}': 'Dalla corsa {file}',
  'Drawn from a run of yours: as good as its signal was, and without heights.':
    'Disegnato da una tua corsa: buono quanto il suo segnale, e senza quote.',
  'at most 64 MB': 'al massimo 64 MB',
  'the file: it could not be read from the disk': 'il file: non si è potuto leggere dal disco',
  'at most 64 MB of GPX': 'al massimo 64 MB di GPX',
  'a GPX file': 'un file GPX',
  'XML faults, the first at {place}': 'Errori XML, il primo a {place}',
  'a gpx element at the top': 'un elemento gpx in cima',
  'at least one usable point': 'almeno un punto utilizzabile',
  '{n} points without a usable lat': {
    one: '{n} punto senza un lat utilizzabile',
    other: '{n} punti senza un lat utilizzabile',
  },
  '{n} points without a usable lon': {
    one: '{n} punto senza un lon utilizzabile',
    other: '{n} punti senza un lon utilizzabile',
  },
  'a track or route of at least two points': 'una traccia o rotta di almeno due punti',
  'Without a course Soundline goes by the signal alone, which is some hundred metres wrong over a half marathon. Pressing at the boards mends most of that.':
    'Senza percorso Soundline segue solo il segnale, che su una mezza maratona sbaglia di qualche centinaio di metri. Premere ai cartelli corregge quasi tutto.',
};
