import type { Catalogue } from '../../text.ts';

export const ready: Catalogue = {
  Position: 'Position',
  Screen: 'Écran',
  Sound: 'Son',
  'Earphone delay': 'Délai des écouteurs',
  Buttons: 'Boutons',
  Vibration: 'Vibration',
  Steps: 'Pas',
  Battery: 'Batterie',
  Log: 'Enregistrement',
  Offline: 'Hors ligne',
  'Refused.': 'Refusé.',
  'Allow it for this page in the browser and in the system settings. Without it places are told by the plan’s clock.':
    'Autorise-la pour cette page dans le navigateur et dans les réglages du système. Sans elle, les lieux sont annoncés selon l’heure du plan.',
  'This browser has none.': 'Ce navigateur n’en a pas.',
  'Use another browser.': 'Utilise un autre navigateur.',
  'Nothing yet.': 'Rien pour l’instant.',
  'Go into the open. The first may take half a minute.':
    'Va à découvert. La première peut prendre une demi-minute.',
  'It comes, and does not say how exact.': 'Elle arrive, sans dire sa précision.',
  'To {distance} m.||exact': 'À {distance} m près.',
  'Only to {distance} m.||exact': 'À {distance} m près seulement.',
  'Stay in the open a minute. If it stays so, allow the exact position in the settings.':
    'Reste une minute à découvert. Si rien ne change, autorise la position exacte dans les réglages.',
  'This iOS lets an installed page go dark.': 'Cet iOS laisse une page installée s’éteindre.',
  'Update to 18.4, or run in a tab of the browser, or set Auto-Lock to Never for the race.':
    'Passe à la version 18.4, ou cours dans un onglet du navigateur, ou mets le verrouillage automatique sur « Jamais » pour la course.',
  'Stays on.': 'Reste allumé.',
  'Kept on by a silent video.': 'Gardé allumé par une vidéo muette.',
  'It may pause your music.': 'Elle peut mettre ta musique en pause.',
  'May go dark.': 'Peut s’éteindre.',
  'Switch low-power mode off. Else set the screen’s time-out to the longest: dark means no position.':
    'Désactive le mode économie d’énergie. Sinon règle la mise en veille de l’écran au plus long : écran noir, plus de position.',
  'The voice is not here.': 'La voix n’est pas là.',
  'Open the page again with a network.': 'Rouvre la page avec du réseau.',
  'The voice is being loaded.': 'La voix se charge.',
  'Heard.': 'Entendu.',
  'Not heard.': 'Pas entendu.',
  'Turn the volume up, switch silent mode off, connect the earphones, and play again.':
    'Monte le volume, quitte le mode silencieux, connecte les écouteurs et rejoue.',
  'Put your earphones in and play the sample.': 'Mets tes écouteurs et joue l’extrait.',
  'Not measured. It may be left out.': 'Pas mesuré. On peut s’en passer.',
  'Calls begin {ms} ms earlier, as measured before.':
    'Les annonces commencent {ms} ms plus tôt, selon la dernière mesure.',
  'About {ms} ms, your finger included.': 'Environ {ms} ms, ton doigt compris.',
  'Too little to matter.': 'Trop peu pour compter.',
  'Checkpoints and countdowns begin {ms} ms earlier from now on. Other earphones: measure again.':
    'Les points de passage et les décomptes commencent désormais {ms} ms plus tôt. Autres écouteurs : mesure à nouveau.',
  'Not used. The screen does all that they do.': 'Non utilisés. L’écran fait tout ce qu’ils font.',
  'They come through.': 'Ils répondent.',
  'Press the headset’s button once.': 'Appuie une fois sur le bouton des écouteurs.',
  'If nothing comes, the screen does all that it does.': 'Si rien ne vient, l’écran fait tout ce qu’il fait.',
  'Charge before the start, turn the brightness down, and switch low-power mode off.':
    'Charge avant le départ, baisse la luminosité et désactive le mode économie d’énergie.',
  'This browser does not say.': 'Ce navigateur ne le dit pas.',
  'Little room.': 'Peu de place.',
  'Free some storage on the phone.': 'Libère de l’espace sur le téléphone.',
  'Kept on this device until you remove it.': 'Gardé sur cet appareil jusqu’à ce que tu le retires.',
  'Kept on this device, but the browser may remove it.':
    'Gardé sur cet appareil, mais le navigateur peut le retirer.',
  'Install Soundline, or save the log after the run.':
    'Installe Soundline, ou enregistre le fichier après la course.',
  'Counted where the position fails.': 'Comptés là où la position manque.',
  'Refused. Tunnels are bridged by your pace alone.':
    'Refusé. Les tunnels sont franchis d’après ta seule allure.',
  'This device does not count them.': 'Cet appareil ne les compte pas.',
  'You will be asked.': 'On te le demandera.',
  'Beside the sound.': 'En plus du son.',
  'Not on this device: the sound alone.': 'Pas sur cet appareil : le son seul.',
  'Works without a network.': 'Marche sans réseau.',
  'Being stored.': 'Enregistrement en cours.',
  'Needs a network to open.': 'A besoin du réseau pour s’ouvrir.',
  'Do not close the page before the race.': 'Ne ferme pas la page avant la course.',
  'position||in a list': 'position',
  'screen||in a list': 'écran',
  'sound||in a list': 'son',
  'Not ready: {names}.': 'Pas prêt : {names}.',
  'Still open: {names}.': 'Encore à voir : {names}.',
  'Ready.': 'Prêt.',
  fine: 'bien',
  'could be better': 'peut mieux faire',
  missing: 'manque',
  'open||not known yet': 'à voir',
  'Install Soundline': 'Installer Soundline',
  'Install first: Share, then Add to Home Screen, and set up your plan there.':
    'Installe d’abord : Partager, puis « Sur l’écran d’accueil », et prépare ton plan là.',
  'A tab and the installed app do not share what they store.':
    'Un onglet et l’appli installée ne partagent pas ce qu’ils gardent.',
  'Installed it opens without a network, and the browser keeps its logs.':
    'Installée, elle s’ouvre sans réseau, et le navigateur garde ses enregistrements.',
  'Ready to race?': 'Prêt à courir ?',
  'Tries each thing that a race needs, on this device, as it will be used. It takes a minute.':
    'Essaie chaque chose dont une course a besoin, sur cet appareil, comme elle servira. Cela prend une minute.',
  'You will be asked for your position. It stays on this device. Stand outside, with your earphones in.':
    'On te demandera ta position. Elle reste sur cet appareil. Mets-toi dehors, écouteurs aux oreilles.',
  'Begin the check': 'Commencer la vérification',
  Ready: 'Prêt',
  'Not ready yet': 'Pas encore prêt',
  Checks: 'Vérifications',
  'No page can see whether low-power mode is on, or how bright the screen is: switch the one off and turn the other down. Do not press the power button during the run.':
    'Aucune page ne peut voir si le mode économie d’énergie est actif, ni la luminosité de l’écran : désactive l’un et baisse l’autre. N’appuie pas sur le bouton marche/arrêt pendant la course.',
  'To the start': 'Au départ',
  'To the start all the same': 'Au départ quand même',
  'Learn the tones': 'Apprendre les sons',
  'Play the sample': 'Jouer l’extrait',
  'Did you hear it?': 'Tu l’as entendu ?',
  Yes: 'Oui',
  No: 'Non',
  'Tap with each beat': 'Touche à chaque battement',
  'Measure||press': 'Mesurer',
  'No earlier': 'Sans avance',
};
