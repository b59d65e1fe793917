import type { Catalogue } from '../../text.ts';

export const day: Catalogue = {
  'Today.': 'Hoje.',
  'Tomorrow.': 'Amanhã.',
  'In {n} days.': 'Daqui a {n} dias.',
  'That day is over.': 'Esse dia já passou.',
  'Race day': 'Dia da prova',
  'From waking to the gun, by the clock.': 'De acordar até o tiro, pelo relógio.',
  'What decides the day': 'O que decide o dia',
  'The day by the clock': 'O dia pelo relógio',
  'evening before': 'na noite anterior',
  'Into the calendar (.ics)': 'Para o calendário (.ics)',
  'With the date of the race, the day goes into your calendar.':
    'Com a data da prova, o dia vai para o seu calendário.',
  'Said aloud': 'Em voz alta',
  'On race day this page tells you each step, in the same voice as in the race, as long as it is open and the screen is on. A phone puts pages to sleep: the calendar is the one that rings for certain.':
    'No dia da prova esta página diz cada passo, com a mesma voz da prova, enquanto estiver aberta e com a tela acesa. Um celular faz as páginas dormirem: quem toca com certeza é o calendário.',
  'Tell me each step': 'Diga cada passo',
  'Stop telling me': 'Parar de dizer',
  'Hear how it sounds': 'Ouvir como soa',
  'Next: {what}. Keep this page open.': 'A seguir: {what}. Deixe esta página aberta.',
  '{day}/{month}': '{day}/{month}',
  'The last two weeks': 'As duas últimas semanas',
  'Fill in the date, your running days and your weekly distance to see the last two weeks day by day: less running, as quick as ever.':
    'Indique a data, os seus dias de corrida e a distância semanal para ver as duas últimas semanas dia a dia: correr menos, tão rápido como sempre.',
  'Less running, as quick as ever: {first} % less than your usual week, then {second} % less.':
    'Menos corrida, tão rápida como sempre: {first} % a menos que a sua semana normal, depois {second} % a menos.',
  'Date of the race': 'Data da prova',
  'The gun goes at': 'O tiro é às',
  'The pen closes before the gun': 'O curral fecha antes do tiro',
  'Travel, door to race': 'Viagem, da porta à prova',
  'Temperature at the start': 'Temperatura na largada',
  'You run in a week': 'Você corre por semana',
  'On which days you run': 'Em que dias você corre',
  'Your long run is on': 'Seu longão é no dia',
  'This needs {expected}.': 'Isto precisa de {expected}.',
  '{time}: {what}. {reason}': '{time}: {what}. {reason}',
  '{what} at {time}': '{what} às {time}',
  'All steps, one after the other.': 'Todos os passos, um depois do outro.',
  'Take an old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Leve uma camisa velha, ou um saco de lixo com furos para cabeça e braços; tire pouco antes do tiro.',
  'An old warm top, a bin bag with holes for head and arms over it, and gloves; take them off just before the gun.':
    'Um agasalho velho, por cima um saco de lixo com furos para cabeça e braços, e luvas; tire pouco antes do tiro.',
  'An old top, or a bin bag with holes for head and arms; take it off just before the gun.':
    'Uma camisa velha, ou um saco de lixo com furos para cabeça e braços; tire pouco antes do tiro.',
  'Nothing over the race kit, unless it rains or blows: then a bin bag with holes.':
    'Nada sobre a roupa de prova, a não ser com chuva ou vento: aí um saco com furos.',
  'Nothing over the race kit. Stand in the shade, and wet your head if there is water.':
    'Nada sobre a roupa de prova. Fique na sombra, e molhe a cabeça se houver água.',
  'Fradkin et al. 2010: a warm-up helped in 79 % of criteria over 32 studies':
    'Fradkin et al. 2010: um aquecimento ajudou em 79 % dos critérios de 32 estudos',
  '{lower} to {upper} g of carbohydrate, as much as you are used to. {text}':
    '{lower} a {upper} g de carboidrato, o quanto você está acostumado. {text}',
  '{lower} to {upper} g of carbohydrate for each kg of body mass, as much as you are used to. {text}':
    '{lower} a {upper} g de carboidrato para cada kg de peso, o quanto você está acostumado. {text}',
  'Get up': 'Levantar',
  'Time to eat and leave without hurry. Ill or feverish? Stay at home.':
    'Tempo para comer e sair sem pressa. Doente ou com febre? Fique em casa.',
  'Breakfast, packed the evening before': 'Café da manhã, arrumado na noite anterior',
  'Wallis and Podlogar 2022: 1 to 4 g/kg in the 1 to 4 hours before':
    'Wallis e Podlogar 2022: 1 a 4 g/kg nas 1 a 4 horas antes',
  'Leave||for the race': 'Sair',
  '{n} min of travel.': '{n} min de viagem.',
  'Last full drink': 'Última hidratação completa',
  'From here on only sips if thirsty, so that nothing is left to lose in the pen.':
    'Daqui em diante só goles se tiver sede, para não ter vontade de ir ao banheiro no curral.',
  Arrive: 'Chegar',
  'Toilet first, then the bag, then a look at the way to the pen.':
    'Primeiro o banheiro, depois a bolsa, depois um olhar no caminho do curral.',
  'Warm-up: {n} min easy': 'Aquecimento: {n} min leves',
  'So easy that you could talk; off the road.': 'Tão leve que daria para conversar; fora da rua.',
  '{n} strides': '{n} acelerações',
  '20 seconds each at a little quicker than race pace, a walk back between.':
    '20 segundos cada, um pouco mais rápido que o ritmo de prova, voltando a pé.',
  'Warm kit off, layers on': 'Tirar o agasalho, pôr as camadas',
  'In the pen': 'No curral',
  'It closes early: keep the layers on and move on the spot.':
    'Ele fecha cedo: fique com as camadas e mexa-se no lugar.',
  'Layers off for the last minutes. Have the run open on the phone, waiting for the gun.':
    'Tire as camadas nos últimos minutos. Tenha a corrida aberta no celular, esperando o tiro.',
  'Your own clock starts at the line.': 'Seu próprio relógio começa na linha.',
  'a minute of the day, 0 to 1439': 'um minuto do dia, 0 a 1439',
  'minutes before the gun, 0 to 90': 'minutos antes do tiro, 0 a 90',
  'minutes of travel, 0 to 600': 'minutos de viagem, 0 a 600',
  'degrees Celsius, -40 to 50': 'graus Celsius, -40 a 50',
  'a race of 5 minutes to 55 hours, in seconds': 'uma prova de 5 minutos a 55 horas, em segundos',
  'kilograms, 25 to 250': 'quilogramas, 25 a 250',
  'In it {n} times 1 km at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Nele, {n} vezes 1 km no ritmo da meta, {pace}, dois minutos leves no meio. Pare inteiro.',
  'In it {n} times 400 m at goal pace, {pace}, two minutes easy between. Stop fresh.':
    'Nele, {n} vezes 400 m no ritmo da meta, {pace}, dois minutos leves no meio. Pare inteiro.',
  'Rest||day': 'Descanso',
  'As in your usual week. A walk is fine.': 'Como na sua semana normal. Uma caminhada serve.',
  '{distance} easy': '{distance} leves',
  'You can talk in sentences.': 'Dá para conversar em frases.',
  'Easy, with four strides at the end.': 'Leve, com quatro acelerações no fim.',
  '{distance} steady, the longest of the week': '{distance} constantes, a mais longa da semana',
  'Easy. Practise breakfast, gel and water once more.':
    'Leve. Pratique mais uma vez café da manhã, gel e água.',
  'Easy, the last ten minutes at goal pace, {pace}.':
    'Leve, os últimos dez minutos no ritmo da meta, {pace}.',
  '{distance} with goal pace in it': '{distance} com ritmo da meta dentro',
  '{distance} very easy': '{distance} muito leves',
  'Then three strides of 20 seconds. Lay out kit, number and breakfast.':
    'Depois três acelerações de 20 segundos. Separe roupa, número e café da manhã.',
  'Race: {race}': 'Prova: {race}',
  'By the plan.': 'Pelo plano.',
  'Bosquet et al. 2007: two weeks, volume down 41 to 60 %, intensity and frequency kept':
    'Bosquet et al. 2007: duas semanas, volume reduzido em 41 a 60 %, intensidade e frequência mantidas',
};
