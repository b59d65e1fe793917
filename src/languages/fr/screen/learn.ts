import type { Catalogue } from '../../text.ts';

export const learn: Catalogue = {
  'Play||a tone': 'Écouter',
  'Feel||a tone': 'Sentir',
  'The tones': 'Les sons',
  'Most calls begin with a tone. Know the eight of them, and you know what is meant before the first word. It takes two minutes.':
    'La plupart des annonces commencent par un son. Si tu connais les huit, tu sais ce qu’on veut dire avant le premier mot. Il faut deux minutes.',
  'The line shows the pitch. The blocks under it show when this device vibrates, in the same rhythm.':
    'La ligne montre la hauteur. Les blocs en dessous montrent quand cet appareil vibre, au même rythme.',
  'The line shows the pitch. The blocks under it show the rhythm that a device that vibrates lets you feel; this one does not.':
    'La ligne montre la hauteur. Les blocs en dessous montrent le rythme qu’un appareil qui vibre fait sentir ; celui-ci ne vibre pas.',
  'Tones alone in my runs': 'Seulement des sons dans mes sorties',
  'No words where a tone can tell: your food, what you ask for and trouble are still said.':
    'Pas de mots là où un son suffit : ton ravitaillement, tes questions et les ennuis sont toujours dits.',
  'To the run': 'Vers la course',
  'Hear a race': 'Écouter une course',
  'Do you know them?': 'Les connais-tu ?',
  'Eight tones, each with four names. Put your earphones in.':
    'Huit sons, quatre noms pour chacun. Mets tes écouteurs.',
  'Begin the quiz': 'Commencer le quiz',
  'Tone {count} of {of}': 'Son {count} sur {of}',
  'Hear it again': 'Réécouter',
  'Right: {name}.': 'Juste : {name}.',
  'No, that was {name}.': 'Non, c’était {name}.',
  'Next tone': 'Son suivant',
  'How I did': 'Mon résultat',
  '{right} of {of} right.': '{right} justes sur {of}.',
  'You know them.': 'Tu les connais.',
  'Hear these again:': 'Réécoute ceux-ci :',
  'Another quiz': 'Encore un quiz',
  'Enough||of the quiz': 'Assez',
  'Countdown||tone': 'Compte à rebours',
  'Three seconds to go. The long note is the moment: a leg of practice begins or ends.':
    'Encore trois secondes. La note longue est l’instant : un bloc de la séance commence ou finit.',
  'Three short ticks a second apart, then one long higher note.':
    'Trois tics brefs à une seconde d’intervalle, puis une note longue, plus haute.',
  'New part||tone': 'Nouvelle partie',
  'A part of the race begins: the start, your steady pace, the push. In practice a leg.':
    'Une partie de la course commence : le départ, ton allure régulière, l’accélération. En séance, un bloc.',
  'Short, short, then long and higher.': 'Bref, bref, puis long et plus haut.',
  'Ease||tone': 'Ralentis',
  'Too quick, or your heart rate is above its ceiling: run easier.':
    'Trop vite, ou ton cœur est au-dessus de son plafond : cours plus doucement.',
  'Two slow notes, both sinking.': 'Deux notes lentes, qui descendent toutes deux.',
  'Quicken||tone': 'Accélère',
  'Too slow for the plan: run quicker, if you can.': 'Trop lent pour le plan : cours plus vite, si tu peux.',
  'Four quick notes that climb.': 'Quatre notes rapides qui montent.',
  'Mark||tone': 'Repère',
  'A board or a checkpoint, now. In practice: halfway, or nearly there.':
    'Un panneau ou un point de passage, maintenant. À l’entraînement : la moitié, ou presque fini.',
  'One knock.': 'Un seul coup.',
  'Signal lost||tone': 'Signal perdu',
  'No position. Soundline goes on by your pace.': 'Plus de position. Soundline continue d’après ton allure.',
  'Three notes, each lower and longer than the one before.':
    'Trois notes, chacune plus grave et plus longue que la précédente.',
  'Signal back||tone': 'Signal revenu',
  'The position, or the sound, is there again.': 'La position, ou le son, est revenue.',
  'One long note, then three quick ones, higher.': 'Une note longue, puis trois rapides, plus hautes.',
  'Finish||tone': 'Arrivée',
  'You are through, and the run is over.': 'Tu as passé la ligne, la course est finie.',
  'Long, short, short, long, long: it ends high.': 'Long, bref, bref, long, long : il finit haut.',
};
