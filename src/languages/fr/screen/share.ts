import type { Catalogue } from '../../text.ts';

export const share: Catalogue = {
  'The plan as a picture code': 'Le plan en code à photographier',
  'The camera is not allowed, or there is none. Photograph the code and open the picture instead.':
    'La caméra n’est pas autorisée, ou il n’y en a pas. Photographie le code et ouvre plutôt l’image.',
  'No code was found in this picture. Take it straight on, whole, with its white margin, and sharp.':
    'Aucun code trouvé dans cette image. Prends-le bien en face, en entier, avec sa marge blanche, et net.',
  'This file is no picture that the browser can open.':
    'Ce fichier n’est pas une image que le navigateur sait ouvrir.',
  'Read with the camera': 'Lire avec la caméra',
  'Camera off': 'Éteindre la caméra',
  'Open a picture': 'Ouvrir une image',
  'Open a picture of a code': 'Ouvrir l’image d’un code',
  Camera: 'Caméra',
  'Hand a plan over': 'Transmettre un plan',
  'From this device to another, a wrist for instance, without any server: the plan is in the link and in the picture, whole.':
    'De cet appareil à un autre, au poignet par exemple, sans aucun serveur : le plan est tout entier dans le lien et dans l’image.',
  'Give||a plan': 'Transmettre',
  'Give: {plan}': 'Transmettre : {plan}',
  'This plan is too long for a picture code. Use the link.':
    'Ce plan est trop long pour un code à photographier. Utilise le lien.',
  'Photograph it from the other device. It holds the whole plan.':
    'Photographie-le depuis l’autre appareil. Il contient tout le plan.',
  'Photograph it from the other device. It holds the whole plan; the course is drawn with fewer points, to within {distance} m. The link holds every point.':
    'Photographie-le depuis l’autre appareil. Il contient tout le plan ; le parcours est dessiné avec moins de points, à {distance} m près. Le lien contient chaque point.',
  Copied: 'Copié',
  'Copy the link': 'Copier le lien',
  'The link, {n} characters': 'Le lien, {n} caractères',
  'Whoever has the link has the plan and its course. It is never sent anywhere by itself.':
    'Qui a le lien a le plan et son parcours. Il n’est jamais envoyé nulle part de lui-même.',
  'without a name': 'sans nom',
  'A plan is here: {name}, without a course.': 'Un plan est ici : {name}, sans parcours.',
  'A plan is here: {name}, with a course of {n} points.':
    'Un plan est ici : {name}, avec un parcours de {n} points.',
  'Taking it replaces the plan in the form.': 'Le prendre remplace le plan du formulaire.',
  'Take this plan': 'Prendre ce plan',
  'Taken.': 'Pris.',
  'See the plan': 'Voir le plan',
  'Paste a link here': 'Colle un lien ici',
  'This code is damaged: some of its letters have changed. Copy or photograph it again.':
    'Ce code est abîmé : certains de ses caractères ont changé. Copie-le ou photographie-le de nouveau.',
  'This is no plan of Soundline.': 'Ce n’est pas un plan de Soundline.',
  'This plan is of version {version}; this page reads version {own}. Update Soundline.':
    'Ce plan est de la version {version} ; cette page lit la version {own}. Mets Soundline à jour.',
  'This code has been cut off right at its beginning. Copy all of it.':
    'Ce code a été coupé dès le début. Copie-le en entier.',
  'This code has been cut off: {here} of its {all} characters are here. Copy all of it.':
    'Ce code a été coupé : {here} de ses {all} caractères sont là. Copie-le en entier.',
  'Back to the plan': 'Retour au plan',
};
