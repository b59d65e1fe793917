import type { Length, PracticeSaying } from '../core/cues/practiceSaying.ts';
import { EFFORTS, LEG_KINDS } from '../core/plan/practicePlan.ts';

const MOST_BPM = 250;
const MOST_REPS = 100;
const LONGEST_S = 6 * 3600;
const PEN_MIN = 60;

const range = (from: number, to: number, step = 1): readonly number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);

const lengths: readonly Length[] = [
  ...range(0, LONGEST_S).map((timeS) => ({ timeS })),
  ...(['km', 'mile'] as const).flatMap((unit) =>
    range(0, 100_000, 50).map((distanceM) => ({ distanceM, unit })),
  ),
];

/** Every meaning of a practice session with each of its numbers run through its range, the others held. */
export function* everyPracticeSaying(): Generator<PracticeSaying> {
  const leg = {
    kind: 'leg',
    what: 'work',
    rep: null,
    length: { timeS: 900 },
    target: null,
    tone: 'leg',
  } as const;
  for (const what of LEG_KINDS) yield { ...leg, what };
  for (const length of lengths) {
    yield { ...leg, length };
    yield { kind: 'remaining', left: length, ahead: null };
  }
  for (const target of EFFORTS) yield { ...leg, length: 'press', target };
  for (const count of range(1, MOST_REPS)) {
    yield { ...leg, rep: { count, of: count } };
    yield { kind: 'rep', count, pace: null, ahead: null };
  }
  // Paces and drifts are the race's own and are walked there.
  yield { kind: 'rep', count: null, pace: { sPerUnit: 296, unit: 'km' }, ahead: null };
  yield { kind: 'remaining', left: 'half', ahead: { side: 'even', seconds: 0, sure: true } };
  yield { kind: 'remaining', left: 'press', ahead: null };
  for (const bpm of range(60, MOST_BPM)) yield { kind: 'heart', bpm, mostBpm: bpm };
  for (const inMin of range(0, PEN_MIN)) yield { kind: 'pen', inMin };
  yield { kind: 'done', tone: 'finish', timeS: 3600, distance: { tenths: 123, unit: 'km' } };
}
