import type { Catalogue } from '../../text.ts';

export const run: Catalogue = {
  'Loud voice': 'Voz alta',
  'For a crowd: harsher, and as loud as it can be.': 'Para a multidão: mais áspera e tão alta quanto pode.',
  'A run was cut off': 'Uma corrida foi interrompida',
  'Its last sign was {time} ago. Its log is safe on this device, and its clock has gone on.':
    'O último sinal dela foi há {time}. O registro está seguro neste aparelho, e o relógio continuou.',
  'Go on with it': 'Continuar com ela',
  'It is over': 'Acabou',
  'In a pocket or on an arm': 'No bolso ou no braço',
  'A guard swallows touches and rain. One finger that rests opens it.':
    'Uma proteção engole toques e chuva. Um dedo parado a abre.',
  "Use the headset's buttons": 'Usar os botões dos fones',
  'One press marks a board, two ask, three hush; with a pacer in the plan, three say level with them. Your own music stops for it.':
    'Um aperto marca uma placa, dois perguntam, três calam; com um marcador no plano, três dizem que você está lado a lado. Sua música para por isso.',
  'Guarded: hold to open': 'Protegida: segure para abrir',
  'No position yet': 'Ainda sem posição',
  'Stand in the open. The first may take half a minute.':
    'Fique ao ar livre. A primeira pode levar meio minuto.',
  'Position comes': 'A posição vem',
  'Position to {distance} m, as the receiver says': 'Posição com margem de {distance} m, segundo o receptor',
  'Position only to {distance} m': 'Posição só com margem de {distance} m',
  'It settles within a minute in the open.': 'Ao ar livre ela se firma em um minuto.',
  'Last position {s} s ago': 'Última posição há {s} s',
  'No position for {s} s': 'Sem posição há {s} s',
  'Your clock and plan go on.': 'Seu relógio e seu plano continuam.',
  'Position refused': 'Posição negada',
  'Allow it for this page in the browser settings, then switch on again. Without it only the clock runs.':
    'Permita para esta página nos ajustes do navegador e ligue de novo. Sem ela só o relógio anda.',
  'This browser has no position': 'Este navegador não tem posição',
  'Only the clock runs.': 'Só o relógio anda.',
  'Screen stays on': 'A tela fica acesa',
  'Screen kept on by a silent video': 'Tela mantida acesa por um vídeo mudo',
  'Screen may go dark': 'A tela pode apagar',
  'Set its time-out in the phone to the longest. Dark means no position.':
    'Deixe o tempo de apagar a tela no máximo. Apagada quer dizer sem posição.',
  'Sound on': 'Som ligado',
  'Voice is being loaded': 'Carregando a voz',
  'Sound asleep': 'Som em pausa',
  'Touch the screen once.': 'Toque na tela uma vez.',
  'No sound': 'Sem som',
  'The voice could not be loaded. Open the page again.':
    'A voz não pôde ser carregada. Abra a página de novo.',
  Instruments: 'Instrumentos',
  'Level with the pacer': 'Lado a lado com o marcador',
  'Quiet for 10 min': 'Silêncio por 10 min',
  'Speak again ({min} min)': 'Falar de novo ({min} min)',
  '{name}: {distance} {unit} in {time}.': '{name}: {distance} {unit} em {time}.',
  'Change the plan': 'Mudar o plano',
  'Check this phone': 'Testar este celular',
  'The browser will ask whether this page may know where you are. Soundline needs it to tell how far along the course you are. It stays on this device.':
    'O navegador vai perguntar se esta página pode saber onde você está. O Soundline precisa disso para dizer em que ponto do percurso você está. Fica neste aparelho.',
  'A browser gives no position to a page that is locked or out of sight. So the screen is kept on, black, for the whole run: turn its brightness down, and do not press the power button.':
    'Um navegador não dá posição a uma página bloqueada ou fora de vista. Por isso a tela fica acesa, preta, durante toda a corrida: baixe o brilho e não aperte o botão de ligar.',
  'Put your earphones in now. You will hear each call over your own music.':
    'Ponha os fones agora. Você ouvirá cada aviso por cima da sua música.',
  Safety: 'Segurança',
  'Traffic, marshals and your body come first. Some races and roads do not allow earphones: their rules and the law decide. Chest pain or faintness: stop and get help.':
    'Trânsito, fiscais e o seu corpo vêm primeiro. Algumas provas e ruas não permitem fones: as regras delas e a lei decidem. Dor no peito ou sensação de desmaio: pare e peça ajuda.',
  'This run is in another window of this device. Go on there, or close that window and switch on here.':
    'Esta corrida está em outra janela deste aparelho. Continue lá, ou feche aquela janela e ligue aqui.',
  'Practise the day at home': 'Praticar o dia em casa',
  'Practised at home a simulated runner runs your plan, in real time, on these very screens; nothing else is simulated.':
    'Na prática em casa um corredor simulado corre o seu plano, em tempo real, nestas mesmas telas; nada mais é simulado.',
  'A simulated runner waits for your start.': 'Um corredor simulado espera a sua largada.',
  Gun: 'Tiro',
  'Gun heard': 'Tiro ouvido',
  'press when it fires': 'aperte quando disparar',
  'press on the line': 'aperte na linha',
  'Or leave your hands alone and run: the start is found when you begin to run.':
    'Ou deixe as mãos em paz e corra: a largada é achada quando você começa a correr.',
  'Try the sound': 'Testar o som',
  'No position: by the clock': 'Sem posição: pelo relógio',
  'Position ±{distance} m': 'Posição ±{distance} m',
  'Poor position ±{distance} m': 'Posição ruim ±{distance} m',
  'No position': 'Sem posição',
  'screen may go dark': 'a tela pode apagar',
  'no sound: touch': 'sem som: toque',
  'not recorded': 'não gravado',
  Running: 'Correndo',
  'Press at a board. Hold to ask where you stand.':
    'Aperte em uma placa. Segure para perguntar como você está.',
  '{figure} s ahead': '{figure} s à frente',
  '{figure} s behind': '{figure} s atrás',
  Finished: 'Chegou',
  Stopped: 'Parado',
  'by the gun': 'em tempo bruto',
  'against plan': 'contra o plano',
  'Save the log': 'Salvar o registro',
  'This was a practice at home: its log goes when you are done.':
    'Isto foi uma prática em casa: o registro vai embora quando você acabar.',
  'The log holds every position and press of this run. It stays on this device, under Past runs, until you remove it; save it to have it elsewhere as well.':
    'O registro contém cada posição e cada toque desta corrida. Fica neste aparelho, em Anteriores, até você tirar; salve-o para tê-lo também em outro lugar.',
  'What was called': 'O que foi dito',
  '{n} of them could not be sounded.': {
    one: 'Um deles não pôde soar.',
    other: '{n} deles não puderam soar.',
  },
  'Hold again: end the run': 'Segure de novo: encerrar a corrida',
  Little: 'Pouco',
  'As usual': 'O normal',
  Everything: 'Tudo',
  'Your checkpoints, your own food, and what asks you to act.':
    'Seus pontos de controle, sua comida e o que pede uma ação sua.',
  'Also boards, stations and the signal, where there is time for them.':
    'Também placas, postos e o sinal, onde há tempo para eles.',
  'Also every board in a short race, and when you have time in hand near the end.':
    'Também cada placa em prova curta, e quando você tem folga perto do fim.',
  'How much is said': 'Quanto é dito',
  'No reading': 'Sem leitura',
  'On plan': 'Dentro do plano',
  '{thing} in {distance} {unit}': '{thing} em {distance} {unit}',
  'push||near the finish': 'arranque',
  'On the way a press anywhere marks a board, and a hold asks where you stand.':
    'No caminho, um toque em qualquer lugar marca uma placa; segurando, você pergunta como está.',
  'Look at this run': 'Ver esta corrida',
};
