import { type Doppler, firstDoppler, judgeSpeed } from './doppler.ts';
import * as filter from './freeFilter.ts';
import { bySpeeds, type Doubted, speedTaken } from './freeSpeeds.ts';
import type { Gaussian } from './kalman.ts';
import { copyOf } from './kalman.ts';
import type { PlaneFix } from './planeFix.ts';
import type { ReceiverPrior } from './receiver.ts';

/** The filter without a line, from the start on. Until a heading shows itself there is only a place and a time. */
export type FreeTrack =
  | {
      readonly stage: 'waiting';
      readonly timeMs: number;
      readonly first: PlaneFix | null;
      readonly startMs: number;
    }
  | {
      readonly stage: 'running';
      readonly g: Gaussian;
      readonly timeMs: number;
      readonly doppler: Doppler;
      readonly refusedS: number;
      /** Running mean of the time between fixes. */
      readonly usualStepS: number;
      /** The last fix as it came, before the filter. */
      readonly last: PlaneFix;
      readonly leaps: boolean;
      readonly doubted: Doubted | null;
      /** The last seconds once more, as they came in: a corner is only seen when it is past. */
      readonly recent: readonly Recent[];
    };

type RunningTrack = Extract<FreeTrack, { stage: 'running' }>;

interface Recent {
  readonly g: Gaussian;
  readonly timeMs: number;
  readonly fix: PlaneFix;
  readonly doppler: Doppler;
}

/** A heading is believed once the runner is this far from where they were. */
const HEADING_AFTER_M = 10;
/** A position this far out may be a corner; the heading is then set free. */
const CORNER2 = 9;
const CORNER_RAD = 0.8;
/** Further than the legs can go in the time: the receiver jumped, not the runner. */
const REACH_SPARE_M = 9;
const REACH_FACTOR = 1.5;
/** After this long the receiver is right again, wherever it now is. */
const PATIENCE_S = 12;
const START_SD_M = 1.5;
/** Fixes further apart than this are taken as straight ways between places. */
const SPARSE_S = 2.4;
const SPARSE_ON_AVERAGE_S = 2;
const STEP_LEARN = 0.1;
/** Noise of one place against the next, per axis: the quick part and what the slow part wanders in the time. */
const STEP_NOISE_M = 0.8;
/** The noise of one way is taken back by the next: added up, little of it is left. */
const STEPS_CORRELATE = 0.2;
/** Longer than this, and than three usual steps, nothing was seen: a tunnel, or a recorder that paused. */
const LONG_GAP_S = 8;
/** Who comes out nearer than this share of what the legs could go has stood still. */
const PAUSED_SHARE = 0.35;
const GAP_SD_SHARE = 0.08;
/** A corner shows itself within so many seconds. */
const CORNER_S = 5;

export const beginFree = (startMs: number): FreeTrack => ({
  stage: 'waiting',
  timeMs: startMs,
  first: null,
  startMs,
});

