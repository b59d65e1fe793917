import type { Saying } from '../../../src/core/cues/saying.ts';
import { clipSpan, type Pack } from '../../../src/voice/packs/pack.ts';
import { level, trim } from '../../../src/voicepack/clip.ts';
import { spelt } from '../../../src/voicepack/en/speaking.ts';
import { openFlite } from '../../../src/voicepack/flite.ts';
import { decode, master, NORMAL, PACK_RATE_HZ } from '../../../src/voicepack/master.ts';
import { resample } from '../../../src/voicepack/resample.ts';
import { layOut } from '../../../src/voicepack/sprite.ts';
import type { Sound } from '../../../src/voicepack/wav.ts';
import { printTable } from '../table.ts';
import { grammarOfTexts, plainWords } from './grammar.ts';
import { inNoise, type Room, soundOf } from './hear.ts';
import { counted } from './interval.ts';
import { randomFrom } from './random.ts';
import { RECOGNISER_RATE_HZ, recognise } from './recogniser.ts';
import { type Snr, snrName } from './snr.ts';
import { inPlace } from './sprite.ts';

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
/** Speed of the shipped clips. */
const STRETCH = 0.9;

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
}

const SENTENCES: readonly Sentence[] = [
  {
    name: 'slow down',
    saying: (byS) => ({ kind: 'ease', byS, unit: 'km', ahead: { side: 'even', seconds: 0, sure: true } }),
    plain: (n) => ['ease', plainNumber(n), 'per K'],
  },
  {
    name: 'ahead',
    saying: (seconds) => ({ kind: 'rival', ahead: { side: 'up', seconds, sure: true } }),
    plain: (n) => ['to your rival', plainNumber(n), 'up'],
  },
];

const NUMBERS = Array.from({ length: MOST }, (_, i) => i + 1);

/** The plain way, mastered and encoded like ours: each clip said alone, as a dictionary would. */
const plainSprite = async (): Promise<{ readonly pack: Pick<Pack, 'clips'>; readonly sound: Sound }> => {
  const names = new Set(SENTENCES.flatMap(({ plain }) => NUMBERS.flatMap((n) => plain(n))));
  const flite = await openFlite('rms');
  const clips = new Map<string, Sound>();
  for (const name of [...names].sort()) {
    const { sound } = await flite.speak(spelt(name), STRETCH);
    clips.set(name, resample(level(trim(sound)), PACK_RATE_HZ));
  }
  flite.close();
  const { sound, spans } = layOut(clips, PACK_RATE_HZ);
  return { pack: { clips: Object.fromEntries(spans) }, sound: decode(master(sound, NORMAL)) };
};

/** Clips after each other at the recogniser's rate. */
const joined = (clips: readonly Float32Array[]): Float32Array => {
  const gap = Math.round(PLAIN_JOIN_S * RECOGNISER_RATE_HZ);
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

/** Our way of saying numbers against the plain one: the same voice, mastering, noise and recogniser, any of 1 to 59. */
export const printPlain = async (room: Room, seed: number): Promise<void> => {
  const { pack, sound } = await plainSprite();
  const timed: Pack = { ...room.pack, ...pack };
  const sprite = resample(inPlace(timed, sound), RECOGNISER_RATE_HZ).samples;
  const clip = (name: string): Float32Array => {
    const span = clipSpan(timed, name);
    const from = Math.round((span?.startS ?? 0) * RECOGNISER_RATE_HZ);
    return sprite.slice(from, from + Math.round((span?.durationS ?? 0) * RECOGNISER_RATE_HZ));
  };
  const plain: Way = {
    text: (sentence, n) => sentence.plain(n).join(' '),
    sound: (sentence, n) => joined(sentence.plain(n).map(clip)),
  };
  const ours: Way = {
    text: (sentence, n) => room.voice.utter(sentence.saying(n), 'short').text,
    sound: (sentence, n) => soundOf(room.voice.utter(sentence.saying(n), 'short'), room.pack, room.sprite),
  };
  const rows = SNRS_DB.flatMap((snrDb) => {
    const [asPlain, asOurs] = [plain, ours].map((way) => wrongOf(way, room.noise, snrDb, seed));
    const groups = [...GROUPS, ['all of these', GROUPS.flatMap(([, numbers]) => numbers)] as const];
    return groups.map(([name, numbers]) => {
      const tries = numbers.length * SENTENCES.length * PLACES;
      const sum = (wrong: ReadonlyMap<number, number> | undefined): string =>
        counted(
          numbers.reduce((all, n) => all + (wrong?.get(n) ?? 0), 0),
          tries,
        );
      return [snrName(snrDb), name, String(tries), sum(asPlain), sum(asOurs)];
    });
  });
  printTable(
    "Numbers, the plain way ('ease thirteen per K', 'thirty up', each clip said alone) against ours ('slow down by …', 'ahead by three zero', cut from running speech)",
    ['voice over crowd', 'numbers', 'sentences', 'plain: wrong', 'ours: wrong'],
    rows,
  );
};
