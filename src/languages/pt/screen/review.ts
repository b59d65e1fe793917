import type { Catalogue } from '../../text.ts';

export const review: Catalogue = {
  'From||call': 'De',
  'To||call': 'A',
  'Rate between calls': 'Velocidade entre os avisos',
  'It believed {ahead} s.': 'Acreditava em {ahead} s.',
  'It believed {ahead} s, give or take {off} s.': 'Acreditava em {ahead} s, mais ou menos {off} s.',
  'Nothing was called.': 'Nada foi dito.',
  Calls: 'Avisos',
  'why did it say that?': 'por que disse isso?',
  'Why: {why}.': 'Por quê: {why}.',
  'Hear this call': 'Ouvir este aviso',
  'seconds ahead (+) or behind (−)': 'segundos à frente (+) ou atrás (−)',
  'a call sounded': 'um aviso soou',
  'Splits against plan, as a table': 'Parciais contra o plano, como tabela',
  split: 'parcial',
  planned: 'previsto',
  'ahead or behind, s': 'à frente ou atrás, s',
  'run||as it was run': 'corrido',
  'Pace, per {unit} (quicker is higher)': 'Ritmo, por {unit} (mais rápido é mais alto)',
  'beats a minute': 'batimentos por minuto',
  'Heart rate': 'Batimentos',
  metres: 'metros',
  Height: 'Altitude',
  'Projected finish at each checkpoint': 'Chegada prevista em cada ponto de controle',
  projected: 'prevista',
  'give or take': 'mais ou menos',
  'it was||finish time in the end': 'foi',
  'as planned||pace of the opening': 'como planejado',
  'too quick||pace of the opening': 'rápida demais',
  'slow||pace of the opening': 'lenta',
  'Opening to {distance} {unit}': 'Abertura até {distance} {unit}',
  '{run} run, {planned} planned per {unit}: {verdict}':
    '{run} corrido, {planned} previsto por {unit}: {verdict}',
  'Second half against the first': 'Segunda metade contra a primeira',
  '{percent} % slower, hills and changes of target taken out':
    '{percent} % mais lenta, sem contar ladeiras nem mudanças de ritmo previstas',
  '{percent} % quicker, hills and changes of target taken out':
    '{percent} % mais rápida, sem contar ladeiras nem mudanças de ritmo previstas',
  Stations: 'Postos',
  Signal: 'Sinal',
  'good for {percent} % of the run; the longest gap {gap} s; {fixes} fixes, {unused} left out':
    'bom em {percent} % da corrida; a maior falha {gap} s; {fixes} posições, {unused} deixadas de fora',
  'free||no target': 'livre',
  'asked||pace': 'pedido',
  minutes: 'minutos',
  'Pace and heart rate at each minute, as a table': 'Ritmo e batimentos a cada minuto, como tabela',
  '{n} words about pace': { one: 'um aviso de ritmo', other: '{n} avisos de ritmo' },
  'Not done to the end; {words}.': 'Não feito até o fim; {words}.',
  'Done in {time}; {words}.': 'Feito em {time}; {words}.',
  'leg||of a session': 'trecho',
  'heart||rate': 'batimentos',
  'waiting||for a position': 'esperando',
  'good||reception': 'boa',
  'poor||reception': 'ruim',
  'lost||reception': 'perdida',
  'Reception along the way': 'Recepção no caminho',
  'Reception along the way, as a table': 'Recepção no caminho, como tabela',
  'from {unit}': 'de {unit}',
  'to {unit}': 'a {unit}',
  reception: 'recepção',
  'GPX track': 'Trilha GPX',
  'CSV table': 'Tabela CSV',
  'GeoJSON map': 'Mapa GeoJSON',
  'Run with its log': 'Corrida com seu registro',
  'All runs': 'Todas as corridas',
  'Imported run': 'Corrida importada',
  'In short': 'Em resumo',
  'Save this run': 'Salvar esta corrida',
  'Files stay on this device until you send them somewhere.':
    'Os arquivos ficam neste aparelho até você mandá-los a algum lugar.',
  'Pace from board to board, as a table': 'Ritmo de placa a placa, como tabela',
  'planned||pace': 'previsto',
  'Heart rate from board to board, as a table': 'Batimentos de placa a placa, como tabela',
  'Height at each board, as a table': 'Altitude em cada placa, como tabela',
  'This browser keeps no runs here.': 'Este navegador não guarda corridas aqui.',
  '{n} runs added.': { one: 'Uma corrida somada.', other: '{n} corridas somadas.' },
  '{runs} {left}': '{runs} {left}',
  '{n} points or lines were left out.': {
    one: 'Um ponto ou linha ficou de fora.',
    other: '{n} pontos ou linhas ficaram de fora.',
  },
  '{n} runs restored.': { one: 'Uma corrida restaurada.', other: '{n} corridas restauradas.' },
  '{runs} The file was cut short. Open the page anew to see your settings.':
    '{runs} O arquivo estava cortado. Abra a página de novo para ver seus ajustes.',
  '{runs} Open the page anew to see your settings.': '{runs} Abra a página de novo para ver seus ajustes.',
  'This run cannot be read by this version.': 'Esta versão não consegue ler esta corrida.',
  'The run is deleted.': 'A corrida foi apagada.',
  '{distance} {unit}': '{distance} {unit}',
  'The run ended at {place}; the goal of {time} was not reached.':
    'A corrida acabou em {place}; a meta de {time} não foi alcançada.',
  'Finished in {time}: on plan to the second or two.':
    'Chegada em {time}: dentro do plano, com um ou dois segundos de diferença.',
  'Finished in {time}, {off} ahead of the plan.': 'Chegada em {time}, {off} à frente do plano.',
  'Finished in {time}, {off} behind the plan.': 'Chegada em {time}, {off} atrás do plano.',
  'The run took {time}. It came without a plan, so it is held against an even one.':
    'A corrida durou {time}. Veio sem plano, por isso é comparada com uma de ritmo uniforme.',
  'The opening is not in the log.': 'A abertura não está no registro.',
  'The first {distance} went as planned: a good opening.':
    'Os primeiros {distance} foram como planejado: uma boa abertura.',
  'The first {distance} went {off} s/km quicker than planned: too quick an opening.':
    'Os primeiros {distance} foram {off} s/km mais rápidos do que o planejado: uma abertura rápida demais.',
  'The first {distance} went {off} s/km slower than planned.':
    'Os primeiros {distance} foram {off} s/km mais lentos que o previsto.',
  'There is too little of the run to say where time was won and lost.':
    'Há pouca corrida para dizer onde se ganhou e perdeu tempo.',
  'Most was lost from {from} to {to} ({lost}), most was won from {wonFrom} to {wonTo} ({won}).':
    'O maior tempo se perdeu de {from} a {to} ({lost}), o maior se ganhou de {wonFrom} a {wonTo} ({won}).',
  'Most was lost from {from} to {to} ({lost}).': 'O maior tempo se perdeu de {from} a {to} ({lost}).',
  'Most was won from {wonFrom} to {wonTo} ({won}); no part lost time.':
    'O maior tempo se ganhou de {wonFrom} a {wonTo} ({won}); nenhuma parte perdeu tempo.',
  'No part won or lost time.': 'Nenhuma parte ganhou ou perdeu tempo.',
  'The halves cannot be compared.': 'As metades não podem ser comparadas.',
  'The two halves were even.': 'As duas metades foram iguais.',
  'The second half was {percent} % slower than the first, hills and changes of target taken out.':
    'A segunda metade foi {percent} % mais lenta que a primeira, sem contar ladeiras nem mudanças de ritmo previstas.',
  'The second half was {percent} % quicker than the first, hills and changes of target taken out.':
    'A segunda metade foi {percent} % mais rápida que a primeira, sem contar ladeiras nem mudanças de ritmo previstas.',
  '{n} stations cost {time}.': { one: 'Um posto custou {time}.', other: '{n} postos custaram {time}.' },
  '{halves} {cost}': '{halves} {cost}',
  'Next time: find out first why it ended; with pain or illness, ask a doctor.':
    'Da próxima vez: descubra primeiro por que acabou; com dor ou doença, pergunte a um médico.',
  'Next time: hold the opening back; what it won was paid for in the second half. Practise it three times.':
    'Da próxima vez: segure a abertura; o que ela ganhou foi pago na segunda metade. Pratique três vezes.',
  'Next time: a goal a little slower, or longer threshold and long runs before it.':
    'Da próxima vez: uma meta um pouco mais lenta, ou mais limiar e longões antes.',
  'Next time: practise drinking on the move; the stations cost more than the pace did.':
    'Da próxima vez: pratique beber em movimento; os postos custaram mais que o ritmo.',
  'Next time: hold the opening back. It cost nothing seen this time; it is the first thing that does.':
    'Da próxima vez: contenha a abertura. Desta vez não se viu custo; é a primeira coisa que custa.',
  'Next time: a goal a little quicker is realistic, on a day and a course like this one.':
    'Da próxima vez: uma meta um pouco mais rápida é realista, num dia e num percurso como estes.',
  'Next time: hold the plan against this result before setting the goal.':
    'Da próxima vez: compare o plano com este resultado antes de pôr a meta.',
  'Next time: the same again.': 'Da próxima vez: o mesmo de novo.',
  'Ahead or behind, over the distance': 'À frente ou atrás, ao longo da distância',
  '19 times in 20 within': '19 em cada 20 vezes aqui dentro',
  'It came without a plan, so it is held against its own even pace; the calls are what would have been said.':
    'Veio sem plano, por isso é comparada com o seu próprio ritmo constante; os avisos são o que teria sido dito.',
};
