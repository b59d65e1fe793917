import type { Catalogue } from '../../text.ts';

export const prepare: Catalogue = {
  'This is general information, not medical advice. If you have a condition, take medicine, are pregnant or feel unsure, ask a doctor first.':
    'Isto é informação geral, não conselho médico. Se você tem alguma doença, toma remédios, está grávida ou tem dúvidas, pergunte antes a um médico.',
  'Chest pain, faintness, an odd heartbeat or breath that does not come back: stop, get help, do not run on.':
    'Dor no peito, desmaio, batimento estranho ou fôlego que não volta: pare, peça ajuda, não continue a correr.',
  'With a fever, an infection or pain that changes your stride, do not race. There will be another one.':
    'Com febre, infecção ou dor que muda a passada, não compita. Haverá outra.',
  'Race day is for what you have practised: no new food, drink, gel, shoes or kit.':
    'O dia da prova é para o que você treinou: nada de comida, bebida, gel, tênis ou roupa novos.',
  'Gels can upset the stomach. Take them with water, slowly, and only the kind that you know from training.':
    'Géis podem atacar o estômago. Tome-os com água, devagar, e só os que conhece do treino.',
  'With diabetes or another condition of blood sugar, settle food, gels and timing with your doctor beforehand.':
    'Com diabetes ou outro problema de açúcar no sangue, acerte antes com o médico comida, géis e horários.',
  'Food at stations may hold nuts, milk, gluten or caffeine. If that matters to you, carry your own.':
    'A comida dos postos pode ter castanhas, leite, glúten ou cafeína. Se isso importa para você, leve a sua.',
  'Drink to thirst. Too much is dangerous too: it thins the salt in the blood. Gaining weight over a race is a warning sign.':
    'Beba pela sede. Demais também é perigoso: dilui o sal no sangue. Ganhar peso durante uma prova é sinal de alerta.',
  'Do not take anti-inflammatory painkillers (such as ibuprofen) around a race; with hard effort and much drinking they add risk.':
    'Não tome anti-inflamatórios (como o ibuprofeno) perto de uma prova; com esforço forte e muita bebida eles somam risco.',
  'Caffeine is not for everybody: leave it out with heart trouble, in pregnancy, with some medicines, or if you have not tried it in training.':
    'Cafeína não é para todos: deixe-a se tem problema de coração, na gravidez, com alguns remédios ou se não a experimentou no treino.',
  'In heat, give up the goal time: start slower, take shade and water, and stop if you feel dizzy, sick, confused or cold.':
    'No calor, desista do tempo da meta: saia mais devagar, busque sombra e água, e pare se sentir tontura, enjoo, confusão ou frio.',
  'On hills, keep the effort and let the pace go. A fast descent on tired legs is where people fall.':
    'Nas ladeiras mantenha o esforço e solte o ritmo. Uma descida rápida com pernas cansadas é onde as pessoas caem.',
  'Raise training slowly, one thing at a time, and rest when something hurts. After a long break, ask a doctor before hard training.':
    'Aumente o treino devagar, uma coisa de cada vez, e descanse quando algo doer. Depois de uma pausa longa, pergunte a um médico antes de treinar forte.',
  "Your race's rules and the local law decide what you may wear, carry and listen to, and where you may throw things away.":
    'As regras da sua prova e a lei do lugar decidem o que você pode vestir, levar e ouvir, e onde pode jogar coisas.',
  'Warm up and walk to the start off the road, and keep your ears open to traffic.':
    'Aqueça e vá até a largada fora da rua, e deixe os ouvidos abertos para o trânsito.',
  'An estimate from few facts, not a promise. How you feel on the day decides.':
    'Uma estimativa com poucos dados, não uma promessa. Como você se sente no dia decide.',
  '{pace} per km': '{pace} por km',
  '{pace} per mile': '{pace} por milha',
  '{n} km': '{n} km',
  '{n} miles': { one: '{n} milha', other: '{n} milhas' },
  'half marathon': 'meia maratona',
  marathon: 'maratona',
  'less than 1 in 20': 'menos de 1 em 20',
  'more than 19 in 20': 'mais de 19 em 20',
  'about even': 'mais ou menos metade',
  'about {n} in 10': 'cerca de {n} em 10',
  '{source} (recalled, not checked)': '{source} (de memória, não conferido)',
  'common practice, no source': 'prática comum, sem fonte',
  'Next: {step}': 'A seguir: {step}',
  'Yours now, without stations and gels. Undo stands under Plan.':
    'Agora é seu, sem postos nem géis. Desfazer fica em Plano.',
  'This is the plan of the demo race, with its stations and gels.':
    'Este é o plano da prova de amostra, com os seus postos e géis.',
  'Make it my own': 'Torná-lo meu',
};
