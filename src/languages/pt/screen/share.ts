import type { Catalogue } from '../../text.ts';

export const share: Catalogue = {
  'The plan as a picture code': 'O plano como código em imagem',
  'The camera is not allowed, or there is none. Photograph the code and open the picture instead.':
    'A câmera não é permitida, ou não há. Fotografe o código e abra a imagem.',
  'No code was found in this picture. Take it straight on, whole, with its white margin, and sharp.':
    'Nenhum código foi achado nesta imagem. Tire-a de frente, inteira, com a margem branca, e nítida.',
  'This file is no picture that the browser can open.':
    'Este arquivo não é uma imagem que o navegador possa abrir.',
  'Read with the camera': 'Ler com a câmera',
  'Camera off': 'Desligar a câmera',
  'Open a picture': 'Abrir uma imagem',
  'Open a picture of a code': 'Abrir a imagem de um código',
  Camera: 'Câmera',
  'Hand a plan over': 'Passar um plano',
  'From this device to another, a wrist for instance, without any server: the plan is in the link and in the picture, whole.':
    'Deste aparelho para outro, no pulso por exemplo, sem servidor nenhum: o plano está inteiro no link e na imagem.',
  'Give||a plan': 'Dar',
  'Give: {plan}': 'Dar: {plan}',
  'This plan is too long for a picture code. Use the link.':
    'Este plano é longo demais para um código em imagem. Use o link.',
  'Photograph it from the other device. It holds the whole plan.':
    'Fotografe do outro aparelho. Contém o plano inteiro.',
  'Photograph it from the other device. It holds the whole plan; the course is drawn with fewer points, to within {distance} m. The link holds every point.':
    'Fotografe do outro aparelho. Contém o plano inteiro; o percurso é desenhado com menos pontos, com até {distance} m de erro. O link contém todos os pontos.',
  Copied: 'Copiado',
  'Copy the link': 'Copiar o link',
  'The link, {n} characters': 'O link, {n} caracteres',
  'Whoever has the link has the plan and its course. It is never sent anywhere by itself.':
    'Quem tem o link tem o plano e o percurso. Ele nunca é enviado a lugar nenhum por si só.',
  'without a name': 'sem nome',
  'A plan is here: {name}, without a course.': 'Há um plano aqui: {name}, sem percurso.',
  'A plan is here: {name}, with a course of {n} points.':
    'Há um plano aqui: {name}, com um percurso de {n} pontos.',
  'Taking it replaces the plan in the form.': 'Usá-lo substitui o plano do formulário.',
  'Take this plan': 'Usar este plano',
  'Taken.': 'Em uso.',
  'See the plan': 'Ver o plano',
  'Paste a link here': 'Cole um link aqui',
  'This code is damaged: some of its letters have changed. Copy or photograph it again.':
    'Este código está danificado: algumas letras mudaram. Copie ou fotografe de novo.',
  'This is no plan of Soundline.': 'Isto não é um plano do Soundline.',
  'This plan is of version {version}; this page reads version {own}. Update Soundline.':
    'Este plano é da versão {version}; esta página lê a versão {own}. Atualize o Soundline.',
  'This code has been cut off right at its beginning. Copy all of it.':
    'Este código está cortado logo no começo. Copie tudo.',
  'This code has been cut off: {here} of its {all} characters are here. Copy all of it.':
    'Este código está cortado: há {here} dos seus {all} caracteres. Copie tudo.',
  'Back to the plan': 'Voltar ao plano',
};
