import type { Catalogue } from '../../text.ts';

export const share: Catalogue = {
  'The plan as a picture code': 'El plan como código en imagen',
  'The camera is not allowed, or there is none. Photograph the code and open the picture instead.':
    'La cámara no está permitida o no hay. Fotografía el código y abre la imagen en su lugar.',
  'No code was found in this picture. Take it straight on, whole, with its white margin, and sharp.':
    'No se encontró ningún código en esta imagen. Hazla de frente, entera, con su margen blanco y nítida.',
  'This file is no picture that the browser can open.':
    'Este archivo no es una imagen que el navegador pueda abrir.',
  'Read with the camera': 'Leer con la cámara',
  'Camera off': 'Apagar la cámara',
  'Open a picture': 'Abrir una imagen',
  'Open a picture of a code': 'Abrir la imagen de un código',
  Camera: 'Cámara',
  'Hand a plan over': 'Pasar un plan',
  'From this device to another, a wrist for instance, without any server: the plan is in the link and in the picture, whole.':
    'De este dispositivo a otro, a la muñeca por ejemplo, sin servidor alguno: el plan va entero en el enlace y en la imagen.',
  'Give||a plan': 'Dar',
  'Give: {plan}': 'Dar: {plan}',
  'This plan is too long for a picture code. Use the link.':
    'Este plan es demasiado largo para un código en imagen. Usa el enlace.',
  'Photograph it from the other device. It holds the whole plan.':
    'Fotografíalo desde el otro dispositivo. Contiene el plan entero.',
  'Photograph it from the other device. It holds the whole plan; the course is drawn with fewer points, to within {distance} m. The link holds every point.':
    'Fotografíalo desde el otro dispositivo. Contiene el plan entero; el recorrido va dibujado con menos puntos, con {distance} m de error como mucho. El enlace contiene todos los puntos.',
  Copied: 'Copiado',
  'Copy the link': 'Copiar el enlace',
  'The link, {n} characters': 'El enlace, {n} caracteres',
  'Whoever has the link has the plan and its course. It is never sent anywhere by itself.':
    'Quien tiene el enlace tiene el plan y su recorrido. Nunca se envía a ningún sitio por sí solo.',
  'without a name': 'sin nombre',
  'A plan is here: {name}, without a course.': 'Aquí hay un plan: {name}, sin recorrido.',
  'A plan is here: {name}, with a course of {n} points.':
    'Aquí hay un plan: {name}, con un recorrido de {n} puntos.',
  'Taking it replaces the plan in the form.': 'Al tomarlo se sustituye el plan del formulario.',
  'Take this plan': 'Tomar este plan',
  'Taken.': 'Tomado.',
  'See the plan': 'Ver el plan',
  'Paste a link here': 'Pega un enlace aquí',
  'This code is damaged: some of its letters have changed. Copy or photograph it again.':
    'Este código está dañado: han cambiado algunas de sus letras. Cópialo o fotografíalo otra vez.',
  'This is no plan of Soundline.': 'Esto no es un plan de Soundline.',
  'This plan is of version {version}; this page reads version {own}. Update Soundline.':
    'Este plan es de la versión {version}; esta página lee la versión {own}. Actualiza Soundline.',
  'This code has been cut off right at its beginning. Copy all of it.':
    'Este código está cortado justo al principio. Cópialo entero.',
  'This code has been cut off: {here} of its {all} characters are here. Copy all of it.':
    'Este código está cortado: hay {here} de sus {all} caracteres. Cópialo entero.',
  'Back to the plan': 'Volver al plan',
};
