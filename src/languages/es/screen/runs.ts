import type { Catalogue } from '../../text.ts';

export const runs: Catalogue = {
  'not looked at yet': 'aún sin mirar',
  'not done to the end': 'sin acabar',
  'ended at {distance} km': 'acabada en {distance} km',
  'cannot be read by this version': 'esta versión no puede leerla',
  '{name}, practice': '{name}, entreno',
  'Delete for good?': '¿Borrar para siempre?',
  'Delete for good': 'Borrar para siempre',
  Keep: 'Conservar',
  'Delete {run}': 'Borrar {run}',
  Delete: 'Borrar',
  'Over the runs': 'A lo largo de las carreras',
  'Threshold held, openings, evenness': 'Umbral mantenido, aperturas, regularidad',
  'when||date of a run': 'cuándo',
  'threshold /km': 'umbral /km',
  'give or take, s': 'más o menos, s',
  'opening too quick by, s/km': 'apertura demasiado rápida en, s/km',
  'second half, %': 'segunda mitad, %',
  'wander, %||of the pace': 'vaivén, %',
  'foot pod': 'sensor de zancada',
  'Let these runs move the realistic goal, the what-if, and what is believed of this phone':
    'Que estas carreras muevan el objetivo realista, el «Y si» y lo que se cree de este teléfono',
  'A trend of a few runs is weather, not climate. Raise training slowly, one thing at a time, and rest when something hurts.':
    'Una tendencia de pocas carreras es tiempo, no clima. Sube el entreno despacio, una cosa cada vez, y descansa cuando algo duela.',
  'Every run and session that this device has kept, and what each of them says.':
    'Cada carrera y sesión que este dispositivo ha guardado, y lo que dice cada una.',
  'Putting the run together: {percent} %': 'Armando la carrera: {percent} %',
  'Looking for runs.': 'Buscando carreras.',
  'No runs yet. Run one, practise, or open a file: a GPX track from anywhere will do.':
    'Aún no hay carreras. Corre una, practica o abre un archivo: vale una traza GPX de donde sea.',
  'Runs, the latest first': 'Carreras, la última primero',
  Files: 'Archivos',
  'Open a run: log or GPX': 'Abrir una carrera: registro o GPX',
  'Save everything as one file': 'Guardar todo en un archivo',
  'Restore everything': 'Restaurar todo',
  'Runs stay on this device. Delete means deleted: there is no copy anywhere else but yours.':
    'Las carreras se quedan en este dispositivo. Borrar es borrar: no hay copia en ningún sitio más que la tuya.',
  'a session': 'una sesión',
  'Threshold pace per km (quicker is higher)': 'Ritmo de umbral por km (más rápido, más arriba)',
  'weeks, up to the last': 'semanas, hasta la última',
  'Opening: above 0 it was quicker than planned. Second half: above 0 it was slower than the first, hills taken out. Wander: how much the pace swings from one kilometre to the next.':
    'Apertura: por encima de 0 fue más rápida de lo planeado. Segunda mitad: por encima de 0 fue más lenta que la primera, descontadas las cuestas. Vaivén: cuánto cambia el ritmo de un kilómetro a otro.',
  'a GPX track or a run saved by Soundline': 'una traza GPX o una carrera guardada por Soundline',
};
