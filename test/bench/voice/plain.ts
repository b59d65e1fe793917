import type { Saying } from '../../../src/core/cues/saying.ts';
import { clipSpan } from '../../../src/voice/packs/pack.ts';
import { JOIN_S } from '../../../src/voice/utter.ts';
import { printTable } from '../table.ts';
import { grammarOfTexts, plainWords } from './grammar.ts';
import { inNoise, type Room, soundOf } from './hear.ts';
import { counted } from './interval.ts';
import { randomFrom } from './random.ts';
import { RECOGNISER_RATE_HZ, recognise } from './recogniser.ts';
import { recorded } from './recorded.ts';
import { type Snr, snrName } from './snr.ts';

/** Numbers that noise mixes up, by how. */
const GROUPS: readonly (readonly [name: string, numbers: readonly number[]])[] = [
  ['1, 5, 9', [1, 5, 9]],
  ['13 to 19', [13, 14, 15, 16, 17, 18, 19]],
  ['20, 30, 40, 50', [20, 30, 40, 50]],
];
const MOST = 59;
const SNRS_DB: readonly Snr[] = [5, 0];
/** Places in the noise at which each number is tried. */
const PLACES = 12;
/** Silence between two clips that were each said alone. */
const PLAIN_JOIN_S = 0.04;
const ONES = (
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen ' +
  'eighteen nineteen'
).split(' ');
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty'];
/** 'thirty', 'twenty-eight': as everybody says them. */
const plainNumber = (n: number): string =>
  n < 20 ? (ONES[n] ?? '') : `${TENS[Math.floor(n / 10)]}${n % 10 === 0 ? '' : `-${ONES[n % 10]}`}`;

interface Sentence {
  readonly name: string;
  readonly saying: (n: number) => Saying;
  readonly plain: (n: number) => readonly string[];
  /** Our words, but plain numbers. */
  readonly running: (n: number) => readonly string[];
}

const SENTENCES: readonly Sentence[] = [
  {
    name: 'slow down',
    saying: (byS) => ({ kind: 'ease', byS, unit: 'km', ahead: { side: 'even', seconds: 0, sure: true } }),
    plain: (n) => ['ease', plainNumber(n), 'per K'],
    running: (n) => ['slow down by', plainNumber(n), 'per K'],
  },
  {
    name: 'ahead',
    saying: (seconds) => ({ kind: 'rival', ahead: { side: 'up', seconds, sure: true } }),
    plain: (n) => ['to your rival', plainNumber(n), 'up'],
    running: (n) => ['to your rival', 'ahead by', plainNumber(n)],
  },
];

const NUMBERS = Array.from({ length: MOST }, (_, i) => i + 1);

/** Clips after each other at the recogniser's rate. */
const joined = (clips: readonly Float32Array[], gapS: number): Float32Array => {
  const gap = Math.round(gapS * RECOGNISER_RATE_HZ);
  const out = new Float32Array(clips.reduce((sum, clip) => sum + clip.length + gap, 0));
  let at = 0;
  for (const clip of clips) {
    out.set(clip, at);
    at += clip.length + gap;
  }
  return out;
};

/** One way of saying the sentences: what is said for a number, and how it sounds. */
interface Way {
  readonly text: (sentence: Sentence, n: number) => string;
  readonly sound: (sentence: Sentence, n: number) => Float32Array;
}

/** How often each number of a group was taken for another, of how many. */
const wrongOf = (way: Way, noise: Float32Array, snrDb: Snr, seed: number): ReadonlyMap<number, number> => {
  const random = randomFrom(seed);
  const tries = GROUPS.flatMap(([, numbers]) => numbers).flatMap((n) =>
    SENTENCES.flatMap((sentence) =>
      Array.from({ length: PLACES }, () => ({ n, sentence, at: Math.floor(random() * noise.length) })),
    ),
  );
  const texts = SENTENCES.flatMap((sentence) => NUMBERS.map((n) => way.text(sentence, n)));
  const heard = recognise(
    tries.map(({ n, sentence, at }) => inNoise(way.sound(sentence, n), noise, at, snrDb)),
    grammarOfTexts(texts),
  );
  const wrong = new Map<number, number>();
  for (const [i, { n, sentence }] of tries.entries()) {
    const right = plainWords(way.text(sentence, n)).join(' ') === heard[i]?.join(' ');
    wrong.set(n, (wrong.get(n) ?? 0) + (right ? 0 : 1));
  }
  return wrong;
};

/**
 * Our way of saying numbers against plain ones, any of 1 to 59: the same voice, mastering, noise and recogniser. Twice
 * plain: each clip said by itself, and with our words around it, cut from running speech.
 */
export const printPlain = async (room: Room, seed: number): Promise<void> => {
  const record = async (
    clips: readonly string[],
    isCut: boolean,
  ): Promise<(name: string) => Float32Array> => {
    const { pack, sprite } = await recorded(room.pack, clips, isCut);
    return (name) => {
      const span = clipSpan(pack, name);
      const from = Math.round((span?.startS ?? 0) * RECOGNISER_RATE_HZ);
      return sprite.slice(from, from + Math.round((span?.durationS ?? 0) * RECOGNISER_RATE_HZ));
    };
  };
  const clipsOf = (say: (sentence: Sentence, n: number) => readonly string[]): readonly string[] =>
    SENTENCES.flatMap((sentence) => NUMBERS.flatMap((n) => say(sentence, n)));
  const alone = await record(
    clipsOf(({ plain }, n) => plain(n)),
    false,
  );
  const cut = await record(
    clipsOf(({ running }, n) => running(n)),
    true,
  );
  const ways: readonly Way[] = [
    {
      text: ({ plain }, n) => plain(n).join(' '),
      sound: ({ plain }, n) => joined(plain(n).map(alone), PLAIN_JOIN_S),
    },
    {
      text: ({ running }, n) => running(n).join(' '),
      sound: ({ running }, n) => joined(running(n).map(cut), JOIN_S),
    },
    {
      text: ({ saying }, n) => room.voice.utter(saying(n), 'short').text,
      sound: ({ saying }, n) => soundOf(room.voice.utter(saying(n), 'short'), room.pack, room.sprite),
    },
  ];
  const groups = [...GROUPS, ['all of these', GROUPS.flatMap(([, numbers]) => numbers)] as const];
  const rows = SNRS_DB.flatMap((snrDb) => {
    const wrong = ways.map((way) => wrongOf(way, room.noise, snrDb, seed));
    return groups.map(([name, numbers]) => {
      const tries = numbers.length * SENTENCES.length * PLACES;
      const shares = wrong.map((of) =>
        counted(
          numbers.reduce((sum, n) => sum + (of.get(n) ?? 0), 0),
          tries,
        ),
      );
      return [snrName(snrDb), name, String(tries), ...shares];
    });
  });
  printTable(
    'Numbers taken for others: the plain way and ours',
    [
      'voice over crowd',
      'numbers',
      'sentences',
      "'ease thirty per K', each clip said alone",
      "'slow down by thirty per K', cut from running speech",
      "ours: 'slow down by three zero per K', the same, single digits slower",
    ],
    rows,
  );
};
