import { beginKeeping, type Keeping } from './keeping.ts';
import { type Manner, WAVER_TAU_S } from './manner.ts';

/** How this runner ran before, out of their own kept races. */
export interface OwnManner {
  /** By how much more than usual they slow from the first half to the second of a race this long, as a share. */
  readonly fadeMore: number;
  /** Standard deviation of their kilometres about their mean, as a share of the pace; over so many races. */
  readonly wanderSd: number;
  readonly races: number;
}

/**
 * Kilometres of one race hang together, so they say as much as so many that do not (judgement: a walk of the pace shows
 * itself in a few of its slowest waves).
 */
const FREE_KM_A_RACE = 4;
/** Nobody is believed to fade, or to gain, by more than this from half to half. */
const FADE_MOST = 0.06;

/** Variance of a guess's kilometres about their mean: its waver over a kilometre, and its walk over the race. */
const kilometreVar = ({ waver, walk }: Manner, kilometreS: number, raceS: number): number => {
  const r = kilometreS / WAVER_TAU_S;
  // Mean of a first-order Gauss-Markov process over r of its times, and a walk about its own mean.
  const ofWaver = (2 / r) * (1 - (1 - Math.exp(-r)) / r) * waver ** 2;
  return ofWaver + (walk ** 2 * raceS) / 6;
};

/**
 * What to believe at the start of how this runner will keep the schedule. Bayes: each guess is weighed by how well it
 * foretells the kilometres of earlier races; without any, all stand as they do for other people. A fade of one's own is
 * a trend of the pace: halves that differ by f over T seconds fall by 2 f / T a second.
 */
export const keepingOf = (own: OwnManner | undefined, raceS: number, distanceM: number): Keeping => {
  if (own === undefined) return beginKeeping;
  const free = FREE_KM_A_RACE * own.races;
  const trend = (-2 * Math.min(FADE_MOST, Math.max(-FADE_MOST, own.fadeMore))) / raceS;
  const kilometreS = raceS / Math.max(1, distanceM / 1000);
  const manners = beginKeeping.manners.map((m): Manner => {
    const expected = kilometreVar(m, kilometreS, raceS);
    return { ...m, trend, score: m.score - (free / 2) * (Math.log(expected) + own.wanderSd ** 2 / expected) };
  });
  return { ...beginKeeping, manners };
};
