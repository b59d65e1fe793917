import type { Catalogue } from '../../text.ts';

export const fuel: Catalogue = {
  '{lower} to {upper} g of carbohydrate for each kg of body mass':
    '{lower} a {upper} g de carboidrato para cada kg de peso',
  '{lower} to {upper} g of carbohydrate ({lowerKg} to {upperKg} g for each kg)':
    '{lower} a {upper} g de carboidrato ({lowerKg} a {upperKg} g para cada kg)',
  'For less than an hour: eat as usual.': 'Para menos de uma hora: coma como sempre.',
  'The {n} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    'As {n} horas antes: {range} a cada 24 horas, todas as refeições juntas, e pouca corrida. É muita comida: experimente antes de um longão.',
  'From {fewest} to {most} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.':
    'De {fewest} a {most} horas antes: {range} a cada 24 horas, todas as refeições juntas, e pouca corrida. É muita comida: experimente antes de um longão.',
  'In the plan now: nothing to take. The voice tells you 200 to 300 m ahead.':
    'No plano agora: nada para tomar. A voz avisa 200 a 300 m antes.',
  'In the plan now: {list} {unit}. The voice tells you 200 to 300 m ahead.':
    'No plano agora: {list} {unit}. A voz avisa 200 a 300 m antes.',
  '{item} at {place}': '{item} em {place}',
  Fuel: 'Energia',
  'What to carry and when to take it, so that water follows. Only what you have practised.':
    'O que levar e quando tomar, para que a água venha em seguida. Só o que você treinou.',
  'How you fuel': 'Como você se alimenta',
  'Fuel plan': 'Plano de energia',
  'On the way': 'No caminho',
  'Under an hour nothing is needed on the way.': 'Abaixo de uma hora não é preciso nada no caminho.',
  'For {time} of running {lower} to {upper} g of carbohydrate an hour is usual, whatever you weigh.':
    'Para {time} de corrida o normal são {lower} a {upper} g de carboidrato por hora, seja qual for o seu peso.',
  'Put into the plan': 'Pôr no plano',
  Water: 'Água',
  'No water stations in the plan yet. Put them on the course, or into the plan.':
    'Ainda não há postos de água no plano. Ponha-os no percurso ou no plano.',
  Breakfast: 'Café da manhã',
  '{fewest} to {most} hours before the gun: {range}. {advice}':
    '{fewest} a {most} horas antes do tiro: {range}. {advice}',
  'The days before': 'Os dias antes',
  Clock: 'Relógio',
  What: 'O quê',
  'Water at': 'Água em',
  'To carry: {count}, {grams} g in all, {rate} g an hour.':
    'Para levar: {count}, {grams} g ao todo, {rate} g por hora.',
  'Take it': 'Tomar',
  'Half-way': 'Na metade',
  'At 10 miles': 'Nas 10 milhas',
  'By the hour': 'Por hora',
  'Carbohydrate an hour': 'Carboidrato por hora',
  'What you take': 'O que você toma',
  'Carbohydrate in one': 'Carboidrato em cada um',
  'The packet says it.': 'Está na embalagem.',
  'Body mass': 'Peso',
  'For breakfast and the days before. It stays on this device; leave it out and figures are for each kg.':
    'Para o café da manhã e os dias antes. Fica neste aparelho; se deixar vazio, os números são para cada kg.',
  'Write grams an hour as a number, 1 to {n}.': 'Escreva os gramas por hora como número, 1 a {n}.',
  'Write the carbohydrate of one as grams, 1 to {n}: it stands on the packet.':
    'Escreva o carboidrato de cada um em gramas, 1 a {n}: está na embalagem.',
  'Burke et al. 2011; Jeukendrup 2014': 'Burke et al. 2011; Jeukendrup 2014',
  'Thomas et al. 2016, joint position statement': 'Thomas et al. 2016, declaração conjunta',
  'joint position statement 2016, as quoted by a secondary page; the statement itself not seen':
    'declaração conjunta de 2016, citada por uma página secundária; a própria declaração não foi vista',
  'The breakfast that you know from long runs: bread, oats, rice or the like, little fat and fibre. Nearer the gun, the lower figure.':
    'O café da manhã que você conhece dos longões: pão, aveia, arroz ou parecido, pouca gordura e fibra. Mais perto do tiro, o número menor.',
  'Wallis and Podlogar 2022': 'Wallis e Podlogar 2022',
  'two to three hours before, and the choice of food: common practice, no source':
    'duas a três horas antes, e a escolha da comida: prática comum, sem fonte',
  'Under an hour nothing is needed on the way. A rinse of the mouth is enough.':
    'Abaixo de uma hora não é preciso nada no caminho. Bochechar basta.',
  'For a race of this length {lower} to {upper} g an hour is usual. More only if you have practised it.':
    'Para uma prova deste tamanho o normal são {lower} a {upper} g por hora. Mais, só se você treinou.',
  'This comes to {g} g an hour over the whole race: the first one is not at the start, and none falls into the last quarter of an hour.':
    'Isto dá {g} g por hora na prova inteira: o primeiro não é na largada, e nenhum cai no último quarto de hora.',
  'No water follows one of these: carry some, or move it by hand.':
    'A um destes não se segue água: leve um pouco, ou mova-o à mão.',
  'One of these waits long for water. Look whether a station is missing.':
    'Um destes espera muito pela água. Veja se falta um posto.',
  'This race ends before 10 miles.': 'Esta prova acaba antes das 10 milhas.',
  'Two or three sips after the gel.': 'Dois ou três goles depois do gel.',
  'A sip or two if you are thirsty; else run on.': 'Um gole ou dois se tiver sede; senão siga.',
  'instead of {place}': 'em vez de {place}',
};
