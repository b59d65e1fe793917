/**
 * A manner of running, as one guess among several: a pace kept up that wanders as a random walk, and a waver about it. Each
 * guess is followed by a Kalman filter of its own, and how well it foretells what comes is its weight (multiple models:
 * Magill 1965, memory). So a runner's own steadiness is learned as they run, and until it is, the people's stands.
 */
export interface Manner {
  /** The pace kept up wanders by this share in the root of a second. */
  readonly walk: number;
  /** Size of the waver about it, a share. */
  readonly waver: number;
  /** The pace kept up changes by this share a second of itself: this runner's own fade, 0 where none is known. */
  readonly trend: number;
  /** Log of the weight, up to a constant. */
  readonly score: number;
  /** Schedule seconds per second: kept up, and the waver now. */
  readonly kept: number;
  readonly now: number;
  /** Their covariance. */
  readonly kk: number;
  readonly kn: number;
  readonly nn: number;
}

/** A waver's memory: hills, bends and company last about this long (our reading of recordings). */
export const WAVER_TAU_S = 50;

/**
 * How the pace kept up wanders: as a random walk, and besides the rest is run at another pace than what was kept, by a
 * share that is not to be seen before (LATER_S times the walk). In the second half of major marathons good men were slower
 * by 3.4 ± 2.7 %, good women by 2.8 ± 2.1 % (Kais et al. 2019); who has their plan in the ear keeps it better than that. A
 * walk alone is too wide early and too narrow late: over the bench's two kinds of people and nine recordings the finish was
 * missed by a share of the rest that hardly depends on how long it is.
 */
const WALKS = [
  { walk: 0.00006, share: 0.25 },
  { walk: 0.00015, share: 0.3 },
  { walk: 0.0003, share: 0.25 },
  { walk: 0.0006, share: 0.2 },
] as const;
const LATER_S = 22;
/** Runners on their own waver by 1 to 2 % (our reading of recordings); some are unruly, or their road is. */
const WAVERS = [
  { waver: 0.009, share: 0.35 },
  { waver: 0.014, share: 0.35 },
  { waver: 0.024, share: 0.2 },
  { waver: 0.048, share: 0.1 },
] as const;
/** Before the start the runner is believed to do what they planned, give or take this. */
const PLAN_SD = 0.02;
/** One stretch counts at most so many deviations: a lace or a toilet is not a manner of running. */
const CLIP = 3;
/**
 * The last minutes are mostly run as the rest, and who runs unevenly ends unevenly: by so many wavers, over so long. But
 * one in five spurts, or breaks, in a way that nothing before it tells, by 6 %: in four recorded races the last tenth was run 0 to
 * 6 % quicker than the rest, in nine recordings the last twentieth at another pace by 5 to 20 %. Of our bench's runners who
 * kick for the last 300 to 800 m, 66 in 100 finish in the interval said at 95 % of the way, with one manner of ending 48.
 */
const END_WAVERS = 1.2;
const END_S = 250;
const SPURTS = { share: 0.2, sd: 0.06 } as const;
/** What a runner showed longer ago than this says less about them now. */
const MEMORY_S = 3600;

export const manners: readonly Manner[] = WALKS.flatMap(({ walk, share: a }) =>
  WAVERS.map(({ waver, share: b }) => ({
    walk,
    waver,
    trend: 0,
    score: Math.log(a * b),
    kept: 1,
    now: 0,
    kk: PLAN_SD ** 2,
    kn: 0,
    nn: waver ** 2,
  })),
);

/** `dtS` seconds pass. */
const pass = (m: Manner, dtS: number): Manner => {
  const keep = Math.exp(-dtS / WAVER_TAU_S);
  return {
    ...m,
    kept: m.kept + m.trend * dtS,
    now: keep * m.now,
    kk: m.kk + m.walk ** 2 * dtS,
    kn: keep * m.kn,
    nn: keep * keep * m.nn + m.waver ** 2 * (1 - keep * keep),
  };
};

/** A mean rate was seen, known to `variance`. */
const see = (m: Manner, rate: number, variance: number): Manner => {
  const byKept = m.kk + m.kn;
  const byNow = m.kn + m.nn;
  const s = byKept + byNow + variance;
  const most = CLIP * Math.sqrt(s);
  const off = Math.min(most, Math.max(-most, rate - m.kept - m.now));
  return {
    ...m,
    score: m.score - (off * off) / (2 * s) - Math.log(s) / 2,
    kept: m.kept + (byKept * off) / s,
    now: m.now + (byNow * off) / s,
    kk: m.kk - (byKept * byKept) / s,
    kn: m.kn - (byKept * byNow) / s,
    nn: m.nn - (byNow * byNow) / s,
  };
};

/** All guesses after `dtS` seconds at whose end a mean rate was seen. */
export const seeAll = (
  all: readonly Manner[],
  rate: number,
  variance: number,
  dtS: number,
): readonly Manner[] => {
  const next = all.map((m) => see(pass(m, dtS), rate, variance));
  const best = Math.max(...next.map((m) => m.score));
  const keep = Math.exp(-dtS / MEMORY_S);
  return next.map((m) => ({ ...m, score: keep * (m.score - best) }));
};

/** Weights of the guesses; they sum to 1. */
export const weightsOf = (all: readonly Manner[]): readonly number[] => {
  const raw = all.map((m) => Math.exp(m.score));
  const sum = raw.reduce((a, b) => a + b, 0);
  return raw.map((w) => w / sum);
};

/** What is left to run, as one guess has it: with an end like the rest, or with a spurt. */
export interface Rest {
  /** How much of the guess it is; all of them sum to 1. */
  readonly share: number;
  /** Schedule seconds passed per second, on average over the rest. */
  readonly rate: number;
  /** Deviation of the schedule seconds that pass in it. */
  readonly sdS: number;
}

/** The rest of a race, `remainingS` seconds long, in the two ways in which it may end. */
export const restsBy = (m: Manner, remainingS: number): readonly Rest[] => {
  const r = Math.max(1e-6, remainingS / WAVER_TAU_S);
  const gone = Math.exp(-r);
  // What is left of the waver now: its integral over the rest per unit of it.
  const nowS = WAVER_TAU_S * (1 - gone);
  const known = remainingS ** 2 * m.kk + 2 * remainingS * nowS * m.kn + nowS ** 2 * m.nn;
  // The integral of the waver to come (a first-order Gauss-Markov process from a known value), and of the walk.
  const byWaver = (m.waver * WAVER_TAU_S) ** 2 * Math.max(0, 2 * r - 3 + 4 * gone - gone * gone);
  const byWalk = (m.walk ** 2 * remainingS ** 3) / 3;
  const byLater = (LATER_S * m.walk * remainingS) ** 2;
  const endS = Math.min(END_S, remainingS);
  const byEnd = (END_WAVERS * m.waver * endS) ** 2;
  const usual = known + byWaver + byWalk + byLater + byEnd;
  const rate = m.kept + (m.trend * remainingS) / 2 + (nowS / (r * WAVER_TAU_S)) * m.now;
  return [
    { share: 1 - SPURTS.share, rate, sdS: Math.sqrt(usual) },
    { share: SPURTS.share, rate, sdS: Math.sqrt(usual + (SPURTS.sd * endS) ** 2) },
  ];
};