export const takeFreeFix = (
  t: FreeTrack,
  fix: PlaneFix,
  prior: ReceiverPrior,
): { track: FreeTrack; used: boolean } => {
  if (t.stage === 'waiting') {
    if (!t.first) return { track: { ...t, first: fix, timeMs: fix.timeMs }, used: true };
    const east = fix.eastM - t.first.eastM;
    const north = fix.northM - t.first.northM;
    const away = Math.hypot(east, north);
    if (away < HEADING_AFTER_M) return { track: { ...t, timeMs: fix.timeMs }, used: true };
    // Between the start and the first fix after it the runner was on the way already.
    const sinceS = Math.max(0.5, (fix.timeMs - t.first.timeMs) / 1000);
    const beforeM = (away / sinceS) * Math.max(0, (t.first.timeMs - t.startMs) / 1000);
    const g = filter.firstBelief(
      fix.eastM,
      fix.northM,
      Math.atan2(east, north),
      away + Math.min(beforeM, away),
      START_SD_M + 2,
      prior,
      fix.speedMps !== null,
    );
    return {
      track: {
        stage: 'running',
        g,
        timeMs: fix.timeMs,
        doppler: firstDoppler,
        refusedS: 0,
        last: fix,
        recent: [],
        doubted: null,
        leaps: false,
        usualStepS: 1,
      },
      used: true,
    };
  }
  const dtS = Math.max(0, (fix.timeMs - t.timeMs) / 1000);
  const before: Recent = { g: t.g, timeMs: t.timeMs, fix, doppler: t.doppler };
  const recent = [...t.recent, before].filter((r) => fix.timeMs - r.timeMs <= CORNER_S * 1000);
  const usualStepS = t.usualStepS + STEP_LEARN * (Math.min(dtS, 2 * SPARSE_S) - t.usualStepS);
  if (dtS > LONG_GAP_S && dtS > 3 * usualStepS)
    return { track: { ...gapStep(t, fix, dtS), usualStepS }, used: true };
  if ((dtS > SPARSE_S || usualStepS > SPARSE_ON_AVERAGE_S) && fix.speedMps === null)
    return { track: { ...sparseStep(t, fix, dtS), usualStepS }, used: true };
  const { g, doppler } = bySpeeds(t, fix) ?? oneFix(t.g, t.timeMs, t.doppler, fix, false);
  if (fix.speedMps !== null) {
    // Places would only shorten the way by what they cut at corners and by their noise: speed is the better odometer.
    filter.moveTo(g, fix.eastM, fix.northM);
    const refused = doppler.refused > 0 && t.last.speedMps !== null;
    const doubted = refused ? { g: t.g, timeMs: t.timeMs, lastMps: t.last.speedMps } : null;
    return {
      track: {
        stage: 'running',
        g,
        timeMs: fix.timeMs,
        doppler,
        refusedS: 0,
        last: fix,
        usualStepS,
        recent: [],
        doubted,
        leaps: t.leaps,
      },
      used: true,
    };
  }
  const reachM = REACH_FACTOR * filter.speedOf(t.g) * (dtS + t.refusedS) + REACH_SPARE_M;
  const running = {
    stage: 'running' as const,
    timeMs: fix.timeMs,
    doppler,
    last: fix,
    usualStepS,
    doubted: null,
    leaps: t.leaps,
  };
  if (filter.awayM(t.g, fix.eastM, fix.northM) > reachM) {
    const refusedS = t.refusedS + dtS;
    const waited = refusedS >= PATIENCE_S;
    if (waited) {
      filter.moveTo(g, fix.eastM, fix.northM);
      filter.loosenHeading(g, CORNER_RAD);
    }
    return { track: { ...running, g, refusedS: waited ? 0 : refusedS, recent: [] }, used: waited };
  }
  if (filter.fitPosition(g, fix.eastM, fix.northM, fix.extraSdM) > CORNER2) {
    // A corner: go back to before it and come again with the heading free to turn.
    const from = recent[0] ?? before;
    let again = from.g;
    let timeMs = from.timeMs;
    for (const r of recent) {
      again = oneFix(again, timeMs, r.doppler, r.fix, true).g;
      filter.takePosition(again, r.fix.eastM, r.fix.northM, r.fix.extraSdM);
      timeMs = r.fix.timeMs;
    }
    return { track: { ...running, g: again, refusedS: 0, recent: [] }, used: true };
  }
  filter.takePosition(g, fix.eastM, fix.northM, fix.extraSdM);
  return { track: { ...running, g, refusedS: 0, recent }, used: true };
};

/**
 * Fixes far apart: between two of them a street can turn, so that a heading says little, but the straight way between
 * them is long against the noise of its ends. That way, less what the noise adds to it, is a speed.
 */
const sparseStep = (t: RunningTrack, fix: PlaneFix, dtS: number): RunningTrack => {
  const g = copyOf(t.g);
  const straightM = Math.hypot(fix.eastM - t.last.eastM, fix.northM - t.last.northM);
  const wayM = Math.sqrt(Math.max(0, straightM ** 2 - 2 * STEP_NOISE_M ** 2));
  filter.stepBy(g, dtS, wayM, 2 * STEP_NOISE_M ** 2 * STEPS_CORRELATE);
  const speedMps = wayM / dtS;
  const sdMps = (Math.SQRT2 * STEP_NOISE_M) / dtS;
  const { innovation, variance } = filter.fitSpeed(g, speedMps);
  const judged = judgeSpeed({ ...t.doppler, variance: sdMps ** 2 }, innovation, variance);
  if (judged.verdict === 'changed') filter.loosenSpeed(g, Math.abs(innovation));
  if (judged.verdict !== 'refuse') filter.takeSpeed(g, speedMps, sdMps);
  filter.moveTo(g, fix.eastM, fix.northM);
  if (straightM > HEADING_AFTER_M / 2)
    filter.headTo(g, Math.atan2(fix.eastM - t.last.eastM, fix.northM - t.last.northM), CORNER_RAD / 2);
  const doppler = { ...t.doppler, refused: judged.doppler.refused };
  return { ...t, g, timeMs: fix.timeMs, doppler, refusedS: 0, last: fix, recent: [], doubted: null };
};

