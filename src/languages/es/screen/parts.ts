import type { Catalogue } from '../../text.ts';

export const parts: Catalogue = {
  'Plan||noun': 'Plan',
  'Practice||noun': 'Entreno',
  'Rehearse||verb': 'Ensayar',
  'Run||verb': 'Correr',
  'Past runs': 'Historial',
  Screens: 'Pantallas',
  'Calls, newest first': 'Avisos, el último primero',
  '(tone)': '(tono)',
  'Seconds ahead or behind over the distance; the grey band holds the truth 19 times in 20':
    'Segundos por delante o por detrás a lo largo de la distancia; la banda gris contiene la verdad 19 de cada 20 veces',
  ahead: 'por delante',
  behind: 'por detrás',
  'Nothing to draw yet': 'Aún nada que dibujar',
  '{n} {unit}': '{n} {unit}',
  'At {place}: {n} seconds ahead': {
    one: 'En {place}: {n} segundo por delante',
    other: 'En {place}: {n} segundos por delante',
  },
  'At {place}: {n} seconds behind': {
    one: 'En {place}: {n} segundo por detrás',
    other: 'En {place}: {n} segundos por detrás',
  },
  'Hold for {n} seconds': 'Mantén pulsado {n} segundos',
  'The screens are not in {language} yet: they are in English.':
    'Las pantallas aún no están en {language}: están en inglés.',
  'The screens in {language} could not be loaded. Open the page again with a network.':
    'No se pudieron cargar las pantallas en {language}. Abre la página de nuevo con red.',
  'There is no voice in {language} yet: calls are in English.':
    'Aún no hay voz en {language}: los avisos van en inglés.',
  'The voice in {language} could not be loaded: calls are in English.':
    'No se pudo cargar la voz en {language}: los avisos van en inglés.',
  Language: 'Idioma',
  'This screen could not be loaded. Open the page again with a network.':
    'No se pudo cargar esta pantalla. Abre la página de nuevo con red.',
  'This browser keeps no pages for later: Soundline needs a network here.':
    'Este navegador no guarda páginas: Soundline necesita red aquí.',
  'Being stored for use without a network …': 'Guardando para usar sin red …',
  'Stored for use without a network. The voice is checked at the first touch.':
    'Guardado para usarlo sin red. La voz se comprueba al primer toque.',
  'Ready offline.': 'Lista sin red.',
  'Not ready offline. Open the page again with a network.':
    'No lista sin red. Abre la página de nuevo con red.',
  'A newer version is here.': 'Hay una versión más nueva.',
  'Take it now': 'Tomarla ahora',
  'The voice is being loaded ({size} MB).': 'Cargando la voz ({size} MB).',
  'No sound: the voice could not be loaded. {why}': 'Sin sonido: no se pudo cargar la voz. {why}',
  'on plan': 'según el plan',
  'no reading': 'sin lectura',
  'No reading yet': 'Aún sin lectura',
  'On plan, give or take {sd}': 'Según el plan, más o menos {sd}',
  '{seconds} seconds ahead, give or take {sd}': {
    one: '{seconds} segundo por delante, más o menos {sd}',
    other: '{seconds} segundos por delante, más o menos {sd}',
  },
  '{seconds} seconds behind, give or take {sd}': {
    one: '{seconds} segundo por detrás, más o menos {sd}',
    other: '{seconds} segundos por detrás, más o menos {sd}',
  },
  'To the content': 'Al contenido',
};
