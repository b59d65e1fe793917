import type { Catalogue } from '../../text.ts';

export const goal: Catalogue = {
  Goal: 'Meta',
  'What have you run lately, and what does it say about this race? A range, not a promise.':
    'O que você correu ultimamente, e o que isso diz desta prova? Uma faixa, não uma promessa.',
  'What you know': 'O que você sabe',
  'What it says': 'O que isso diz',
  'Fill in a recent result to see which times it points to.':
    'Escreva um resultado recente para ver que tempos ele indica.',
  'What it would take': 'O que seria preciso',
  'By formula': 'Por fórmula',
  '{n} of these come from your own {runs}.': {
    one: 'Um destes vem das suas próprias {runs}.',
    other: '{n} destes vêm das suas próprias {runs}.',
  },
  'runs||noun': 'corridas',
  'Added||time': 'Somado',
  '{distance} {unit} in {time}': '{distance} {unit} em {time}',
  'On a flat course on a normal day. “Added” is for weekly distance and for going long.':
    'Em percurso plano num dia normal. “Somado” é pela distância semanal e por ir mais longe.',
  'On a flat course on a normal day.': 'Em percurso plano num dia normal.',
  '5K': '5 km',
  '10K': '10 km',
  'half-way ({distance} {unit})': 'metade ({distance} {unit})',
  'What the goal means': 'O que a meta significa',
  '{perKm} per km, {perMile} per mile. By your plan:': '{perKm} por km, {perMile} por milha. Pelo seu plano:',
  'Heat and hills': 'Calor e ladeiras',
  'Fill in the temperature and open a course with heights to see what they ask of the goal.':
    'Indique a temperatura e abra um percurso com altitudes para ver o que pedem da meta.',
  'Nothing in what you gave speaks against the goal.': 'Nada do que você deu fala contra a meta.',
  'Revise:': 'Reveja:',
  'Consider:': 'Considere:',
  'With {climb} m of climbing an even effort takes {percent} % longer than on the flat: the middle of the range here is about {time}.':
    'Com {climb} m de subida um esforço constante leva {percent} % a mais que no plano: o meio da faixa aqui é cerca de {time}.',
  'Results and goal': 'Resultados e meta',
  'Recent result {n}': 'Resultado recente {n}',
  Distance: 'Distância',
  Time: 'Tempo',
  'Weeks ago': 'Há quantas semanas',
  'Remove result {n}': 'Tirar o resultado {n}',
  'Add a result': 'Adicionar um resultado',
  'Races or time trials that you ran all out. Two distances say more than one.':
    'Provas ou testes que você correu no máximo. Duas distâncias dizem mais que uma.',
  'Temperature at the race': 'Temperatura na prova',
  'Your goal': 'Sua meta',
  'For {name}, {distance} {unit}. The plan follows at once.':
    'Para {name}, {distance} {unit}. O plano segue na hora.',
  'this race': 'esta prova',
  'Middle of the range: {time}': 'Meio da faixa: {time}',
  'Quick end of the likely range: {time}': 'Lado rápido da faixa provável: {time}',
  'The inner bar holds half of runners with such results, the whole bar four in five. Quicker is left.':
    'A barra interior abrange metade dos corredores com tais resultados, a barra inteira quatro em cinco. Mais rápido fica à esquerda.',
  'Likely {quick} to {slow}, middle {middle}; goal {goal}':
    'Provável de {quick} a {slow}, meio {middle}; meta {goal}',
  'middle {time}': 'meio {time}',
  'goal {time}': 'meta {time}',
  'The range as a table': 'A faixa como tabela',
  'what||of the range': 'o quê',
  'from||a time': 'de',
  'to||a time': 'a',
  'half of runners': 'metade dos corredores',
  'four in five': 'quatro em cada cinco',
  middle: 'meio',
  goal: 'meta',
  'Write the distance as a number, such as 10 or 21.1.':
    'Escreva a distância como número, por exemplo 10 ou 21,1.',
  'Write the time as hours, minutes and seconds: 47:30 or 1:44:00.':
    'Escreva o tempo em horas, minutos e segundos: 47:30 ou 1:44:00.',
  'Write the weeks as a number, or leave them out.': 'Escreva as semanas como número, ou deixe vazio.',
  'Vickers and Vertosick 2016, 2303 runners: the usual formula is about right up to the half marathon, and at least 10 minutes too fast for half of recreational marathoners; the better models were still off by about 14 minutes (root mean square)':
    'Vickers e Vertosick 2016, 2303 corredores: a fórmula comum está mais ou menos certa até a meia maratona, e é pelo menos 10 minutos rápida demais para metade dos maratonistas amadores; os modelos melhores ainda erravam cerca de 14 minutos (raiz da média quadrática)',
  'Width from race-day variation of about 3 %, differences between runners and the age of the result: our own figures, set wide':
    'Largura pela variação do dia da prova de cerca de 3 %, diferenças entre corredores e a idade do resultado: números nossos, postos largos',
  Riegel: 'Riegel',
  'Riegel 1977, 1981: exponent 1.06, from efforts of 3.5 to 230 minutes':
    'Riegel 1977, 1981: expoente 1.06, de esforços de 3.5 a 230 minutos',
  Cameron: 'Cameron',
  'Cameron 1998, fitted to record times': 'Cameron 1998, ajustado a tempos recordes',
  'Daniels and Gilbert': 'Daniels e Gilbert',
  'Daniels and Gilbert 1979: oxygen cost of a speed, and the share of the maximum that a duration allows':
    'Daniels e Gilbert 1979: custo de oxigênio de uma velocidade, e a parte do máximo que uma duração permite',
  'Your results point to different times. Leave out any that you did not race all out.':
    'Seus resultados apontam para tempos diferentes. Deixe fora os que não correu no máximo.',
  'Your results are more than half a year old. A recent race or time trial would say more.':
    'Seus resultados têm mais de meio ano. Uma prova ou teste recente diria mais.',
  'This race is much longer than those you gave. A result nearer to its length would say more.':
    'Esta prova é muito mais longa que as que você deu. Um resultado mais próximo da distância diria mais.',
  'Beyond 3 h 50 min the usual formula was never fitted: take the slow side seriously.':
    'Além de 3 h 50 min a fórmula comum nunca foi ajustada: leve a sério o lado lento.',
  'Slowed on purpose: beyond what you have raced or trained for, most runners slow more than the formulas say.':
    'Freado de propósito: além do que você já correu ou treinou, a maioria perde mais do que as fórmulas dizem.',
  'a race distance between 1 km and 100 km, in metres':
    'uma distância de prova entre 1 km e 100 km, em metros',
  'a time for this distance between 2:14 and 16:40 per km, in seconds':
    'um tempo para esta distância entre 2:14 e 16:40 por km, em segundos',
  'days since the race, from 0 to 3650': 'dias desde a prova, de 0 a 3650',
  'Ely et al. 2007: the warmer (heat, sun and humidity together), the slower everybody; who suffers most differs between studies':
    'Ely et al. 2007: quanto mais quente (calor, sol e umidade juntos), mais lentos todos; quem sofre mais difere entre os estudos',
  'Minetti et al. 2002: a climb costs more than the same descent gives back':
    'Minetti et al. 2002: uma subida custa mais do que a mesma descida devolve',
  'At {n} degrees, do not hold the goal pace. Run by effort, open slower, and let the time be what it is.':
    'A {n} graus, não segure o ritmo da meta. Corra pelo esforço, abra mais devagar e deixe o tempo ser o que for.',
  'At {n} degrees and with sun or damp air, expect to be slower. Open no quicker than goal pace.':
    'A {n} graus e com sol ou ar úmido, conte com ir mais devagar. Não abra mais rápido que o ritmo da meta.',
  '{source}. The limits of {from} and {to} degrees: {practice}':
    '{source}. Os limites de {from} e {to} graus: {practice}',
  'At or below freezing, ice decides the pace. Warm up longer, and look at the ground before the clock.':
    'A zero grau ou menos, o gelo decide o ritmo. Aqueça por mais tempo, e olhe o chão antes do relógio.',
  '{n} m of climbing: slower than the same effort on the flat. Set the goal from a hilly result, or give yourself more minutes.':
    '{n} m de subida: mais lento que o mesmo esforço no plano. Tire a meta de um resultado com ladeiras, ou dê-se mais minutos.',
  '{n} m of climbing will cost some time. Plan by even effort, not even pace.':
    '{n} m de subida vão custar algum tempo. Planeje por esforço constante, não por ritmo constante.',
  '{source}. The limits of {from} and {to} m a km: {practice}':
    '{source}. Os limites de {from} e {to} m por km: {practice}',
  'Keep your {n} km a week steady: enough for this race.':
    'Mantenha seus {n} km por semana: bastam para esta prova.',
  'Let the week grow towards {n} km, by no more than a tenth a week, and ease every fourth week.':
    'Deixe a semana crescer até {n} km, não mais que um décimo por semana, e alivie a cada quarta semana.',
  'Once a week run 15 to 30 minutes in all at a pace that you could hold for an hour, in pieces with short rests.':
    'Uma vez por semana corra 15 a 30 minutos ao todo num ritmo que seguraria por uma hora, em partes com pausas curtas.',
  'Once a week run long and easy, and practise gel, water and breakfast on it.':
    'Uma vez por semana corra longo e leve, e pratique nele gel, água e café da manhã.',
  'Once a week run short and quick: 6 to 10 times a minute, with full rest.':
    'Uma vez por semana corra curto e rápido: 6 a 10 vezes um minuto, com pausa inteira.',
  'All the rest easy: you can talk in sentences.': 'Todo o resto leve: dá para conversar em frases.',
  'This step is more than half a year away. Choose a goal in between, race for it, and ask again.':
    'Este passo está a mais de meio ano. Escolha uma meta no meio, corra por ela e pergunte de novo.',
  'Then race the shorter distance, and put its time in here.':
    'Depois corra a distância menor, e ponha o tempo dela aqui.',
  'Daniels: at most one point of the running index in four to six weeks':
    'Daniels: no máximo um ponto do índice de corrida em quatro a seis semanas',
  'Kinds and amounts of training: common practice, no source':
    'Tipos e quantidades de treino: prática comum, sem fonte',
  'It asks for nothing more than you have shown.': 'Não pede nada além do que você mostrou.',
  'It asks for {km} km in about {need} (now about {now}): often {fewest} to {most} weeks of steady training, and not everybody gets there.':
    'Pede {km} km em cerca de {need} (agora cerca de {now}): muitas vezes {fewest} a {most} semanas de treino constante, e nem todos chegam lá.',
  '{goal} is gentle: your results point to {quick} to {slow}. A calm race, or room for a quicker goal.':
    '{goal} é tranquila: seus resultados apontam para {quick} a {slow}. Uma prova calma, ou espaço para uma meta mais rápida.',
  '{goal} fits your results, which point to {quick} to {slow}. The chance on a normal day: {odds}.':
    '{goal} combina com seus resultados, que apontam para {quick} a {slow}. A chance num dia normal: {odds}.',
  '{goal} is ambitious: your results point to {quick} to {slow}. It can happen on a very good day: {odds}. Keep a second goal nearer to {middle}.':
    '{goal} é ambiciosa: seus resultados apontam para {quick} a {slow}. Pode acontecer num dia muito bom: {odds}. Tenha uma segunda meta mais perto de {middle}.',
  '{goal} is beyond what your results show now, {quick} to {slow} (chance: {odds}). Keep it for a later race, and run this one for about {middle}.':
    '{goal} está além do que seus resultados mostram agora, {quick} a {slow} (chance: {odds}). Guarde-a para outra prova, e corra esta em cerca de {middle}.',
  '{time} for a half marathon': '{time} para uma meia maratona',
  '{time} for a marathon': '{time} para uma maratona',
  '{time} for {distance}': '{time} para {distance}',
  'Vickers and Vertosick 2016: predictions that know the weekly distance are better; fewer kilometres, slower marathon':
    'Vickers e Vertosick 2016: previsões que conhecem a distância semanal são melhores; menos quilômetros, maratona mais lenta',
  'How much a weekly kilometre counts is our own cautious figure (common practice, no source)':
    'Quanto conta um quilômetro semanal é um número cauteloso nosso (prática comum, sem fonte)',
  Formula: 'Fórmula',
};
