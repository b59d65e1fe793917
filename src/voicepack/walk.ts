import type { Ahead, Pace, Place, Saying } from '../core/cues/saying.ts';
import type { Form } from '../core/cues/voicePort.ts';
import { ITEMS, OFFERS, type Offer } from '../core/plan/supplies.ts';
import type { DistanceUnit } from '../core/units/units.ts';
import { metresPer } from '../core/units/units.ts';
import type { Sentence, Words } from '../voice/words/words.ts';
import { everyCompanySaying } from './walkCompany.ts';
import { everyNotice } from './walkNotice.ts';
import { everyPracticeSaying } from './walkPractice.ts';

/** Bounds of what the core can say. */
const LONGEST_S = 9 * 3600 + 59 * 60 + 59;
const MOST_AHEAD_S = 600;
const MOST_TENTHS = 1000;
const MOST_MARKERS = 100;
const MOST_AHEAD_MIN = 99;
const QUICKEST_S = 60;
const SLOWEST_S = 3599;
const MOST_BY_S = 100;
const FARTHEST_AHEAD_M = 1000;

const range = (from: number, to: number, step = 1): readonly number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);

const UNITS: readonly DistanceUnit[] = ['km', 'mile'];
const FORMS: readonly Form[] = ['long', 'short'];
const EVEN: Ahead = { side: 'even', seconds: 0, sure: true };
const PACE: Pace = { sPerUnit: 296, unit: 'km' };

const aheads: readonly Ahead[] = [true, false].flatMap((sure) => [
  { side: 'even' as const, seconds: 0, sure },
  ...(['up', 'down'] as const).flatMap((side) =>
    [...range(1, MOST_AHEAD_S), ...range(MOST_AHEAD_S + 60, MOST_AHEAD_MIN * 60, 60)].map((seconds) => ({
      side,
      seconds,
      sure,
    })),
  ),
]);
const paces: readonly Pace[] = UNITS.flatMap((unit) =>
  range(QUICKEST_S, SLOWEST_S).map((sPerUnit) => ({ sPerUnit, unit })),
);
const places: readonly Place[] = [
  { name: 'halfway' },
  ...UNITS.flatMap((unit) => range(0, MOST_TENTHS).map((tenths) => ({ tenths, unit }))),
];
const times = range(0, LONGEST_S);
const subsets: readonly (readonly Offer[])[] = range(1, 2 ** OFFERS.length - 1).map((bits) =>
  OFFERS.filter((_, i) => (bits >> i) & 1),
);

/** Every meaning with each of its numbers run through its whole range, the others held. */
function* everySaying(): Generator<Saying> {
  yield* everyPracticeSaying();
  yield* everyCompanySaying();
  yield* everyNotice(aheads, places);
  for (const goalS of times) yield { kind: 'start', goalS, pace: PACE };
  for (const pace of paces) {
    yield { kind: 'start', goalS: 6240, pace };
    yield { kind: 'opening', what: 'hold', pace, untilM: 1500 };
    yield { kind: 'settle', pace, ahead: EVEN };
    yield { kind: 'push', pace, remainingM: 3000, ahead: EVEN };
  }
  for (const ahead of aheads) {
    yield { kind: 'settle', pace: PACE, ahead };
    yield { kind: 'marker', count: 3, unit: 'km', splitS: 296, ahead };
    yield { kind: 'checkpoint', place: { name: 'halfway' }, timeS: 1272, ahead };
    yield { kind: 'ease', byS: 6, unit: 'km', ahead };
    yield { kind: 'quicken', byS: 6, unit: 'km', ahead };
    yield { kind: 'push', pace: PACE, remainingM: 3000, ahead };
    yield { kind: 'signal', what: 'back', ahead };
    yield { kind: 'signal', what: 'lineReversed', ahead };
    yield { kind: 'answer', distanceM: 12300, unit: 'km', ahead, finishS: null };
    yield { kind: 'finish', timeS: 6238, ahead };
  }
  for (const place of places) yield { kind: 'checkpoint', place, timeS: 1272, ahead: EVEN };
  for (const timeS of times) {
    yield { kind: 'checkpoint', place: { name: 'halfway' }, timeS, ahead: EVEN };
    yield { kind: 'answer', distanceM: 12300, unit: 'km', ahead: null, finishS: timeS };
    yield { kind: 'answer', distanceM: 12300, unit: 'km', ahead: EVEN, finishS: timeS };
    yield { kind: 'finish', timeS, ahead: EVEN };
    yield { kind: 'finish', timeS: 6238, ahead: EVEN, ownS: timeS };
  }
  for (const unit of UNITS) {
    for (const byS of range(1, MOST_BY_S)) {
      yield { kind: 'opening', what: 'tooQuick', byS, unit };
      yield { kind: 'ease', byS, unit, ahead: EVEN };
      yield { kind: 'quicken', byS, unit, ahead: EVEN };
    }
    for (const count of range(1, MOST_MARKERS))
      yield { kind: 'marker', count, unit, splitS: 296, ahead: EVEN };
    for (const splitS of range(0, 3600)) yield { kind: 'marker', count: 3, unit, splitS, ahead: EVEN };
    for (const tenths of range(0, MOST_TENTHS)) {
      const distanceM = (tenths * metresPer(unit)) / 10;
      yield { kind: 'opening', what: 'hold', pace: { sPerUnit: 296, unit }, untilM: distanceM };
      yield { kind: 'push', pace: { sPerUnit: 296, unit }, remainingM: distanceM, ahead: EVEN };
      yield { kind: 'answer', distanceM, unit, ahead: null, finishS: null };
    }
  }
  for (const inM of range(0, FARTHEST_AHEAD_M, 10)) {
    for (const item of ITEMS) {
      yield { kind: 'fuel', item, inM, withWater: true };
      yield { kind: 'fuel', item, inM, withWater: false };
    }
    yield { kind: 'station', offers: ['water'], inM };
  }
  for (const offers of subsets) yield { kind: 'station', offers, inM: 200 };
  yield { kind: 'marker', what: 'noBoard' };
  yield { kind: 'signal', what: 'lost', ahead: null };
  yield { kind: 'signal', what: 'back', ahead: null };
  yield { kind: 'signal', what: 'lineReversed', ahead: null };
}

/** Every meaning in both forms, with what is said for it. */
export function* everySpoken(
  words: Words,
): Generator<{ readonly saying: Saying; readonly form: Form; readonly sentences: readonly Sentence[] }> {
  for (const saying of everySaying())
    for (const form of FORMS) yield { saying, form, sentences: words.say(saying, form) };
}

/** The clips that a language needs, each once, in the order of the alphabet. */
export const clipsOf = (words: Words): readonly string[] => {
  const clips = new Set<string>();
  for (const { sentences } of everySpoken(words))
    for (const sentence of sentences) for (const clip of sentence) clips.add(clip);
  return [...clips].sort();
};
