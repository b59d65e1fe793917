import { clipSpan, LOUDNESS } from '../../../src/voice/packs/pack.ts';
import { JOIN_S } from '../../../src/voice/utter.ts';
import type { Sentence } from '../../../src/voice/words/words.ts';
import { everySpoken } from '../../../src/voicepack/walk.ts';
import { printTable } from '../table.ts';
import { grammarOfTexts, plainWords } from './grammar.ts';
import { inNoise, type Room, soundOf } from './hear.ts';
import { randomFrom } from './random.ts';
import { recognise } from './recogniser.ts';
import { type Snr, snrName } from './snr.ts';

const SNRS_DB: readonly Snr[] = [null, 10, 5];
/** Everything that is said in no more clips than this is what the recogniser may hear; and the sentences tried. */
const SHORT_CLIPS = 2;

/** The shortest sentence that each clip is said in, and what else might be heard in its place. */
const sentencesOf = (
  room: Room,
): { readonly shortest: ReadonlyMap<string, Sentence>; readonly sayable: readonly string[] } => {
  const shortest = new Map<string, Sentence>();
  const sayable = new Set<string>();
  for (const { sentences } of everySpoken(room.words))
    for (const sentence of sentences) {
      if (sentence.length <= SHORT_CLIPS) sayable.add(sentence.join(' '));
      for (const clip of sentence) {
        const known = shortest.get(clip);
        if (known === undefined || sentence.length < known.length) shortest.set(clip, sentence);
      }
    }
  for (const sentence of shortest.values()) sayable.add(sentence.join(' '));
  return { shortest, sayable: [...sayable] };
};

/** A sentence as the page plays it. */
const utteredOf = ({ pack }: Room, sentence: Sentence) => {
  let endS = 0;
  const parts = sentence.map((clip) => {
    const offsetS = endS;
    endS += (clipSpan(pack, clip)?.durationS ?? 0) + JOIN_S;
    return { sound: { clip }, offsetS };
  });
  return { text: sentence.join(' '), parts, durationS: endS };
};

/** 'said (heard)' of each sentence that was not understood. */
const misheardOf = (
  room: Room,
  sentences: readonly Sentence[],
  grammar: string,
  snrDb: Snr,
  seed: number,
): readonly string[] => {
  const random = randomFrom(seed);
  const sounds = sentences.map((sentence) => {
    const speech = soundOf(utteredOf(room, sentence), room.pack, room.sprite);
    return inNoise(speech, room.noise, Math.floor(random() * room.noise.length), snrDb);
  });
  const heard = recognise(sounds, grammar);
  return sentences.flatMap((sentence, i) => {
    const as = heard[i]?.join(' ') ?? '';
    return as === plainWords(sentence.join(' ')).join(' ')
      ? []
      : [`${sentence.join(' ')} (${as || 'nothing'})`];
  });
};

/**
 * Each clip of the pack: all by itself, where the recogniser may hear any clip, which no runner ever has to; and in the
 * shortest sentence that it is said in. Named is what was not understood in its sentence.
 */
export const printClips = (roomOf: (loudness: (typeof LOUDNESS)[number]) => Room, seed: number): void => {
  const rows = LOUDNESS.flatMap((loudness) => {
    const room = roomOf(loudness);
    const names = Object.keys(room.pack.clips);
    const { shortest, sayable } = sentencesOf(room);
    const alone = names.map((name) => [name]);
    const inSentence = names.map((name) => shortest.get(name) ?? [name]);
    const anyClip = grammarOfTexts(names);
    const anySentence = grammarOfTexts(sayable);
    return SNRS_DB.map((snrDb) => {
      const bare = misheardOf(room, alone, anyClip, snrDb, seed);
      const said = misheardOf(room, inSentence, anySentence, snrDb, seed);
      const row = [
        loudness,
        snrName(snrDb),
        `${bare.length} of ${names.length}`,
        `${said.length} of ${names.length}`,
        [...new Set(said)].join('; ') || 'none',
      ];
      console.log(row.join('   '), `\n    alone: ${bare.join('; ')}`);
      return row;
    });
  });
  printTable(
    'Each clip of the pack',
    ['variant', 'voice over crowd', 'misheard alone', 'in its shortest sentence', 'which, and as what'],
    rows,
  );
};
