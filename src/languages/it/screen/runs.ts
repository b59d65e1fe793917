import type { Catalogue } from '../../text.ts';

export const runs: Catalogue = {
  'not looked at yet': 'non ancora vista',
  'not done to the end': 'non finita',
  'ended at {distance} km': 'finita a {distance} km',
  'cannot be read by this version': 'questa versione non la può leggere',
  '{name}, practice': '{name}, allenamento',
  'Delete for good?': 'Eliminare per sempre?',
  'Delete for good': 'Elimina per sempre',
  Keep: 'Tieni',
  'Delete {run}': 'Elimina {run}',
  Delete: 'Elimina',
  'Over the runs': 'Lungo le corse',
  'Threshold held, openings, evenness': 'Soglia tenuta, aperture, regolarità',
  'when||date of a run': 'quando',
  'threshold /km': 'soglia /km',
  'give or take, s': 'più o meno, s',
  'opening too quick by, s/km': 'apertura troppo veloce di, s/km',
  'second half, %': 'seconda metà, %',
  'wander, %||of the pace': 'oscillazione, %',
  'foot pod': 'sensore al piede',
  'Let these runs move the realistic goal, the what-if, and what is believed of this phone':
    'Queste corse muovano l’obiettivo realistico, l’«E se» e ciò che si crede di questo telefono',
  'A trend of a few runs is weather, not climate. Raise training slowly, one thing at a time, and rest when something hurts.':
    'La tendenza di poche corse è il tempo, non il clima. Aumenta l’allenamento piano, una cosa per volta, e riposa quando qualcosa fa male.',
  'Every run and session that this device has kept, and what each of them says.':
    'Ogni corsa e seduta che questo dispositivo ha conservato, e che cosa dice ciascuna.',
  'Putting the run together: {percent} %': 'Si ricompone la corsa: {percent} %',
  'Looking for runs.': 'Si cercano corse.',
  'No runs yet. Run one, practise, or open a file: a GPX track from anywhere will do.':
    'Ancora nessuna corsa. Corri, allenati o apri un file: va bene una traccia GPX qualsiasi.',
  'Runs, the latest first': 'Corse, la più recente prima',
  Files: 'File',
  'Open a run: log or GPX': 'Apri una corsa: registro o GPX',
  'Save everything as one file': 'Salva tutto in un file',
  'Restore everything': 'Ripristina tutto',
  'Runs stay on this device. Delete means deleted: there is no copy anywhere else but yours.':
    'Le corse restano su questo dispositivo. Eliminato vuol dire eliminato: non c’è copia da nessuna parte tranne la tua.',
  'a session': 'una seduta',
  'Threshold pace per km (quicker is higher)': 'Passo di soglia al km (più veloce è più in alto)',
  'weeks, up to the last': 'settimane, fino all’ultima',
  'Opening: above 0 it was quicker than planned. Second half: above 0 it was slower than the first, hills taken out. Wander: how much the pace swings from one kilometre to the next.':
    'Apertura: sopra 0 è stata più veloce del previsto. Seconda metà: sopra 0 è stata più lenta della prima, tolte le salite. Oscillazione: quanto cambia il passo da un chilometro all’altro.',
  'a GPX track or a run saved by Soundline': 'una traccia GPX o una corsa salvata da Soundline',
};
