import type { Catalogue } from '../../text.ts';

export const share: Catalogue = {
  'The plan as a picture code': 'Il piano come codice in immagine',
  'The camera is not allowed, or there is none. Photograph the code and open the picture instead.':
    'La fotocamera non è permessa, o non c’è. Fotografa il codice e apri l’immagine.',
  'No code was found in this picture. Take it straight on, whole, with its white margin, and sharp.':
    'In questa immagine non si è trovato nessun codice. Prendila di fronte, intera, con il margine bianco, e nitida.',
  'This file is no picture that the browser can open.':
    'Questo file non è un’immagine che il browser possa aprire.',
  'Read with the camera': 'Leggi con la fotocamera',
  'Camera off': 'Fotocamera spenta',
  'Open a picture': 'Apri un’immagine',
  'Open a picture of a code': 'Apri l’immagine di un codice',
  Camera: 'Fotocamera',
  'Hand a plan over': 'Passare un piano',
  'From this device to another, a wrist for instance, without any server: the plan is in the link and in the picture, whole.':
    'Da questo dispositivo a un altro, al polso per esempio, senza alcun server: il piano è tutto nel link e nell’immagine.',
  'Give||a plan': 'Dai',
  'Give: {plan}': 'Dai: {plan}',
  'This plan is too long for a picture code. Use the link.':
    'Questo piano è troppo lungo per un codice in immagine. Usa il link.',
  'Photograph it from the other device. It holds the whole plan.':
    'Fotografalo dall’altro dispositivo. Contiene tutto il piano.',
  'Photograph it from the other device. It holds the whole plan; the course is drawn with fewer points, to within {distance} m. The link holds every point.':
    'Fotografalo dall’altro dispositivo. Contiene tutto il piano; il percorso è disegnato con meno punti, entro {distance} m. Il link contiene ogni punto.',
  Copied: 'Copiato',
  'Copy the link': 'Copia il link',
  'The link, {n} characters': 'Il link, {n} caratteri',
  'Whoever has the link has the plan and its course. It is never sent anywhere by itself.':
    'Chi ha il link ha il piano e il suo percorso. Non viene mai mandato da solo da nessuna parte.',
  'without a name': 'senza nome',
  'A plan is here: {name}, without a course.': 'Qui c’è un piano: {name}, senza percorso.',
  'A plan is here: {name}, with a course of {n} points.':
    'Qui c’è un piano: {name}, con un percorso di {n} punti.',
  'Taking it replaces the plan in the form.': 'Prenderlo sostituisce il piano nel modulo.',
  'Take this plan': 'Prendi questo piano',
  'Taken.': 'Preso.',
  'See the plan': 'Vedi il piano',
  'Paste a link here': 'Incolla qui un link',
  'This code is damaged: some of its letters have changed. Copy or photograph it again.':
    'Questo codice è danneggiato: alcune lettere sono cambiate. Copialo o fotografalo di nuovo.',
  'This is no plan of Soundline.': 'Questo non è un piano di Soundline.',
  'This plan is of version {version}; this page reads version {own}. Update Soundline.':
    'Questo piano è della versione {version}; questa pagina legge la versione {own}. Aggiorna Soundline.',
  'This code has been cut off right at its beginning. Copy all of it.':
    'Questo codice è tagliato proprio all’inizio. Copialo tutto.',
  'This code has been cut off: {here} of its {all} characters are here. Copy all of it.':
    'Questo codice è tagliato: ci sono {here} dei suoi {all} caratteri. Copialo tutto.',
  'Back to the plan': 'Torna al piano',
};
