import { WAVER_TAU_S } from './manner.ts';
import { rateNoise } from './noise.ts';
import { beginWaver, noiseShare, seeRate, type Waver, waverVariance } from './waver.ts';

/**
 * Has the runner left the planned pace, and is it real? A sequential test: cumulative sums (Page, E. S.: Continuous
 * inspection schemes. Biometrika 41 (1954), 100-115) of the drift won or lost beyond a slack, in seconds. A sum falls
 * back to zero as long as pace is kept; it passes its limit soon after it is not. The limit grows with the noise: how
 * well the receiver knows the speed now, and how much this runner waves about anyway.
 *
 * This only finds. Whether to speak is a rule's business (core/cues).
 */
export interface Departure {
  /** The departure that the runner has been told of: +0.02 is 2 % quicker than planned; 0: none, or it is over. */
  readonly told: number;
  /** How often it was told without an end to it. */
  readonly times: number;
  /** What it has cost since. */
  readonly cost: Cost;
  readonly quick: Sum;
  readonly slow: Sum;
  /** Evidence that what was told of is over, seconds of drift. */
  readonly backS: number;
  readonly waver: Waver;
  /** How well the speed is known of late, m/s; null before anything was seen. */
  readonly usualSdMps: number | null;
}

/** What a departure that was told of has cost since the last word about it. */
export interface Cost {
  /** Seconds ahead of the plan soon after that word; null until then. */
  readonly fromAheadS: number | null;
  /** Seconds of running that were seen since. */
  readonly forS: number;
  /** Words about it that said no more than that it goes on. */
  readonly reminders: number;
}

/** One side's cumulative sum and what it is made of. */
export interface Sum {
  readonly valueS: number;
  /** Seconds since it left zero, and the departure from plan when it did, as a share of the pace. */
  readonly forS: number;
  readonly first: number;
  /** Drift won or lost since on this side, unclipped, seconds. */
  readonly wonS: number;
  /** Mean departure since, as a share of the pace, the estimate's lag made good. */
  readonly mean: number;
  /** The sum is past its limit. */
  readonly found: boolean;
}

/** What one stretch of time shows. */
export interface Evidence {
  readonly dtS: number;
  /** Schedule seconds passed per second: 1 is as planned. */
  readonly rate: number;
  /** As the estimate knows it: tells how noisy the receiver is. */
  readonly speedSdMps: number;
  /** Planned pace here, seconds per kilometre. */
  readonly paceSPerKm: number;
  /** Departures that are welcome: quicker by this share to make up what was lost, slower to spend what is in hand. */
  readonly quickIsFine: number;
  readonly slowIsFine: number;
  /** The first part of a race, where most are too quick: less evidence is asked for it. */
  readonly quickIsLikely?: boolean;
  /** Seconds ahead of the plan, and how many lost or won since the last word are worth one more; left out: none are. */
  readonly stake?: { readonly aheadS: number; readonly dearS: number };
}

/** The smallest departure worth a word, seconds per kilometre, and the share of it that is let pass as slack. */
const WORTH_S_PER_KM = 6;
const SLACK = 0.5;
/** Sets delay against false alarms: the bench prints both (`npm run bench -- pacing`). */
export const LIMIT = 2.5;
/**
 * In the open the test's own patience (LASTS_S) holds false alarms down; in worse reception, where the estimate lags more
 * than this, each second of lag takes so much more of a limit for the same number of them.
 */
const OPEN_LAG_S = 7.5;
const LIMIT_PER_S = 0.09;
const MORE_AT_MOST = 0.75;
/**
 * Most start too quick (Hanley 2015: at world championships most slow after 5 km). Evidence is a log of odds: where
 * something is four times as likely beforehand, about a quarter less of it is enough.
 */
const LIKELY = 0.75;
/** A sum does not run away: after the runner has come back it is soon at rest. In limits. */
const CAP = 1.5;
/** One second counts at most this many times the smallest departure. */
const CLIP = 3;
/** A sum this young is a stumble; a large slowing (a station, a crowd, a lace) is felt anyway and must last. */
const LASTS_S = 10;
const LARGE = 0.1;
const LARGE_LASTS_S = 25;
/** Share of what the estimate still holds back (its lag times the departure now) that is counted in advance. */
const IN_ADVANCE = 0.6;
/** Where the speed is hardly known the lag means nothing. */
const LAG_MOST_S = 15;

