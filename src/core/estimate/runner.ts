/**
 * How people run, as the filter assumes it: a speed kept up over minutes that drifts slowly, and a waver around it over
 * a minute or less (hills, bends, company). Sizes: half marathoners' segments differ by a few per cent (Nikolaidis 2019:
 * mean change of speed 4.1 % over the race); the waver of 2 % over 50 s is our judgement from recordings.
 */
export const WAVER_SD_MPS = 0.08;
export const WAVER_TAU_S = 50;
/**
 * Of what even effort would win or lose on a slope a runner shows this share, give or take: some run by feel, some hold
 * their pace, some fight each hill (judgement). What this one shows is learned, from the first hill on; it may change
 * by 0.25 in two hours, as the legs tire.
 */
export const HILL_SHARE = 0.6;
export const HILL_SHARE_SD = 0.4;
export const HILL_WALK_PER_SQRT_S = 0.003;
/**
 * No two hills are run alike, nor are heights right: so much of what a slope does is waver on top. More would hide a
 * change of pace from the drift, less would call each hill one (`npm run bench -- hills`).
 */
export const HILL_WAVER_SHARE = 0.15;
/** Random walk of the speed kept up: 0.03 m/s in a minute, 0.24 m/s in an hour. */
export const BASE_WALK_MPS_PER_SQRT_S = 0.004;
/**
 * Out of sight runners do not only wander: some stop, some walk the rest. So for each minute in the dark the speed held on
 * to may be off by another 2.6 %: after three minutes that is 20 m, after twenty it covers who has walked since the first.
 */
const UNSEEN_AFTER_S = 15;
const UNSEEN_SHARE_PER_S = 0.00044;

/** Standard deviations that a step of dtS without any reading adds to speed and way. */
export const unseen = (speedMps: number, dtS: number): { readonly mps: number; readonly m: number } => {
  const darkS = Math.max(0, dtS - UNSEEN_AFTER_S);
  const mps = UNSEEN_SHARE_PER_S * Math.max(0, speedMps) * darkS;
  return { mps, m: (mps * darkS) / 2 };
};
/** Before anything is known: a runner in a race. Wide enough for walkers and for winners. */
export const FIRST_SPEED_MPS = 3.6;
export const FIRST_SPEED_SD_MPS = 0.9;
/** Getting away from the line: the first seconds are anything between a shuffle and a sprint. */
export const GETAWAY_SD_MPS = 1.2;
/** Speed changes that fast while getting away, m/s in the root of a second, fading with GETAWAY_TAU_S. */
const GETAWAY_KICK = 1.2;
const GETAWAY_TAU_S = 6;
const GETAWAY_OVER_S = 40;

/** Variance that a step of dtS adds to the speed, sinceStartS after the start line: running up to speed. */
export const getawayVar = (sinceStartS: number, dtS: number): number =>
  sinceStartS > GETAWAY_OVER_S
    ? 0
    : GETAWAY_KICK ** 2 * dtS * Math.exp(-Math.max(0, sinceStartS) / GETAWAY_TAU_S);

/** Away from the middle of the runner's line across the road: runners weave; roads are 5 to 10 m wide. */
export const ASIDE_SD_M = 1.5;
export const ASIDE_TAU_S = 25;
