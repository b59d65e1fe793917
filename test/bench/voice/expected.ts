import type { Ahead, Pace, Place, Saying } from '../../../src/core/cues/saying.ts';
import { ITEMS, OFFERS } from '../../../src/core/plan/supplies.ts';
import { type DistanceUnit, metresPer } from '../../../src/core/units/units.ts';

/** What a runner in a race can believe their ears: nobody hears a split of four seconds. */
const MOST_UNITS = 50;
const QUICKEST_S = 150;
const SLOWEST_S = 900;
const LONGEST_S = 6 * 3600;
const MOST_AHEAD_S = 240;
const MOST_BY_S = 60;
const FARTHEST_AHEAD_M = 500;

const range = (from: number, to: number, step = 1): readonly number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);

const UNITS: readonly DistanceUnit[] = ['km', 'mile'];
const EVEN: Ahead = { side: 'even', seconds: 0, sure: true };
const PACE: Pace = { sPerUnit: 296, unit: 'km' };

const aheads: readonly Ahead[] = [true, false].flatMap((sure) => [
  { side: 'even' as const, seconds: 0, sure },
  ...(['up', 'down'] as const).flatMap((side) =>
    range(1, MOST_AHEAD_S).map((seconds) => ({ side, seconds, sure })),
  ),
]);
const paces = UNITS.flatMap((unit) => range(QUICKEST_S, SLOWEST_S).map((sPerUnit) => ({ sPerUnit, unit })));
const times = range(QUICKEST_S, LONGEST_S);
const lengths = UNITS.flatMap((unit) =>
  range(1, MOST_UNITS * 10).map((tenths) => ({ tenths, unit, distanceM: (tenths * metresPer(unit)) / 10 })),
);
const places: readonly Place[] = [
  { name: 'halfway' },
  ...lengths.map(({ tenths, unit }) => ({ tenths, unit })),
];

function* sayingsWith(ahead: Ahead): Generator<Saying> {
  yield { kind: 'settle', pace: PACE, ahead };
  yield { kind: 'marker', count: 3, unit: 'km', splitS: 296, ahead };
  yield { kind: 'checkpoint', place: { name: 'halfway' }, timeS: 1272, ahead };
  for (const kind of ['ease', 'quicken'] as const) yield { kind, byS: 6, unit: 'km', ahead };
  yield { kind: 'push', pace: PACE, remainingM: 3000, ahead };
  yield { kind: 'signal', what: 'back', ahead };
  for (const finishS of [null, 6238]) yield { kind: 'answer', distanceM: 12300, unit: 'km', ahead, finishS };
  yield { kind: 'finish', timeS: 6238, ahead };
  yield { kind: 'finish', timeS: 6238, ahead, ownS: 6230 };
}

function* sayingsAtTime(timeS: number): Generator<Saying> {
  yield { kind: 'start', goalS: timeS, pace: PACE };
  yield { kind: 'checkpoint', place: { name: 'halfway' }, timeS, ahead: EVEN };
  for (const ahead of [null, EVEN])
    yield { kind: 'answer', distanceM: 12300, unit: 'km', ahead, finishS: timeS };
  yield { kind: 'finish', timeS, ahead: EVEN };
  yield { kind: 'finish', timeS, ahead: EVEN, ownS: timeS };
}

/**
 * What a runner in a race of up to 50 units may hear, each number over what can be believed: every sentence of every
 * shape of call. The recogniser's grammar is made of these.
 */
export function* everyExpected(): Generator<Saying> {
  for (const ahead of aheads) yield* sayingsWith(ahead);
  for (const timeS of times) yield* sayingsAtTime(timeS);
  for (const pace of paces) {
    yield { kind: 'start', goalS: 6240, pace };
    yield { kind: 'opening', what: 'hold', pace, untilM: 1500 };
    yield { kind: 'settle', pace, ahead: EVEN };
    yield { kind: 'push', pace, remainingM: 3000, ahead: EVEN };
    yield { kind: 'marker', count: 3, unit: 'km', splitS: pace.sPerUnit, ahead: EVEN };
  }
  for (const place of places) {
    yield { kind: 'checkpoint', place, timeS: 1272, ahead: EVEN };
    yield { kind: 'due', place };
  }
  for (const { unit, distanceM } of lengths) {
    yield { kind: 'opening', what: 'hold', pace: { sPerUnit: 296, unit }, untilM: distanceM };
    yield { kind: 'push', pace: { sPerUnit: 296, unit }, remainingM: distanceM, ahead: EVEN };
    for (const ahead of [null, EVEN])
      for (const finishS of [null, 6238]) yield { kind: 'answer', distanceM, unit, ahead, finishS };
  }
  for (const unit of UNITS) {
    for (const count of range(1, MOST_UNITS)) yield { kind: 'marker', count, unit, splitS: 296, ahead: EVEN };
    for (const byS of range(1, MOST_BY_S)) {
      yield { kind: 'opening', what: 'tooQuick', byS, unit };
      for (const kind of ['ease', 'quicken'] as const) yield { kind, byS, unit, ahead: EVEN };
    }
  }
  for (const inM of range(50, FARTHEST_AHEAD_M, 50)) {
    for (const item of ITEMS)
      for (const withWater of [true, false]) yield { kind: 'fuel', item, inM, withWater };
    for (const bits of range(1, 2 ** OFFERS.length - 1))
      yield { kind: 'station', offers: OFFERS.filter((_, i) => (bits >> i) & 1), inM };
  }
  yield { kind: 'marker', what: 'noBoard' };
  yield { kind: 'signal', what: 'lost', ahead: null };
  yield { kind: 'signal', what: 'back', ahead: null };
  yield { kind: 'signal', what: 'lineReversed', ahead: null };
}
