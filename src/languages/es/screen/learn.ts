import type { Catalogue } from '../../text.ts';

export const learn: Catalogue = {
  'Play||a tone': 'Escuchar',
  'Feel||a tone': 'Sentir',
  'The tones': 'Los tonos',
  'Most calls begin with a tone. Know the eight of them, and you know what is meant before the first word. It takes two minutes.':
    'Casi todos los avisos empiezan con un tono. Si conoces los ocho, sabes qué se quiere decir antes de la primera palabra. Lleva dos minutos.',
  'The line shows the pitch. The blocks under it show when this device vibrates, in the same rhythm.':
    'La línea muestra la altura. Los bloques de debajo muestran cuándo vibra este dispositivo, con el mismo ritmo.',
  'The line shows the pitch. The blocks under it show the rhythm that a device that vibrates lets you feel; this one does not.':
    'La línea muestra la altura. Los bloques de debajo muestran el ritmo que deja sentir un dispositivo que vibra; este no lo hace.',
  'Tones alone in my runs': 'Solo tonos en mis carreras',
  'No words where a tone can tell: your food, what you ask for and trouble are still said.':
    'Sin palabras donde basta un tono: tu comida, lo que preguntas y los problemas se siguen diciendo.',
  'To the run': 'A la carrera',
  'Hear a race': 'Oír una carrera',
  'Do you know them?': '¿Los conoces?',
  'Eight tones, each with four names. Put your earphones in.':
    'Ocho tonos, cada uno con cuatro nombres. Ponte los auriculares.',
  'Begin the quiz': 'Empezar la prueba',
  'Tone {count} of {of}': 'Tono {count} de {of}',
  'Right: {name}.': 'Correcto: {name}.',
  'No, that was {name}.': 'No, era {name}.',
  'Next tone': 'Siguiente tono',
  'How I did': 'Mi resultado',
  '{right} of {of} right.': '{right} de {of} correctos.',
  'You know them.': 'Los conoces.',
  'Hear these again:': 'Oye estos otra vez:',
  'Another quiz': 'Otra prueba',
  'Enough||of the quiz': 'Basta',
  'Countdown||tone': 'Cuenta atrás',
  'Three seconds to go. The long note is the moment: a leg of practice begins or ends.':
    'Faltan tres segundos. La nota larga es el momento: empieza o acaba un tramo del entrenamiento.',
  'Three short ticks a second apart, then one long higher note.':
    'Tres toques cortos separados por un segundo, luego una nota larga y más aguda.',
  'New part||tone': 'Parte nueva',
  'A part of the race begins: the start, your steady pace, the push. In practice a leg.':
    'Empieza una parte de la carrera: la salida, tu ritmo constante, el empuje final. En el entrenamiento, un tramo.',
  'Short, short, then long and higher.': 'Corto, corto, luego largo y más agudo.',
  'Ease||tone': 'Afloja',
  'Too quick, or your heart rate is above its ceiling: run easier.':
    'Demasiado rápido, o tu pulso pasa de su límite: corre más suave.',
  'Two slow notes, both sinking.': 'Dos notas lentas, las dos bajan.',
  'Quicken||tone': 'Aprieta',
  'Too slow for the plan: run quicker, if you can.':
    'Demasiado lento para el plan: corre más rápido, si puedes.',
  'Four quick notes that climb.': 'Cuatro notas rápidas que suben.',
  'Mark||tone': 'Marca',
  'A board or a checkpoint, now. In practice: halfway, or nearly there.':
    'Un cartel o un punto de control, ahora. En el entrenamiento: la mitad, o casi el final.',
  'One knock.': 'Un solo golpe.',
  'Signal lost||tone': 'Señal perdida',
  'No position. Soundline goes on by your pace.': 'Sin posición. Soundline sigue según tu ritmo.',
  'Three notes, each lower and longer than the one before.':
    'Tres notas, cada una más grave y más larga que la anterior.',
  'Signal back||tone': 'Señal de vuelta',
  'The position, or the sound, is there again.': 'La posición, o el sonido, ha vuelto.',
  'One long note, then three quick ones, higher.': 'Una nota larga, luego tres rápidas y más agudas.',
  'Finish||tone': 'Meta',
  'You are through, and the run is over.': 'Has pasado la línea, la carrera ha terminado.',
  'Long, short, short, long, long: it ends high.': 'Largo, corto, corto, largo, largo: acaba agudo.',
  'Calls begin {ms} ms earlier, as measured before.': 'Los avisos empiezan {ms} ms antes, como se midió.',
  'Too little to matter.': 'Demasiado poco para importar.',
  'Checkpoints and countdowns begin {ms} ms earlier from now on. Other earphones: measure again.':
    'Los puntos de control y las cuentas atrás empiezan {ms} ms antes desde ahora. Con otros auriculares, mide de nuevo.',
  'Learn the tones': 'Aprender los tonos',
  'No earlier': 'Sin adelanto',
  'Tones alone': 'Solo tonos',
  'Without them your own music plays on, no quieter, and calls sound over it.':
    'Sin ellos tu música sigue, sin bajar, y los avisos suenan por encima.',
};
