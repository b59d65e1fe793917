import type { Catalogue } from '../../text.ts';

export const runs: Catalogue = {
  'not looked at yet': 'pas encore regardée',
  'not done to the end': 'pas menée au bout',
  'ended at {distance} km': 'arrêtée à {distance} km',
  'cannot be read by this version': 'illisible par cette version',
  '{name}, practice': '{name}, séance',
  'Delete for good?': 'Supprimer pour de bon ?',
  'Delete for good': 'Supprimer pour de bon',
  Keep: 'Garder',
  'Delete {run}': 'Supprimer {run}',
  Delete: 'Supprimer',
  'Over the runs': 'Au fil des sorties',
  'Threshold held, openings, evenness': 'Seuil tenu, débuts, régularité',
  'when||date of a run': 'quand',
  'threshold /km': 'seuil /km',
  'give or take, s': '± s',
  'opening too quick by, s/km': 'début trop rapide de, s/km',
  'second half, %': 'deuxième moitié, %',
  'wander, %||of the pace': 'fluctuation, %',
  'foot pod': 'capteur de foulée',
  'Let these runs move the realistic goal, the what-if, and what is believed of this phone':
    'Laisser ces sorties influer sur l’objectif réaliste, le « Et si ? » et ce qui est supposé de ce téléphone',
  'A trend of a few runs is weather, not climate. Raise training slowly, one thing at a time, and rest when something hurts.':
    'Une tendance sur quelques sorties, c’est la météo, pas le climat. Augmente l’entraînement lentement, une chose à la fois, et repose-toi quand quelque chose fait mal.',
  'Every run and session that this device has kept, and what each of them says.':
    'Chaque sortie et séance que cet appareil a gardée, et ce que chacune te dit.',
  'Putting the run together: {percent} %': 'Assemblage de la sortie : {percent} %',
  'Looking for runs.': 'Recherche des sorties.',
  'No runs yet. Run one, practise, or open a file: a GPX track from anywhere will do.':
    'Pas encore de sortie. Cours-en une, fais une séance ou ouvre un fichier : une trace GPX d’où que ce soit suffit.',
  'Runs, the latest first': 'Sorties, la plus récente d’abord',
  Files: 'Fichiers',
  'Open a run: log or GPX': 'Ouvrir une sortie : enregistrement ou GPX',
  'Save everything as one file': 'Tout enregistrer en un fichier',
  'Restore everything': 'Tout restaurer',
  'Runs stay on this device. Delete means deleted: there is no copy anywhere else but yours.':
    'Les sorties restent sur cet appareil. Supprimé veut dire supprimé : il n’y a nulle part d’autre copie que la tienne.',
  'a session': 'une séance',
  'Threshold pace per km (quicker is higher)': 'Allure au seuil par km (plus vite, plus haut)',
  'weeks, up to the last': 'semaines, jusqu’à la dernière',
  'Opening: above 0 it was quicker than planned. Second half: above 0 it was slower than the first, hills taken out. Wander: how much the pace swings from one kilometre to the next.':
    'Début : au-dessus de 0, plus vite que prévu. Seconde moitié : au-dessus de 0, plus lente que la première, côtes déduites. Fluctuation : combien l’allure change d’un kilomètre à l’autre.',
  'a GPX track or a run saved by Soundline': 'une trace GPX ou une sortie enregistrée par Soundline',
};
