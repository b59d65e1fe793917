import type { Catalogue } from '../../text.ts';

export const course: Catalogue = {
  'Open the course itself first: these places need a line to lie on.':
    'Abra primeiro o percurso: estes lugares precisam de uma linha onde ficar.',
  'Places only: {n} of {m} are stations on your course.':
    'Só lugares: {n} de {m} são postos do seu percurso.',
  '{n} stations found in the file and put into the plan.': {
    one: '{n} posto encontrado no arquivo e posto no plano.',
    other: '{n} postos encontrados no arquivo e postos no plano.',
  },
  Course: 'Percurso',
  'The line on the ground, from a file of the race or a run of yours. It is read here and goes nowhere.':
    'A linha no chão, de um arquivo da prova ou de uma corrida sua. É lida aqui e não vai a lugar nenhum.',
  'The course drawn': 'O percurso desenhado',
  'Places on the course': 'Lugares do percurso',
  Recorded: 'Gravado',
  '{distance} {unit}, run {n} times': '{distance} {unit}, corrido {n} vezes',
  Official: 'Oficial',
  'Scaled by': 'Escala',
  Climb: 'Subida',
  'no heights in the file': 'sem altitudes no arquivo',
  'Run it the other way': 'Correr no outro sentido',
  'Remove the course': 'Tirar o percurso',
  'The recording is {n} m longer than the race. Is it the right course, and the right distance in the plan?':
    'A gravação é {n} m mais longa que a prova. É o percurso certo, e a distância certa no plano?',
  'The recording is {n} m shorter than the race. Is it the right course, and the right distance in the plan?':
    'A gravação é {n} m mais curta que a prova. É o percurso certo, e a distância certa no plano?',
  "The recording is {n} m longer than the race. The race's measured distance counts; the line is fitted to it.":
    'A gravação é {n} m mais longa que a prova. Vale a distância medida da prova; a linha é ajustada a ela.',
  "The recording is {n} m shorter than the race. The race's measured distance counts; the line is fitted to it.":
    'A gravação é {n} m mais curta que a prova. Vale a distância medida da prova; a linha é ajustada a ela.',
  'The course, {name}, drawn as a line': 'O percurso, {name}, desenhado como linha',
  'start||place': 'largada',
  'finish||place': 'chegada',
  station: 'posto',
  'what you carry||a mark': 'o que você leva',
  tunnel: 'túnel',
  'Height, {lowest} to {highest} m': 'Altitude, de {lowest} a {highest} m',
  'The way as a strip; the file holds no heights': 'O caminho como uma faixa; o arquivo não tem altitudes',
  'Profile of the course': 'Perfil do percurso',
  'Place: {place} {unit}': 'Lugar: {place} {unit}',
  'Course file': 'Arquivo do percurso',
  'Another file': 'Outro arquivo',
  'Open a course': 'Abrir um percurso',
  'Or drop it here. GPX with a track or a route; waypoints become stations. Or the log of a past run (.jsonl).':
    'Ou solte aqui. GPX com uma trilha ou uma rota; pontos viram postos. Ou o registro de uma corrida passada (.jsonl).',
  'The storage of this browser does not give the runs away.':
    'O armazenamento deste navegador não entrega as corridas.',
  'From a run on this device': 'De uma corrida neste aparelho',
  'No run is kept here yet.': 'Nenhuma corrida guardada aqui ainda.',
  'At {place} {unit}': 'Em {place} {unit}',
  'Point on the map or the profile, or move the slider; then put something there.':
    'Aponte no mapa ou no perfil, ou mova o controle; depois ponha algo ali.',
  'The course comes by here {n} times:': 'O percurso passa por aqui {n} vezes:',
  'The station offers': 'O posto oferece',
  'Station here': 'Posto aqui',
  'My {item} here': 'Meu {item} aqui',
  'Checkpoint here': 'Ponto de controle aqui',
  'Board {n} stands here': 'A placa {n} fica aqui',
  'Do not trust board {n}': 'Não confiar na placa {n}',
  'Tunnel from here': 'Túnel a partir daqui',
  'Tunnel from {place} to here': 'Túnel de {place} até aqui',
  'What lies on the way': 'O que há no caminho',
  'Remove {what} at {place}': 'Tirar {what} em {place}',
  'board {n} stands here': 'a placa {n} fica aqui',
  'board {n}, not trusted': 'placa {n}, sem confiança',
  'my {item}': 'meu {item}',
  'tunnel to {place}': 'túnel até {place}',
  'Run||noun': 'Corrida',
  'Left out: {what}.': 'Deixado de fora: {what}.',
  "The file holds {n} lines; taken is the one nearest to the race's distance.":
    'O arquivo tem {n} linhas; usa-se a mais próxima da distância da prova.',
  'a run with fixes along its way': 'uma corrida com posições no caminho',
  '{n} good fixes': '{n} posições boas',
  'From the run {file}': 'Da corrida {file}',
  'Drawn from a run of yours: as good as its signal was, and without heights.':
    'Desenhado de uma corrida sua: tão bom quanto foi o sinal, e sem altitudes.',
  'at most 64 MB': 'no máximo 64 MB',
  'the file: it could not be read from the disk': 'o arquivo: não pôde ser lido do disco',
  'at most 64 MB of GPX': 'no máximo 64 MB de GPX',
  'a GPX file': 'um arquivo GPX',
  'XML faults, the first at {place}': 'Erros de XML, o primeiro em {place}',
  'a gpx element at the top': 'um elemento gpx no topo',
  'at least one usable point': 'ao menos um ponto utilizável',
  '{n} points without a usable lat': {
    one: '{n} ponto sem um lat utilizável',
    other: '{n} pontos sem um lat utilizável',
  },
  '{n} points without a usable lon': {
    one: '{n} ponto sem um lon utilizável',
    other: '{n} pontos sem um lon utilizável',
  },
  'a track or route of at least two points': 'uma trilha ou rota de ao menos dois pontos',
  'Without a course Soundline goes by the signal alone, which is some hundred metres wrong over a half marathon. Pressing at the boards mends most of that.':
    'Sem percurso, o Soundline segue apenas o sinal, que erra algumas centenas de metros numa meia maratona. Apertar nas placas corrige quase tudo.',
};
