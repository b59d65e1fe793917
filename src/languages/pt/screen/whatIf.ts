import type { Catalogue } from '../../text.ts';

export const whatIf: Catalogue = {
  'Four in five finishes; the stroke is the middle one': 'Quatro em cada cinco chegadas; o traço é a do meio',
  'Finishes from {quick} to {slow}, middle {middle}': 'Chegadas de {quick} a {slow}, meio {middle}',
  'The finishes as a table': 'As chegadas como tabela',
  'what||of the finishes': 'o quê',
  'one in ten is quicker than': 'uma em dez é mais rápida que',
  'one in ten is slower than': 'uma em dez é mais lenta que',
  'Your plan run a thousand times by runners with your results. Not what will happen: what could.':
    'Seu plano corrido mil vezes por corredores com os seus resultados. Não o que vai acontecer: o que poderia.',
  'What it rests on': 'Em que isso se apoia',
  'Taken from your results: about {time} on this course at an even effort, give or take {percent} %.':
    'Tirado dos seus resultados: cerca de {time} neste percurso com esforço constante, mais ou menos {percent} %.',
  'Without a result of yours, the goal itself is taken for what you can do, so the chance is near even by nature. Put a result in under Goal.':
    'Sem um resultado seu, a própria meta é tomada como o que você pode fazer, e por isso a chance fica perto da metade. Ponha um resultado em Meta.',
  'From the gun to your line': 'Do tiro até a sua linha',
  'What it does not know': 'O que isso não sabe',
  'What came out': 'O que saiu',
  'A thousand runs are under way …': 'Mil corridas em andamento …',
  'Goal {goal}, no opening.': 'Meta {goal}, sem abertura.',
  'Goal {goal}, no opening, push from {from}.': 'Meta {goal}, sem abertura, arranque a partir de {from}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}.':
    'Meta {goal}, abertura {quicker} s por km mais rápida por {distance}.',
  'Goal {goal}, opening {quicker} s per km quicker for {distance}, push from {from}.':
    'Meta {goal}, abertura {quicker} s por km mais rápida por {distance}, arranque a partir de {from}.',
  'Another opening': 'Outra abertura',
  'Goal made': 'Meta alcançada',
  'Middle finish': 'Chegada do meio',
  'Against even, s': 'Contra constante, s',
  '± is one standard error from the thousand runs, not the doubt of the model, which is larger.':
    '± é um erro padrão das mil corridas, não a dúvida do modelo, que é maior.',
  'They run as most do: the pace wanders by {wander} % over a kilometre, a water station costs {station} s.':
    'Correm como a maioria: o ritmo oscila {wander} % em um quilômetro, um posto de água custa {station} s.',
  'Moved by {n} runs of yours: the pace wanders by {wander} % over a kilometre, a water station costs {station} s, and legs that give all slow by {fade} % from the first half to the second, where most slow by {usual} %.':
    {
      one: 'Movido por uma corrida sua: o ritmo oscila {wander} % em um quilômetro, um posto de água custa {station} s, e pernas que dão tudo perdem {fade} % da primeira metade para a segunda, onde a maioria perde {usual} %.',
      other:
        'Movido por {n} corridas suas: o ritmo oscila {wander} % em um quilômetro, um posto de água custa {station} s, e pernas que dão tudo perdem {fade} % da primeira metade para a segunda, onde a maioria perde {usual} %.',
    },
  'The simulation could not be run on this browser.': 'A simulação não pôde rodar neste navegador.',
  'Abbiss and Laursen 2008: over two minutes and more an even pace tends to serve best':
    'Abbiss e Laursen 2008: de dois minutos para cima um ritmo constante tende a servir melhor',
  'Nikolaidis et al. 2019, 7258 half marathoners: each stretch slower than the one before, about 4 % in all':
    'Nikolaidis et al. 2019, 7258 corredores de meia maratona: cada trecho mais lento que o anterior, cerca de 4 % ao todo',
  'Hanley 2015, world half-marathon championships: most start fast and slow after 5 km; the best are more even':
    'Hanley 2015, mundiais de meia maratona: a maioria sai rápido e perde depois de 5 km; os melhores são mais iguais',
  'Smyth 2018, 1.7 million marathons: fast starts go with slower finishes. Seen, not tried: quick starters also differ in ability':
    'Smyth 2018, 1,7 milhão de maratonas: largadas rápidas andam com chegadas mais lentas. Visto, não testado: quem sai rápido também difere em capacidade',
  "That tiredness adds up along Riegel's curve, how late a runner notices, wander and seconds at stations are our own assumptions":
    'Que o cansaço se soma pela curva de Riegel, quão tarde um corredor percebe, a oscilação e os segundos nos postos são suposições nossas',
  'A model, not a forecast. It takes your result as given, and everybody in it runs by the plan until the legs say no.':
    'Um modelo, não uma previsão. Toma o seu resultado como dado, e todos nele correm pelo plano até as pernas dizerem não.',
  'It knows no heat, wind, crowd, cramp or stomach, and nobody who gives up.':
    'Não conhece calor, vento, multidão, cãibra nem estômago, nem quem desiste.',
  'No trial has tested a quick opening in the half marathon. Take differences of a few seconds as none.':
    'Nenhum estudo testou uma abertura rápida na meia maratona. Tome diferenças de poucos segundos como nenhuma.',
  'Every run of this plan made the goal. Four in five finish between {quick} and {slow}.':
    'Toda corrida deste plano alcançou a meta. Quatro em cada cinco chegam entre {quick} e {slow}.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost about {place}.':
    'Chance da meta: {odds}. Quatro em cada cinco chegam entre {quick} e {slow}. Onde se perde, é mais perto de {place}.',
  'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost between {from} and {to}.':
    'Chance da meta: {odds}. Quatro em cada cinco chegam entre {quick} e {slow}. Onde se perde, é mais entre {from} e {to}.',
  '{quicker} s per km quicker for {distance}: neither wins nor costs anything to speak of.':
    '{quicker} s por km mais rápido por {distance}: não ganha nem custa nada que se note.',
  '{quicker} s per km quicker for {distance}: wins about {n} s on average.':
    '{quicker} s por km mais rápido por {distance}: ganha cerca de {n} s em média.',
  '{quicker} s per km quicker for {distance}: costs about {n} s on average.':
    '{quicker} s por km mais rápido por {distance}: custa cerca de {n} s em média.',
  'Quicker by, s per km': 'Mais rápido em, s por km',
};
