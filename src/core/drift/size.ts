import { M_PER_KM } from '../units/units.ts';
import type { Evidence } from './departure.ts';

/** How large a departure is that was found, beyond what is welcome, on its own side: seconds per kilometre. */
export interface Size {
  readonly sPerKm: number;
  /** The same by the speed alone: below zero where the runner is on the other side by now. */
  readonly seenSPerKm: number;
  readonly sdSPerKm: number;
}

/** What there is to judge a size by. */
export type SpeedNow = Omit<Evidence, 'dtS' | 'quickIsLikely'>;

/**
 * What departures are like that are found: most are small, some are large. A mean and a deviation each, and how many are of
 * the kind. Taken from the bench's mixed field (people who run nearly to plan, people who leave it, 1300 calls in four
 * receptions): of those found the pace over the minute before and the minute after was off by 5.5 ± 4 s/km, with one in
 * twenty beyond 14.
 */
const KINDS = [
  { sPerKm: 3, sd: 3, share: 0.7 },
  { sPerKm: 12, sd: 8, share: 0.3 },
] as const;
/** The speed of a moment waves about the pace that is kept up; some of that is in the estimate's deviation already. */
const WAVER_SHARE = 0.008;

/**
 * Bayes: the speed now as the estimate knows it, and what departures are like. What is asked for is the pace kept up, so
 * the whole of the estimate's deviation is noise, and the waver too. Not the mean since the sum left zero: that is chosen
 * by where it began and by having passed its limit, and behind the start it holds the getaway. And not the speed by itself:
 * a word comes where it is seen at its farthest off. Said without this, sizes were too large by 2 s/km in the open and by
 * 4 in town, where they are right in the mean now, give or take 1, and off by 2.8 and 3.3 in RMS (3.5 and 5.2 before).
 */
export const sizeOf = (side: 'quick' | 'slow', e: SpeedNow): Size => {
  const away = side === 'quick' ? e.rate - 1 - e.quickIsFine : 1 - e.rate - e.slowIsFine;
  const seen = away * e.paceSPerKm;
  const seenVar = ((e.speedSdMps * e.paceSPerKm ** 2) / M_PER_KM) ** 2 + (WAVER_SHARE * e.paceSPerKm) ** 2;
  const parts = KINDS.map(({ sPerKm, sd, share }) => {
    const sum = seenVar + sd ** 2;
    return {
      log: Math.log(share) - (seen - sPerKm) ** 2 / (2 * sum) - Math.log(sum) / 2,
      mean: (seen * sd ** 2 + sPerKm * seenVar) / sum,
      variance: (seenVar * sd ** 2) / sum,
    };
  });
  const most = Math.max(...parts.map((p) => p.log));
  const weights = parts.map((p) => Math.exp(p.log - most));
  const over = (of: (p: (typeof parts)[number]) => number): number =>
    parts.reduce((sum, p, i) => sum + (weights[i] ?? 0) * of(p), 0) / weights.reduce((x, y) => x + y, 0);
  const sPerKm = over((p) => p.mean);
  const variance = over((p) => p.variance + (p.mean - sPerKm) ** 2);
  return { sPerKm, seenSPerKm: seen, sdSPerKm: Math.sqrt(variance) };
};

/**
 * Behind the start the estimate is finding its feet, and the getaway is in it: its speed errs by 6 to 14 s/km in streets. So
 * nothing is said until it is known to this, or until so long after the start that this is as good as it gets.
 */
const SURE_S_PER_KM = 5.5;
const SURE_BY_S = 180;
/** Without a line the feet are found later. */
const FREE_SURE_BY_S = 420;

/** Is the speed known well enough for a word about it? `forS`: seconds since the start. */
export const isSized = (
  { speedSdMps, paceSPerKm }: Pick<SpeedNow, 'speedSdMps' | 'paceSPerKm'>,
  forS: number,
  hasLine: boolean,
): boolean =>
  forS >= (hasLine ? SURE_BY_S : FREE_SURE_BY_S) ||
  (speedSdMps * paceSPerKm ** 2) / M_PER_KM <= SURE_S_PER_KM;
