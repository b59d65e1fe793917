import type { Catalogue } from '../../text.ts';

export const run: Catalogue = {
  'Loud voice': 'Voix forte',
  'For a crowd: harsher, and as loud as it can be.':
    'Dans la foule\u202f: plus dure, et aussi forte que possible.',
  'A run was cut off': 'Une course a été interrompue',
  'Its last sign was {time} ago. Its log is safe on this device, and its clock has gone on.':
    'Son dernier signe date d’il y a {time}. Son enregistrement est en sûreté sur cet appareil, et son chrono a continué.',
  'Go on with it': 'La continuer',
  'It is over': 'Elle est finie',
  'In a pocket or on an arm': 'Dans une poche ou au bras',
  'A guard swallows touches and rain. One finger that rests opens it.':
    'Une garde absorbe les contacts et la pluie. Un doigt qui reste posé l’ouvre.',
  "Use the headset's buttons": 'Utiliser les boutons des écouteurs',
  'One press marks a board, two ask, three hush; with a pacer in the plan, three say level with them. Your own music stops for it.':
    'Un appui marque un panneau, deux demandent, trois font taire ; avec un meneur dans le plan, trois disent que tu es à sa hauteur. Ta propre musique s’arrête pour cela.',
  'Without them your own music plays on, no quieter, and calls sound over it.':
    'Sans eux, ta musique continue, pas moins forte, et les annonces passent par-dessus.',
  'Guarded: hold to open': 'Protégé : maintiens pour ouvrir',
  'No position yet': 'Pas encore de position',
  'Stand in the open. The first may take half a minute.':
    'Mets-toi à découvert. La première peut prendre une demi-minute.',
  'Position comes': 'La position arrive',
  'Position to {distance} m, as the receiver says': 'Position à {distance} m près, selon le récepteur',
  'Position only to {distance} m': 'Position à {distance} m près seulement',
  'It settles within a minute in the open.': 'Elle se stabilise en une minute à découvert.',
  'Last position {s} s ago': 'Dernière position il y a {s} s',
  'No position for {s} s': 'Pas de position depuis {s} s',
  'Your clock and plan go on.': 'Ton chrono et ton plan continuent.',
  'Position refused': 'Position refusée',
  'Allow it for this page in the browser settings, then switch on again. Without it only the clock runs.':
    'Autorise-la pour cette page dans les réglages du navigateur, puis remets en marche. Sans elle, seul le chrono tourne.',
  'This browser has no position': 'Ce navigateur n’a pas de position',
  'Only the clock runs.': 'Seul le chrono tourne.',
  'Screen stays on': 'L’écran reste allumé',
  'Screen kept on by a silent video': 'Écran gardé allumé par une vidéo muette',
  'Screen may go dark': 'L’écran peut s’éteindre',
  'Set its time-out in the phone to the longest. Dark means no position.':
    'Règle sa mise en veille au plus long dans le téléphone. Écran noir, plus de position.',
  'Sound on': 'Son actif',
  'Voice is being loaded': 'La voix se charge',
  'Sound asleep': 'Son en sommeil',
  'Touch the screen once.': 'Touche l’écran une fois.',
  'No sound': 'Pas de son',
  'The voice could not be loaded. Open the page again.': 'La voix n’a pas pu être chargée. Rouvre la page.',
  Instruments: 'Instruments',
  'Level with the pacer': 'À hauteur du meneur',
  'Quiet for 10 min': 'Silence pendant 10 min',
  'Speak again ({min} min)': 'Parler à nouveau ({min} min)',
  '{name}: {distance} {unit} in {time}.': '{name} : {distance} {unit} en {time}.',
  'Change the plan': 'Changer le plan',
  'Check this phone': 'Vérifier ce téléphone',
  'The browser will ask whether this page may know where you are. Soundline needs it to tell how far along the course you are. It stays on this device.':
    'Le navigateur va demander si cette page peut savoir où tu es. Soundline en a besoin pour dire où tu en es du parcours. Cela reste sur cet appareil.',
  'A browser gives no position to a page that is locked or out of sight. So the screen is kept on, black, for the whole run: turn its brightness down, and do not press the power button.':
    'Un navigateur ne donne pas de position à une page verrouillée ou cachée. L’écran reste donc allumé, en noir, pendant toute la course : baisse sa luminosité, et n’appuie pas sur le bouton marche/arrêt.',
  'Put your earphones in now. You will hear each call over your own music.':
    'Mets tes écouteurs maintenant. Tu entendras chaque annonce par-dessus ta propre musique.',
  Safety: 'Sécurité',
  'Traffic, marshals and your body come first. Some races and roads do not allow earphones: their rules and the law decide. Chest pain or faintness: stop and get help.':
    'La circulation, les signaleurs et ton corps passent d’abord. Certaines courses et certaines routes interdisent les écouteurs : leur règlement et la loi décident. Douleur dans la poitrine ou impression de s’évanouir : arrête-toi et demande de l’aide.',
  'This run is in another window of this device. Go on there, or close that window and switch on here.':
    'Cette course est ouverte dans une autre fenêtre de cet appareil. Continue là-bas, ou ferme cette fenêtre et mets en marche ici.',
  'Practise the day at home': 'Répéter la journée à la maison',
  'Practised at home a simulated runner runs your plan, in real time, on these very screens; nothing else is simulated.':
    'À la maison, un coureur simulé court ton plan, en temps réel, sur ces mêmes écrans ; rien d’autre n’est simulé.',
  'A simulated runner waits for your start.': 'Un coureur simulé attend ton départ.',
  Gun: 'Coup de pistolet',
  'Gun heard': 'Coup de pistolet entendu',
  'press when it fires': 'appuie quand il retentit',
  'press on the line': 'appuie sur la ligne',
  'Or leave your hands alone and run: the start is found when you begin to run.':
    'Ou garde les mains libres et cours : le départ est trouvé quand tu te mets à courir.',
  'Try the sound': 'Essayer le son',
  'No position: by the clock': 'Pas de position : au chrono',
  'Position ±{distance} m': 'Position ±{distance} m',
  'Poor position ±{distance} m': 'Position faible ±{distance} m',
  'No position': 'Pas de position',
  'screen may go dark': 'l’écran peut s’éteindre',
  'no sound: touch': 'pas de son : touche',
  'not recorded': 'pas enregistré',
  Running: 'En course',
  'Press at a board. Hold to ask where you stand.':
    'Appuie à un panneau. Maintiens pour demander où tu en es.',
  '{figure} s ahead': '{figure} s d’avance',
  '{figure} s behind': '{figure} s de retard',
  Finished: 'Arrivé',
  Stopped: 'Arrêté',
  'by the gun': 'au temps officiel',
  'against plan': 'face au plan',
  'Save the log': 'Exporter l’enregistrement',
  'This was a practice at home: its log goes when you are done.':
    'C’était une répétition à la maison : son enregistrement disparaît quand tu as fini.',
  'The log holds every position and press of this run. It stays on this device, under Past runs, until you remove it; save it to have it elsewhere as well.':
    'L’enregistrement contient chaque position et chaque appui de cette course. Il reste sur cet appareil, dans Sorties passées, jusqu’à ce que tu le retires ; exporte-le pour l’avoir aussi ailleurs.',
  'What was called': 'Ce qui a été annoncé',
  '{n} of them could not be sounded.': {
    one: 'L’une d’elles n’a pas pu être émise.',
    other: '{n} d’entre elles n’ont pas pu être émises.',
  },
  'Hold again: end the run': 'Maintiens encore : finir la course',
  'Tones alone': 'Sons seuls',
  Little: 'Peu',
  'As usual': 'Comme d’habitude',
  Everything: 'Tout',
  'Your checkpoints, your own food, and what asks you to act.':
    'Tes points de passage, ton propre ravitaillement et ce qui te demande d’agir.',
  'Also boards, stations and the signal, where there is time for them.':
    'Aussi les panneaux, les ravitaillements et le signal, quand il y a le temps.',
  'Also every board in a short race, and when you have time in hand near the end.':
    'Aussi chaque panneau dans une course courte, et quand tu as du temps en réserve près de l’arrivée.',
  'How much is said': 'Quantité d’annonces',
  'No reading': 'Pas de mesure',
  'On plan': 'Dans les temps',
  '{thing} in {distance} {unit}': '{thing} dans {distance} {unit}',
  'push||near the finish': 'accélération',
  'On the way a press anywhere marks a board, and a hold asks where you stand.':
    'En course, un appui n’importe où marque un panneau, et un appui long demande où tu en es.',
  'Look at this run': 'Voir cette course',
};
