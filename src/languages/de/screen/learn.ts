import type { Catalogue } from '../../text.ts';

export const learn: Catalogue = {
  'Play||a tone': 'Abspielen',
  'Feel||a tone': 'Fühlen',
  'The tones': 'Die Töne',
  'Most calls begin with a tone. Know the eight of them, and you know what is meant before the first word. It takes two minutes.':
    'Die meisten Ansagen beginnen mit einem Ton. Kennst du die acht, weißt du schon vor dem ersten Wort, was gemeint ist. Es dauert zwei Minuten.',
  'The line shows the pitch. The blocks under it show when this device vibrates, in the same rhythm.':
    'Die Linie zeigt die Tonhöhe. Die Blöcke darunter zeigen, wann dieses Gerät vibriert, im selben Rhythmus.',
  'The line shows the pitch. The blocks under it show the rhythm that a device that vibrates lets you feel; this one does not.':
    'Die Linie zeigt die Tonhöhe. Die Blöcke darunter zeigen den Rhythmus, den ein Gerät mit Vibration fühlen lässt; dieses kann es nicht.',
  'Tones alone in my runs': 'Nur Töne in meinen Läufen',
  'No words where a tone can tell: your food, what you ask for and trouble are still said.':
    'Keine Worte, wo ein Ton genügt: Deine Verpflegung, deine Fragen und Störungen werden weiter angesagt.',
  'To the run': 'Zum Lauf',
  'Hear a race': 'Ein Rennen hören',
  'Do you know them?': 'Kennst du sie?',
  'Eight tones, each with four names. Put your earphones in.':
    'Acht Töne, zu jedem vier Namen. Setz deine Kopfhörer auf.',
  'Begin the quiz': 'Quiz beginnen',
  'Tone {count} of {of}': 'Ton {count} von {of}',
  'Hear it again': 'Noch einmal hören',
  'Right: {name}.': 'Richtig: {name}.',
  'No, that was {name}.': 'Nein, das war {name}.',
  'Next tone': 'Nächster Ton',
  'How I did': 'Mein Ergebnis',
  '{right} of {of} right.': '{right} von {of} richtig.',
  'You know them.': 'Du kennst sie.',
  'Hear these again:': 'Hör dir diese noch einmal an:',
  'Another quiz': 'Noch ein Quiz',
  'Enough||of the quiz': 'Genug',
  'Countdown||tone': 'Countdown',
  'Three seconds to go. The long note is the moment: a leg of practice begins or ends.':
    'Noch drei Sekunden. Der lange Ton ist der Augenblick: Ein Abschnitt des Trainings beginnt oder endet.',
  'Three short ticks a second apart, then one long higher note.':
    'Drei kurze Ticks im Abstand einer Sekunde, dann ein langer, höherer Ton.',
  'New part||tone': 'Neuer Teil',
  'A part of the race begins: the start, your steady pace, the push. In practice a leg.':
    'Ein Teil des Rennens beginnt: der Start, dein gleichmäßiges Tempo, der Endspurt. Im Training ein Abschnitt.',
  'Short, short, then long and higher.': 'Kurz, kurz, dann lang und höher.',
  'Ease||tone': 'Ruhiger',
  'Too quick, or your heart rate is above its ceiling: run easier.':
    'Zu schnell, oder dein Puls liegt über seiner Grenze: Lauf ruhiger.',
  'Two slow notes, both sinking.': 'Zwei langsame Töne, beide fallend.',
  'Quicken||tone': 'Schneller',
  'Too slow for the plan: run quicker, if you can.':
    'Zu langsam für den Plan: Lauf schneller, wenn du kannst.',
  'Four quick notes that climb.': 'Vier schnelle Töne, die steigen.',
  'Mark||tone': 'Marke',
  'A board or a checkpoint, now. In practice: halfway, or nearly there.':
    'Eine Tafel oder ein Kontrollpunkt, jetzt. Im Training: die Hälfte oder fast geschafft.',
  'One knock.': 'Ein Klopfen.',
  'Signal lost||tone': 'Signal weg',
  'No position. Soundline goes on by your pace.': 'Keine Position. Soundline macht mit deinem Tempo weiter.',
  'Three notes, each lower and longer than the one before.':
    'Drei Töne, jeder tiefer und länger als der davor.',
  'Signal back||tone': 'Signal wieder da',
  'The position, or the sound, is there again.': 'Die Position oder der Ton ist wieder da.',
  'One long note, then three quick ones, higher.': 'Ein langer Ton, dann drei schnelle, höhere.',
  'Finish||tone': 'Ziel',
  'You are through, and the run is over.': 'Du bist durch, der Lauf ist vorbei.',
  'Long, short, short, long, long: it ends high.': 'Lang, kurz, kurz, lang, lang: Er endet hoch.',
};
