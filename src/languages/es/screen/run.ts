import type { Catalogue } from '../../text.ts';

export const run: Catalogue = {
  'Loud voice': 'Voz fuerte',
  'For a crowd: harsher, and as loud as it can be.':
    'Entre el gentío: más áspera y todo lo fuerte que puede ser.',
  'A run was cut off': 'Una carrera se cortó',
  'Its last sign was {time} ago. Its log is safe on this device, and its clock has gone on.':
    'Su última señal fue hace {time}. Su registro está a salvo en este dispositivo y su reloj ha seguido.',
  'Go on with it': 'Seguir con ella',
  'It is over': 'Se acabó',
  'In a pocket or on an arm': 'En un bolsillo o en el brazo',
  'A guard swallows touches and rain. One finger that rests opens it.':
    'Una protección absorbe los toques y la lluvia. La abre un dedo que se queda quieto.',
  "Use the headset's buttons": 'Usar los botones de los auriculares',
  'One press marks a board, two ask, three hush; with a pacer in the plan, three say level with them. Your own music stops for it.':
    'Una pulsación marca un cartel, dos preguntan, tres callan; con liebre en el plan, tres dicen que vas a su altura. Tu música se para por ello.',
  'Guarded: hold to open': 'Protegida: mantén pulsado para abrir',
  'No position yet': 'Aún sin posición',
  'Stand in the open. The first may take half a minute.':
    'Ponte al aire libre. La primera puede tardar medio minuto.',
  'Position comes': 'La posición llega',
  'Position to {distance} m, as the receiver says': 'Posición con {distance} m de margen, según el receptor',
  'Position only to {distance} m': 'Posición con hasta {distance} m de margen',
  'It settles within a minute in the open.': 'Al aire libre se asienta en un minuto.',
  'Last position {s} s ago': 'Última posición hace {s} s',
  'No position for {s} s': 'Sin posición desde hace {s} s',
  'Your clock and plan go on.': 'Tu reloj y tu plan siguen.',
  'Position refused': 'Posición denegada',
  'Allow it for this page in the browser settings, then switch on again. Without it only the clock runs.':
    'Permítela para esta página en los ajustes del navegador y enciende otra vez. Sin ella solo corre el reloj.',
  'This browser has no position': 'Este navegador no da posición',
  'Only the clock runs.': 'Solo corre el reloj.',
  'Screen stays on': 'La pantalla sigue encendida',
  'Screen kept on by a silent video': 'Pantalla encendida por un vídeo mudo',
  'Screen may go dark': 'La pantalla puede apagarse',
  'Set its time-out in the phone to the longest. Dark means no position.':
    'Pon su tiempo de apagado en el teléfono al máximo. Apagada significa sin posición.',
  'Sound on': 'Sonido activo',
  'Voice is being loaded': 'Cargando la voz',
  'Sound asleep': 'Sonido en pausa',
  'Touch the screen once.': 'Toca la pantalla una vez.',
  'No sound': 'Sin sonido',
  'The voice could not be loaded. Open the page again.': 'No se pudo cargar la voz. Abre la página de nuevo.',
  Instruments: 'Instrumentos',
  'Level with the pacer': 'A la altura de la liebre',
  'Quiet for 10 min': 'Silencio 10 min',
  'Speak again ({min} min)': 'Hablar otra vez ({min} min)',
  '{name}: {distance} {unit} in {time}.': '{name}: {distance} {unit} en {time}.',
  'Change the plan': 'Cambiar el plan',
  'Check this phone': 'Probar este teléfono',
  'The browser will ask whether this page may know where you are. Soundline needs it to tell how far along the course you are. It stays on this device.':
    'El navegador te preguntará si esta página puede saber dónde estás. Soundline lo necesita para decir por dónde vas del recorrido. Se queda en este dispositivo.',
  'A browser gives no position to a page that is locked or out of sight. So the screen is kept on, black, for the whole run: turn its brightness down, and do not press the power button.':
    'Un navegador no da posición a una página bloqueada o fuera de la vista. Por eso la pantalla sigue encendida, en negro, toda la carrera: baja el brillo y no pulses el botón de encendido.',
  'Put your earphones in now. You will hear each call over your own music.':
    'Ponte los auriculares ahora. Oirás cada aviso por encima de tu música.',
  Safety: 'Seguridad',
  'Traffic, marshals and your body come first. Some races and roads do not allow earphones: their rules and the law decide. Chest pain or faintness: stop and get help.':
    'El tráfico, los voluntarios y tu cuerpo van primero. Algunas carreras y vías no permiten auriculares: deciden sus reglas y la ley. Dolor en el pecho o mareo: para y pide ayuda.',
  'This run is in another window of this device. Go on there, or close that window and switch on here.':
    'Esta carrera está en otra ventana de este dispositivo. Sigue allí, o cierra esa ventana y enciende aquí.',
  'Practise the day at home': 'Practicar el día en casa',
  'Practised at home a simulated runner runs your plan, in real time, on these very screens; nothing else is simulated.':
    'Al practicar en casa, un corredor simulado corre tu plan en tiempo real en estas mismas pantallas; nada más es simulado.',
  'A simulated runner waits for your start.': 'Un corredor simulado espera tu salida.',
  Gun: 'Disparo',
  'Gun heard': 'Disparo oído',
  'press when it fires': 'pulsa cuando suene',
  'press on the line': 'pulsa en la línea',
  'Or leave your hands alone and run: the start is found when you begin to run.':
    'O deja las manos en paz y corre: la salida se encuentra cuando empiezas a correr.',
  'Try the sound': 'Probar el sonido',
  'No position: by the clock': 'Sin posición: por el reloj',
  'Position ±{distance} m': 'Posición ±{distance} m',
  'Poor position ±{distance} m': 'Posición mala ±{distance} m',
  'No position': 'Sin posición',
  'screen may go dark': 'la pantalla puede apagarse',
  'no sound: touch': 'sin sonido: toca',
  'not recorded': 'sin registrar',
  Running: 'En carrera',
  'Press at a board. Hold to ask where you stand.':
    'Pulsa en un cartel. Mantén pulsado para preguntar cómo vas.',
  '{figure} s ahead': '{figure} s por delante',
  '{figure} s behind': '{figure} s por detrás',
  Finished: 'Terminado',
  Stopped: 'Parado',
  'by the gun': 'en tiempo oficial',
  'against plan': 'frente al plan',
  'Save the log': 'Guardar el registro',
  'This was a practice at home: its log goes when you are done.':
    'Esto era una práctica en casa: su registro se va cuando acabes.',
  'The log holds every position and press of this run. It stays on this device, under Past runs, until you remove it; save it to have it elsewhere as well.':
    'El registro contiene cada posición y pulsación de esta carrera. Queda en este dispositivo, en Historial, hasta que lo quites; guárdalo para tenerlo también en otro sitio.',
  'What was called': 'Lo que se dijo',
  '{n} of them could not be sounded.': {
    one: 'Uno de ellos no pudo sonar.',
    other: '{n} de ellos no pudieron sonar.',
  },
  'Hold again: end the run': 'Mantén otra vez: terminar la carrera',
  Little: 'Poco',
  'As usual': 'Lo habitual',
  Everything: 'Todo',
  'Your checkpoints, your own food, and what asks you to act.':
    'Tus puntos de control, tu propia comida y lo que te pide actuar.',
  'Also boards, stations and the signal, where there is time for them.':
    'También carteles, avituallamientos y la señal, donde hay tiempo para ellos.',
  'Also every board in a short race, and when you have time in hand near the end.':
    'También cada cartel en una carrera corta, y cuando te sobra tiempo cerca del final.',
  'How much is said': 'Cuánto se dice',
  'No reading': 'Sin lectura',
  'On plan': 'Según el plan',
  '{thing} in {distance} {unit}': '{thing} en {distance} {unit}',
  'push||near the finish': 'empujón',
  'On the way a press anywhere marks a board, and a hold asks where you stand.':
    'En marcha, una pulsación en cualquier sitio marca un cartel, y si mantienes pulsado preguntas cómo vas.',
  'Look at this run': 'Ver esta carrera',
};
