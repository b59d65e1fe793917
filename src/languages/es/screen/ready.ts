import type { Catalogue } from '../../text.ts';

export const ready: Catalogue = {
  Position: 'Posición',
  Screen: 'Pantalla',
  Sound: 'Sonido',
  'Earphone delay': 'Retraso de los auriculares',
  Buttons: 'Botones',
  Vibration: 'Vibración',
  Steps: 'Pasos',
  Battery: 'Batería',
  Log: 'Registro',
  Offline: 'Sin red',
  'Refused.': 'Denegada.',
  'Allow it for this page in the browser and in the system settings. Without it places are told by the plan’s clock.':
    'Permítela para esta página en el navegador y en los ajustes del sistema. Sin ella los lugares se dicen por el reloj del plan.',
  'This browser has none.': 'Este navegador no tiene.',
  'Use another browser.': 'Usa otro navegador.',
  'Nothing yet.': 'Aún nada.',
  'Go into the open. The first may take half a minute.':
    'Sal al aire libre. La primera puede tardar medio minuto.',
  'It comes, and does not say how exact.': 'Llega y no dice con qué exactitud.',
  'To {distance} m.||exact': 'A {distance} m.',
  'Only to {distance} m.||exact': 'Solo a {distance} m.',
  'Stay in the open a minute. If it stays so, allow the exact position in the settings.':
    'Quédate un minuto al aire libre. Si sigue así, permite la posición exacta en los ajustes.',
  'This iOS lets an installed page go dark.': 'Este iOS deja que una página instalada se apague.',
  'Update to 18.4, or run in a tab of the browser, or set Auto-Lock to Never for the race.':
    'Actualiza a 18.4, o corre en una pestaña del navegador, o pon el bloqueo automático en Nunca para la carrera.',
  'Stays on.': 'Sigue encendida.',
  'Kept on by a silent video.': 'Encendida por un vídeo mudo.',
  'It may pause your music.': 'Puede pausar tu música.',
  'May go dark.': 'Puede apagarse.',
  'Switch low-power mode off. Else set the screen’s time-out to the longest: dark means no position.':
    'Quita el ahorro de energía. Si no, pon el apagado de pantalla al máximo: apagada significa sin posición.',
  'The voice is not here.': 'La voz no está aquí.',
  'Open the page again with a network.': 'Abre la página de nuevo con red.',
  'The voice is being loaded.': 'Cargando la voz.',
  'Heard.': 'Se oyó.',
  'Not heard.': 'No se oyó.',
  'Turn the volume up, switch silent mode off, connect the earphones, and play again.':
    'Sube el volumen, quita el modo silencio, conecta los auriculares y prueba otra vez.',
  'Put your earphones in and play the sample.': 'Ponte los auriculares y escucha la muestra.',
  'Not measured. It may be left out.': 'Sin medir. Puede quedar así.',
  'About {ms} ms, your finger included.': 'Unos {ms} ms, tu dedo incluido.',
  'Calls come so much late. Earphones with a wire have next to none.':
    'Los avisos llegan así de tarde. Los auriculares con cable casi no tienen retraso.',
  'Not used. The screen does all that they do.': 'Sin usar. La pantalla hace todo lo que hacen ellos.',
  'They come through.': 'Llegan.',
  'Press the headset’s button once.': 'Pulsa una vez el botón de los auriculares.',
  'If nothing comes, the screen does all that it does.':
    'Si no llega nada, la pantalla hace todo lo que hacen ellos.',
  'Charge before the start, turn the brightness down, and switch low-power mode off.':
    'Carga antes de la salida, baja el brillo y quita el ahorro de energía.',
  'This browser does not say.': 'Este navegador no lo dice.',
  'Little room.': 'Poco espacio.',
  'Free some storage on the phone.': 'Libera algo de espacio en el teléfono.',
  'Kept on this device until you remove it.': 'Se guarda en este dispositivo hasta que lo quites.',
  'Kept on this device, but the browser may remove it.':
    'Se guarda en este dispositivo, pero el navegador puede quitarlo.',
  'Install Soundline, or save the log after the run.':
    'Instala Soundline, o guarda el registro después de la carrera.',
  'Counted where the position fails.': 'Se cuentan donde falla la posición.',
  'Refused. Tunnels are bridged by your pace alone.': 'Denegado. Los túneles se salvan solo con tu ritmo.',
  'This device does not count them.': 'Este dispositivo no los cuenta.',
  'You will be asked.': 'Se te preguntará.',
  'Beside the sound.': 'Además del sonido.',
  'Not on this device: the sound alone.': 'No en este dispositivo: solo el sonido.',
  'Works without a network.': 'Funciona sin red.',
  'Being stored.': 'Guardando.',
  'Needs a network to open.': 'Necesita red para abrirse.',
  'Do not close the page before the race.': 'No cierres la página antes de la carrera.',
  'position||in a list': 'posición',
  'screen||in a list': 'pantalla',
  'sound||in a list': 'sonido',
  'Not ready: {names}.': 'No está listo: {names}.',
  'Still open: {names}.': 'Falta por ver: {names}.',
  'Ready.': 'Listo.',
  fine: 'bien',
  'could be better': 'puede mejorar',
  missing: 'falta',
  'open||not known yet': 'pendiente',
  'Install Soundline': 'Instalar Soundline',
  'Install first: Share, then Add to Home Screen, and set up your plan there.':
    'Instala primero: Compartir, luego Añadir a inicio, y prepara allí tu plan.',
  'A tab and the installed app do not share what they store.':
    'Una pestaña y la aplicación instalada no comparten lo que guardan.',
  'Installed it opens without a network, and the browser keeps its logs.':
    'Instalada se abre sin red, y el navegador conserva sus registros.',
  'Ready to race?': '¿Listo para correr?',
  'Tries each thing that a race needs, on this device, as it will be used. It takes a minute.':
    'Prueba cada cosa que necesita una carrera, en este dispositivo, tal como se usará. Lleva un minuto.',
  'You will be asked for your position. It stays on this device. Stand outside, with your earphones in.':
    'Se te pedirá la posición. Se queda en este dispositivo. Ponte fuera, con los auriculares puestos.',
  'Begin the check': 'Empezar la prueba',
  Ready: 'Listo',
  'Not ready yet': 'Aún no está listo',
  Checks: 'Pruebas',
  'No page can see whether low-power mode is on, or how bright the screen is: switch the one off and turn the other down. Do not press the power button during the run.':
    'Ninguna página puede ver si está puesto el ahorro de energía ni cuánto brilla la pantalla: quita lo uno y baja lo otro. No pulses el botón de encendido durante la carrera.',
  'To the start': 'A la salida',
  'To the start all the same': 'A la salida de todos modos',
  'Play the sample': 'Oír la muestra',
  'Did you hear it?': '¿Lo oíste?',
  Yes: 'Sí',
  No: 'No',
  'Tap with each beat': 'Toca con cada golpe',
  'Measure||press': 'Medir',
};
