import type { Catalogue } from '../../text.ts';

export const parts: Catalogue = {
  'Plan||noun': 'Plano',
  'Practice||noun': 'Treino',
  'Rehearse||verb': 'Ensaiar',
  'Run||verb': 'Correr',
  'Past runs': 'Anteriores',
  Screens: 'Telas',
  'Calls, newest first': 'Avisos, o mais novo primeiro',
  '(tone)': '(som)',
  'Seconds ahead or behind over the distance; the grey band holds the truth 19 times in 20':
    'Segundos à frente ou atrás ao longo da distância; a faixa cinza contém a verdade 19 em cada 20 vezes',
  ahead: 'à frente',
  behind: 'atrás',
  'Nothing to draw yet': 'Nada para desenhar ainda',
  '{n} {unit}': '{n} {unit}',
  'At {place}: {n} seconds ahead': {
    one: 'Em {place}: {n} segundo à frente',
    other: 'Em {place}: {n} segundos à frente',
  },
  'At {place}: {n} seconds behind': {
    one: 'Em {place}: {n} segundo atrás',
    other: 'Em {place}: {n} segundos atrás',
  },
  'Hold for {n} seconds': 'Segure por {n} segundos',
  'The screens are not in {language} yet: they are in English.':
    'As telas ainda não estão em {language}: estão em inglês.',
  'The screens in {language} could not be loaded. Open the page again with a network.':
    'As telas em {language} não puderam ser carregadas. Abra a página de novo com rede.',
  'There is no voice in {language} yet: calls are in English.':
    'Ainda não há voz em {language}: os avisos são em inglês.',
  'The voice in {language} could not be loaded: calls are in English.':
    'A voz em {language} não pôde ser carregada: os avisos são em inglês.',
  Language: 'Idioma',
  'This screen could not be loaded. Open the page again with a network.':
    'Esta tela não pôde ser carregada. Abra a página de novo com rede.',
  'This browser keeps no pages for later: Soundline needs a network here.':
    'Este navegador não guarda páginas: o Soundline precisa de rede aqui.',
  'Being stored for use without a network …': 'Guardando para usar sem rede …',
  'Stored for use without a network. The voice is checked at the first touch.':
    'Guardado para uso sem rede. A voz é conferida ao primeiro toque.',
  'Ready offline.': 'Pronto sem rede.',
  'Not ready offline. Open the page again with a network.':
    'Não pronto sem rede. Abra a página de novo com rede.',
  'A newer version is here.': 'Há uma versão mais nova.',
  'Take it now': 'Usar agora',
  'The voice is being loaded ({size} MB).': 'Carregando a voz ({size} MB).',
  'No sound: the voice could not be loaded. {why}': 'Sem som: a voz não pôde ser carregada. {why}',
  'on plan': 'dentro do plano',
  'no reading': 'sem leitura',
  'No reading yet': 'Ainda sem leitura',
  'On plan, give or take {sd}': 'Dentro do plano, mais ou menos {sd}',
  '{seconds} seconds ahead, give or take {sd}': {
    one: '{seconds} segundo à frente, mais ou menos {sd}',
    other: '{seconds} segundos à frente, mais ou menos {sd}',
  },
  '{seconds} seconds behind, give or take {sd}': {
    one: '{seconds} segundo atrás, mais ou menos {sd}',
    other: '{seconds} segundos atrás, mais ou menos {sd}',
  },
  'To the content': 'Ao conteúdo',
};
