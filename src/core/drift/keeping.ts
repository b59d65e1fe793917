import type { Progress } from '../estimate/progress.ts';
import type { Schedule } from '../plan/schedule.ts';
import { M_PER_KM } from '../units/units.ts';
import { type Manner, manners, seeAll, weightsOf } from './manner.ts';
import { rateNoise } from './noise.ts';

/**
 * How the runner keeps the schedule: schedule seconds passed for each second of the clock. 1 is on plan, above 1 quicker.
 * Hills, the opening and the push are in the schedule, so they do not move it.
 */
export interface Keeping {
  /** The rate kept up now. */
  readonly rate: number;
  /** Guesses at how this runner runs, weighed by how well they foretold what came. */
  readonly manners: readonly Manner[];
  /** Seconds since the start. */
  readonly forS: number;
  /** The stretch under way: its length, how much of it was seen, and the sums over that of rate and noise. */
  readonly stretchS: number;
  readonly seenS: number;
  readonly rateSum: number;
  readonly noiseSum: number;
}

/** Stretches of running that are looked at as one. */
const STRETCH_S = 20;
/** Getting away and finding the feet: says nothing of how the rest will be run. */
const UNRULY_S = 40;
/** So much of a stretch must have been seen for it to count. */
const SEEN_SHARE = 0.5;

export const beginKeeping: Keeping = {
  rate: 1,
  manners,
  forS: 0,
  stretchS: 0,
  seenS: 0,
  rateSum: 0,
  noiseSum: 0,
};

/** Schedule seconds passed per second at the runner's speed now. */
export const rateNow = (schedule: Schedule, progress: Progress): number =>
  (schedule.paceAtSPerKm(progress.distanceM) / M_PER_KM) * progress.speedMps;

/** What was seen of an instant: the rate, and the power of the noise in it. */
export interface SeenRate {
  readonly rate: number;
  readonly noisePower: number;
}

export const seenRate = (schedule: Schedule, progress: Progress): SeenRate => ({
  rate: rateNow(schedule, progress),
  noisePower: rateNoise(progress.speedSdMps, schedule.paceAtSPerKm(progress.distanceM)).power,
});

/** `dtS` seconds pass; `seen` is null where nothing is known of them. */
export const keepOn = (keeping: Keeping, seen: SeenRate | null, dtS: number): Keeping => {
  const forS = keeping.forS + dtS;
  if (forS <= UNRULY_S) return { ...keeping, forS };
  const seenDtS = seen === null ? 0 : dtS;
  const stretchS = keeping.stretchS + dtS;
  const seenS = keeping.seenS + seenDtS;
  const rateSum = keeping.rateSum + (seen?.rate ?? 0) * seenDtS;
  const noiseSum = keeping.noiseSum + (seen?.noisePower ?? 0) * seenDtS;
  if (stretchS < STRETCH_S || seenS < SEEN_SHARE * STRETCH_S)
    return { ...keeping, forS, stretchS, seenS, rateSum, noiseSum };
  const next = seeAll(keeping.manners, rateSum / seenS, noiseSum / seenS ** 2, stretchS);
  const weights = weightsOf(next);
  const rate = next.reduce((sum, m, i) => sum + (weights[i] ?? 0) * m.kept, 0);
  return { rate, manners: next, forS, stretchS: 0, seenS: 0, rateSum: 0, noiseSum: 0 };
};
