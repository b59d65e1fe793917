import type { Catalogue } from '../../text.ts';

export const share: Catalogue = {
  'The plan as a picture code': 'Der Plan als Bildcode',
  'The camera is not allowed, or there is none. Photograph the code and open the picture instead.':
    'Die Kamera ist nicht erlaubt, oder es gibt keine. Fotografiere den Code und öffne stattdessen das Bild.',
  'No code was found in this picture. Take it straight on, whole, with its white margin, and sharp.':
    'In diesem Bild wurde kein Code gefunden. Nimm ihn gerade von vorn auf, ganz, mit seinem weißen Rand, und scharf.',
  'This file is no picture that the browser can open.':
    'Diese Datei ist kein Bild, das der Browser öffnen kann.',
  'Read with the camera': 'Mit der Kamera lesen',
  'Camera off': 'Kamera aus',
  'Open a picture': 'Bild öffnen',
  'Open a picture of a code': 'Bild eines Codes öffnen',
  Camera: 'Kamera',
  'Hand a plan over': 'Plan weitergeben',
  'From this device to another, a wrist for instance, without any server: the plan is in the link and in the picture, whole.':
    'Von diesem Gerät auf ein anderes, zum Beispiel ans Handgelenk, ganz ohne Server: Der Plan steckt vollständig im Link und im Bild.',
  'Give||a plan': 'Weitergeben',
  'Give: {plan}': 'Weitergeben: {plan}',
  'This plan is too long for a picture code. Use the link.':
    'Dieser Plan ist zu lang für einen Bildcode. Nimm den Link.',
  'Photograph it from the other device. It holds the whole plan.':
    'Fotografiere ihn mit dem anderen Gerät. Er enthält den ganzen Plan.',
  'Photograph it from the other device. It holds the whole plan; the course is drawn with fewer points, to within {distance} m. The link holds every point.':
    'Fotografiere ihn mit dem anderen Gerät. Er enthält den ganzen Plan; die Strecke ist mit weniger Punkten gezeichnet, auf {distance} m genau. Der Link enthält jeden Punkt.',
  Copied: 'Kopiert',
  'Copy the link': 'Link kopieren',
  'The link, {n} characters': 'Der Link, {n} Zeichen',
  'Whoever has the link has the plan and its course. It is never sent anywhere by itself.':
    'Wer den Link hat, hat den Plan und seine Strecke. Von selbst wird er nirgendwohin geschickt.',
  'without a name': 'ohne Namen',
  'A plan is here: {name}, without a course.': 'Hier ist ein Plan: {name}, ohne Strecke.',
  'A plan is here: {name}, with a course of {n} points.':
    'Hier ist ein Plan: {name}, mit einer Strecke aus {n} Punkten.',
  'Taking it replaces the plan in the form.': 'Übernimmst du ihn, ersetzt er den Plan im Formular.',
  'Take this plan': 'Diesen Plan übernehmen',
  'Taken.': 'Übernommen.',
  'See the plan': 'Plan ansehen',
  'Paste a link here': 'Link hier einfügen',
  'This code is damaged: some of its letters have changed. Copy or photograph it again.':
    'Dieser Code ist beschädigt: Einige seiner Zeichen haben sich verändert. Kopiere oder fotografiere ihn noch einmal.',
  'This is no plan of Soundline.': 'Das ist kein Plan von Soundline.',
  'This plan is of version {version}; this page reads version {own}. Update Soundline.':
    'Dieser Plan hat Version {version}; diese Seite liest Version {own}. Aktualisiere Soundline.',
  'This code has been cut off right at its beginning. Copy all of it.':
    'Dieser Code ist gleich am Anfang abgeschnitten. Kopiere ihn ganz.',
  'This code has been cut off: {here} of its {all} characters are here. Copy all of it.':
    'Dieser Code ist abgeschnitten: {here} von {all} Zeichen sind da. Kopiere ihn ganz.',
  'Back to the plan': 'Zurück zum Plan',
};
