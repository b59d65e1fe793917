import type { Catalogue } from '../../text.ts';

export const learn: Catalogue = {
  'Play||a tone': 'Ascolta',
  'Feel||a tone': 'Senti',
  'The tones': 'I toni',
  'Most calls begin with a tone. Know the eight of them, and you know what is meant before the first word. It takes two minutes.':
    'Quasi tutti gli annunci cominciano con un tono. Se conosci gli otto, sai che cosa vogliono dire prima della prima parola. Bastano due minuti.',
  'The line shows the pitch. The blocks under it show when this device vibrates, in the same rhythm.':
    'La linea mostra l’altezza. I blocchi sotto mostrano quando questo dispositivo vibra, con lo stesso ritmo.',
  'The line shows the pitch. The blocks under it show the rhythm that a device that vibrates lets you feel; this one does not.':
    'La linea mostra l’altezza. I blocchi sotto mostrano il ritmo che un dispositivo che vibra fa sentire; questo non vibra.',
  'Tones alone in my runs': 'Solo toni nelle mie corse',
  'No words where a tone can tell: your food, what you ask for and trouble are still said.':
    'Niente parole dove basta un tono: il tuo cibo, quello che chiedi e i problemi si dicono ancora.',
  'To the run': 'Alla corsa',
  'Hear a race': 'Ascolta una gara',
  'Do you know them?': 'Li conosci?',
  'Eight tones, each with four names. Put your earphones in.':
    'Otto toni, ciascuno con quattro nomi. Metti gli auricolari.',
  'Begin the quiz': 'Comincia il quiz',
  'Tone {count} of {of}': 'Tono {count} di {of}',
  'Right: {name}.': 'Giusto: {name}.',
  'No, that was {name}.': 'No, era {name}.',
  'Next tone': 'Tono successivo',
  'How I did': 'Il mio risultato',
  '{right} of {of} right.': '{right} su {of} giusti.',
  'You know them.': 'Li conosci.',
  'Hear these again:': 'Riascolta questi:',
  'Another quiz': 'Un altro quiz',
  'Enough||of the quiz': 'Basta',
  'Countdown||tone': 'Conto alla rovescia',
  'Three seconds to go. The long note is the moment: a leg of practice begins or ends.':
    'Mancano tre secondi. La nota lunga è il momento: un tratto dell’allenamento comincia o finisce.',
  'Three short ticks a second apart, then one long higher note.':
    'Tre tocchi brevi a un secondo l’uno dall’altro, poi una nota lunga e più alta.',
  'New part||tone': 'Nuova parte',
  'A part of the race begins: the start, your steady pace, the push. In practice a leg.':
    'Comincia una parte della gara: la partenza, il tuo passo regolare, la spinta finale. In allenamento un tratto.',
  'Short, short, then long and higher.': 'Breve, breve, poi lungo e più alto.',
  'Ease||tone': 'Rallenta',
  'Too quick, or your heart rate is above its ceiling: run easier.':
    'Troppo veloce, o il tuo battito supera il limite: corri più piano.',
  'Two slow notes, both sinking.': 'Due note lente, tutte e due scendono.',
  'Quicken||tone': 'Accelera',
  'Too slow for the plan: run quicker, if you can.': 'Troppo lento per il piano: corri più forte, se puoi.',
  'Four quick notes that climb.': 'Quattro note rapide che salgono.',
  'Mark||tone': 'Segno',
  'A board or a checkpoint, now. In practice: halfway, or nearly there.':
    'Un cartello o un punto di controllo, adesso. In allenamento: metà, o quasi la fine.',
  'One knock.': 'Un solo colpo.',
  'Signal lost||tone': 'Segnale perso',
  'No position. Soundline goes on by your pace.': 'Nessuna posizione. Soundline va avanti con il tuo passo.',
  'Three notes, each lower and longer than the one before.':
    'Tre note, ciascuna più bassa e più lunga di quella prima.',
  'Signal back||tone': 'Segnale tornato',
  'The position, or the sound, is there again.': 'La posizione, o il suono, è tornata.',
  'One long note, then three quick ones, higher.': 'Una nota lunga, poi tre rapide, più alte.',
  'Finish||tone': 'Arrivo',
  'You are through, and the run is over.': 'Hai passato la linea, la corsa è finita.',
  'Long, short, short, long, long: it ends high.': 'Lungo, breve, breve, lungo, lungo: finisce in alto.',
  'Calls begin {ms} ms earlier, as measured before.': 'Gli annunci cominciano {ms} ms prima, come misurato.',
  'Too little to matter.': 'Troppo poco per contare.',
  'Checkpoints and countdowns begin {ms} ms earlier from now on. Other earphones: measure again.':
    'I punti di controllo e i conti alla rovescia cominciano {ms} ms prima da adesso. Altri auricolari: misura di nuovo.',
  'Learn the tones': 'Impara i toni',
  'No earlier': 'Senza anticipo',
  'Tones alone': 'Solo toni',
  'Without them your own music plays on, no quieter, and calls sound over it.':
    'Senza di essi la tua musica continua, non più piano, e gli annunci suonano sopra.',
};