/** What was told of is over when no more than this share of it is left; and that takes surer evidence, so that it is not told twice. */
const BACK = 1 / 3;
const BACK_LIMITS = 2;

/**
 * A departure that was told of and simply goes on is found again when it has become dear (Evidence.stake) and the last
 * minute still shows half of the smallest departure: not before so long, the next time twice as long, and so often at most.
 * Who has not answered by then cannot, or does not want to.
 */
const REMINDED_AFTER_S = 240;
const REMINDERS = 2;
const STILL = 0.5;

const FREE_OF_COST: Cost = { fromAheadS: null, forS: 0, reminders: 0 };
const RESTING: Sum = { valueS: 0, forS: 0, first: 0, wonS: 0, mean: 0, found: false };

export const beginDeparture: Departure = {
  told: 0,
  times: 0,
  cost: FREE_OF_COST,
  quick: RESTING,
  slow: RESTING,
  backS: 0,
  waver: beginWaver,
  usualSdMps: null,
};

/** Sums at rest; what was learned of the runner stays, and what was told stays told. */
export const rest = (departure: Departure): Departure =>
  departure.quick === RESTING && departure.slow === RESTING && departure.backS === 0
    ? departure
    : { ...departure, quick: RESTING, slow: RESTING, backS: 0 };

/** A new target: nothing has been told about it. */
export const newTarget = (departure: Departure): Departure => ({
  ...rest(departure),
  told: 0,
  times: 0,
  cost: FREE_OF_COST,
});

/** The runner has been told of the departure on one side. */
export const tell = (departure: Departure, side: 'quick' | 'slow'): Departure => {
  const told = side === 'quick' ? departure.quick.mean : -departure.slow.mean;
  const goesOn = told * departure.told > 0;
  const { reminders } = departure.cost;
  if (goesOn && isDear(departure))
    return { ...rest(departure), told, cost: { ...FREE_OF_COST, reminders: reminders + 1 } };
  const cost = goesOn ? { ...FREE_OF_COST, reminders } : FREE_OF_COST;
  return { ...rest(departure), told, times: goesOn ? departure.times + 1 : 1, cost };
};

/** The departure that was told of is found because of what it has cost, not because it has grown. */
const isDear = ({ told, cost, quick, slow }: Departure): boolean => {
  const sum = told > 0 ? quick : slow;
  return sum.found && sum.valueS === 0 && cost.forS > 0;
};

/** What noise there is in the rate: its power per second of averaging, and the lag that the estimate pays for it. */
interface Noise {
  readonly power: number;
  readonly lagS: number;
}

const noiseOf = (waver: Waver, e: Evidence): Noise => {
  const { power, lagS, variance } = rateNoise(e.speedSdMps, e.paceSPerKm);
  const receiver = power * noiseShare(waver, variance, lagS);
  return { power: receiver + 2 * WAVER_TAU_S * waverVariance(waver, variance, lagS), lagS };
};

/** @param away departure on this side; @param beyond the same, clipped, less what is told or welcome and the slack */
const grow = (sum: Sum, away: number, beyond: number, limitS: number, lagS: number, dtS: number): Sum => {
  const valueS = Math.min(sum.valueS + beyond * dtS, CAP * limitS);
  if (valueS <= 0) return RESTING;
  const forS = sum.forS + dtS;
  const first = sum.forS === 0 ? away : sum.first;
  const wonS = sum.wonS + away * dtS;
  // What an estimate y with a lag has not shown yet of the speed u behind it: ∫u = ∫y + lag (y now − y then).
  const mean = (wonS + lagS * (away - first)) / forS;
  const found = beyond > 0 && forS >= LASTS_S && valueS + IN_ADVANCE * lagS * beyond > limitS;
  return { valueS, forS, first, wonS, mean, found };
};

/**
 * Behind a station, a stop or a stumble the estimate has opened up to follow it, and its speed errs by more than it says
 * for a minute (in town by 8 s/km where it says 6): that is no time to judge a pace. Where reception itself has become
 * worse, that is the usual before long.
 */
const SHAKEN = 1.15;
const USUAL_S = 200;

/** Takes in how well the speed is known; the usual before the first. */
const usualWith = (before: number | null, { speedSdMps, dtS }: Evidence): number =>
  before === null ? speedSdMps : before + ((speedSdMps - before) * Math.min(dtS, USUAL_S)) / USUAL_S;