/** After a tunnel: the way by the pace before it, or the straight way where that is longer; the place and heading anew. */
const gapStep = (t: RunningTrack, fix: PlaneFix, dtS: number): RunningTrack => {
  const g = copyOf(t.g);
  const straightM = Math.hypot(fix.eastM - t.last.eastM, fix.northM - t.last.northM);
  const byPaceM = Math.max(0, filter.speedOf(g)) * dtS;
  const wayM = straightM < PAUSED_SHARE * byPaceM ? straightM : Math.max(straightM, byPaceM);
  filter.stepBy(g, dtS, wayM, (GAP_SD_SHARE * byPaceM) ** 2);
  filter.moveTo(g, fix.eastM, fix.northM);
  filter.headTo(g, Math.atan2(fix.eastM - t.last.eastM, fix.northM - t.last.northM), 2 * CORNER_RAD);
  return { ...t, g, timeMs: fix.timeMs, refusedS: 0, last: fix, recent: [], doubted: null };
};

/** Moves on to a fix and takes its speed in; the position is left to the caller. */
const oneFix = (
  from: Gaussian,
  timeMs: number,
  before: Doppler,
  fix: PlaneFix,
  turning: boolean,
): { readonly g: Gaussian; readonly doppler: Doppler } => {
  const g = copyOf(from);
  filter.advance(g, Math.max(0, (fix.timeMs - timeMs) / 1000));
  if (turning) filter.loosenHeading(g, CORNER_RAD);
  return fix.speedMps === null ? { g, doppler: before } : speedTaken(g, before, fix.speedMps);
};

export interface FreeBelief {
  readonly distanceM: number;
  readonly distanceSdM: number;
  readonly speedMps: number;
  readonly speedSdMps: number;
  readonly baseSpeedMps: number;
}

/** A usual race speed, for the seconds before anything is known. */
const FIRST_STEP_MPS = 3;

export const freeBeliefAt = (t: FreeTrack, timeMs: number): FreeBelief => {
  if (t.stage === 'waiting') {
    const sinceS = Math.max(0, (timeMs - t.startMs) / 1000);
    const distanceM = FIRST_STEP_MPS * sinceS;
    return {
      distanceM,
      distanceSdM: START_SD_M + 0.5 * distanceM,
      speedMps: FIRST_STEP_MPS,
      speedSdMps: 1.5,
      baseSpeedMps: FIRST_STEP_MPS,
    };
  }
  const g = copyOf(t.g);
  filter.advance(g, (timeMs - t.timeMs) / 1000);
  return {
    distanceM: filter.distanceOf(g),
    distanceSdM: Math.sqrt(filter.distanceVarOf(g)),
    speedMps: filter.officialSpeedOf(g),
    speedSdMps: Math.sqrt(filter.speedVarOf(g)),
    baseSpeedMps: filter.baseSpeedOf(g),
  };
};

/** On by a speed that was measured beside the fixes, which have stopped. A scale that is off is off all the way. */
export const podStep = (
  t: FreeTrack,
  timeMs: number,
  speedMps: number,
  scaleSdMps: number,
  sdMps: number,
): FreeTrack => {
  if (t.stage === 'waiting' || timeMs <= t.timeMs) return t;
  const g = copyOf(t.g);
  const dtS = (timeMs - t.timeMs) / 1000;
  const goneS = Math.max(dtS, (timeMs - t.last.timeMs) / 1000);
  const grownM2 = scaleSdMps ** 2 * (goneS ** 2 - (goneS - dtS) ** 2);
  filter.stepBy(g, dtS, speedMps * dtS, grownM2 + (sdMps * dtS) ** 2);
  filter.takeSpeed(g, speedMps, Math.hypot(sdMps, scaleSdMps));
  return { ...t, g, timeMs, recent: [], doubted: null };
};

/** A press at a board: distance known to within the human and the board. */
export const pressFree = (t: FreeTrack, timeMs: number, boardM: number, sdM: number): FreeTrack => {
  if (t.stage === 'waiting') return t;
  const g = copyOf(t.g);
  filter.advance(g, (timeMs - t.timeMs) / 1000);
  filter.takeDistance(g, boardM, sdM);
  return { ...t, g, timeMs };
};