/** How far from the plan a rate is on the side that was told, less what is welcome there; a share. */
const beyondWelcome = (told: number, rate: number, { quickIsFine, slowIsFine }: Evidence): number =>
  told > 0 ? rate - 1 - quickIsFine : 1 - rate - slowIsFine;

const costWith = ({ fromAheadS, forS, reminders }: Cost, { dtS, stake }: Evidence): Cost => ({
  fromAheadS: fromAheadS ?? stake?.aheadS ?? null,
  forS: forS + dtS,
  reminders,
});

/** Is one more word worth it? What was won back from behind, or spent of what was in hand, has cost nothing. */
const isWorthMore = ({ told, cost, waver }: Departure, e: Evidence): boolean => {
  if (told === 0 || e.stake === undefined || cost.fromAheadS === null || cost.reminders >= REMINDERS)
    return false;
  const { aheadS, dearS } = e.stake;
  const side = Math.sign(told);
  const costS = side * aheadS - Math.max(0, side * cost.fromAheadS);
  if (costS < dearS || cost.forS < REMINDED_AFTER_S * 2 ** cost.reminders) return false;
  return beyondWelcome(told, waver.middle, e) >= (STILL * WORTH_S_PER_KM) / e.paceSPerKm;
};

/** Where what was told of goes on and has become dear, its side is found again: as it was in the last minute. */
const withReminder = (departure: Departure, e: Evidence): Departure => {
  const { told, cost, quick, slow, waver } = departure;
  if (quick.found || slow.found || !isWorthMore(departure, e)) return departure;
  const again: Sum = { ...RESTING, forS: cost.forS, mean: Math.sign(told) * (waver.middle - 1), found: true };
  return told > 0 ? { ...departure, quick: again } : { ...departure, slow: again };
};

/**
 * Takes in a stretch of running on good evidence.
 * @param limit for the bench, which draws the curve
 */
export const follow = (departure: Departure, e: Evidence, limit = LIMIT): Departure => {
  const { told, times, quick, slow } = departure;
  const usualSdMps = usualWith(departure.usualSdMps, e);
  if (e.speedSdMps > SHAKEN * usualSdMps) return { ...rest(departure), usualSdMps };
  const waver = seeRate(departure.waver, e.rate, e.dtS);
  const worth = WORTH_S_PER_KM / e.paceSPerKm;
  const slack = SLACK * worth;
  const noise = noiseOf(departure.waver, e);
  const lagS = Math.min(LAG_MOST_S, noise.lagS);
  const more = Math.min(MORE_AT_MOST, Math.max(0, LIMIT_PER_S * (noise.lagS - OPEN_LAG_S)));
  const limitS = ((limit + more) * noise.power) / (2 * slack);
  const away = e.rate - 1;
  const most = CLIP * worth;
  const beyond = (side: number, welcome: number): number => {
    // Once told, only what is plainly worse counts, and the worse the more often it was told: nobody is nagged.
    const known = side * told > 0 ? Math.abs(told) + times * worth : 0;
    return Math.min(most, Math.max(-most, side * away - Math.max(known, welcome) - slack));
  };
  const quickLimitS = e.quickIsLikely ? LIKELY * limitS : limitS;
  const nextQuick = grow(quick, away, beyond(1, e.quickIsFine), quickLimitS, lagS, e.dtS);
  const nextSlow = grow(slow, -away, beyond(-1, e.slowIsFine), limitS, lagS, e.dtS);
  const stumble = nextSlow.mean > LARGE && nextSlow.forS < LARGE_LASTS_S;
  const bound = Math.max(most, Math.abs(told));
  const short = BACK * Math.abs(told) - Math.sign(told) * Math.min(bound, Math.max(-bound, away));
  const backS = told === 0 ? 0 : Math.max(0, departure.backS + short * e.dtS);
  const next: Departure = {
    told,
    times,
    cost: told === 0 ? FREE_OF_COST : costWith(departure.cost, e),
    quick: nextQuick,
    slow: stumble && nextSlow.found ? { ...nextSlow, found: false } : nextSlow,
    backS,
    waver,
    usualSdMps,
  };
  if (backS > BACK_LIMITS * limitS) return { ...next, told: 0, times: 0, cost: FREE_OF_COST, backS: 0 };
  return withReminder(next, e);
};
