import type { CourseLine } from '../course/line.ts';
import * as motion from './courseMotion.ts';
import * as readings from './courseReadings.ts';
import * as course from './courseState.ts';
import { type Doppler, firstDoppler, judgeSpeed } from './doppler.ts';
import { type Hills, hillsAlong, type Road } from './hills.ts';
import type { Gaussian } from './kalman.ts';
import { copyOf } from './kalman.ts';
import type { PlaneFix } from './planeFix.ts';
import type { ReceiverPrior } from './receiver.ts';
import * as receiver from './receiver.ts';
import { ASIDE_SD_M, getawayVar } from './runner.ts';

/** The filter with what it has learned of the receiver so far. */
export interface CourseTrack {
  readonly g: Gaussian;
  readonly timeMs: number;
  /** Of the line that it is on; null where that has no heights. */
  readonly hills: Hills | null;
  /** When the runner crossed the start line. */
  readonly startMs: number;
  /** The line's metres are not the official ones: it says where the runner is, not how far they have come. */
  readonly untied: boolean;
  /** Corners of the line gone round so far. */
  readonly passed: number;
  /** Running mean square of how far across the line fixes fall, m². */
  readonly acrossM2: number;
  /** Weight of that mean, in seconds of evidence. */
  readonly evidenceS: number;
  readonly doppler: Doppler;
  /** The first of the readings refused in a row; null while readings are used. */
  readonly firstRefused: PlaneFix | null;
  /** Where a fix was some seconds ago, and where it was expected; null before the first. */
  readonly mark: Mark | null;
  /** Log of how well the latest fix fitted, bounded below: to weigh rival tracks by. */
  readonly fit: number;
}

/** The first belief about the receiver weighs as much as this many seconds of what it shows. */
const PRIOR_S = 60;
/** Streets change: what was seen longer ago than this fades. */
const MEMORY_S = 500;
/** A fix this far out (squared Mahalanobis distance, 2 degrees of freedom: one in 8000) is not of this belief. */
const GATE2 = 18;
/** However wide the belief, a line that bends leads nowhere from so far off: such a place is looked for along the line. */
const LEAP_M = 100;
/** Bursts last 10 to 40 s; readings that disagree for longer are right and the belief is wrong. */
const PATIENCE_S = 40;
/** A change of speed is noticed so late. */
const UNNOTICED_S = 1.5;
/** So long must refused readings go another speed than believed, and by so much, to be the runner's doing. */
const OTHER_SPEED_S = 4;
const OTHER_SPEED_MPS = 1.3;
/** A runner who stops or starts changes by no more than this at once. */
const CHANGE_MPS = 4;

/** How fast readings have gone since a first one, as the crow flies. */
const speedSince = (first: PlaneFix, fix: PlaneFix): number =>
  Math.hypot(fix.eastM - first.eastM, fix.northM - first.northM) /
  Math.max(0.001, (fix.timeMs - first.timeMs) / 1000);

/** A place as it was read, and as it was expected. */
interface Mark {
  readonly timeMs: number;
  readonly read: readonly [eastM: number, northM: number];
  readonly expected: readonly [eastM: number, northM: number];
  /** Whether the places had gone plainly further (1) or less far (-1) than expected since the mark before it. */
  readonly leaning: -1 | 0 | 1;
}

/** What comes to the quick error of a place in such a time: rounding, and what the slow one wanders. */
const WHITE_AND_AIR_M = 0.6;
/** Places this far apart in time tell a speed. */
const MARK_MS = 4000;
/** Between places further apart anything may have been. */
const MARK_STALE_MS = 20_000;
/** Noise of two places against their difference: so many standard deviations are no noise. */
const NOISE_SDS = 2;

const markAt = (fix: PlaneFix, e: readings.Expectation, from: Mark | null, noiseM: number): Mark => {
  const read = [fix.eastM, fix.northM] as const;
  const expected = [e.placeEastM, e.placeNorthM] as const;
  const mark: Mark = { timeMs: fix.timeMs, read, expected, leaning: 0 };
  if (from === null || fix.timeMs - from.timeMs > MARK_STALE_MS) return mark;
  const offMps = offBetween(from, mark);
  const noiseMps = (1000 * NOISE_SDS * Math.SQRT2 * noiseM) / (fix.timeMs - from.timeMs);
  return Math.abs(offMps) < Math.max(OTHER_SPEED_MPS, noiseMps)
    ? mark
    : { ...mark, leaning: offMps > 0 ? 1 : -1 };
};

const offBetween = (from: Mark, to: Mark): number => {
  const way = (of: 'read' | 'expected'): number =>
    Math.hypot(to[of][0] - from[of][0], to[of][1] - from[of][1]);
  return (1000 * (way('read') - way('expected'))) / (to.timeMs - from.timeMs);
};

/**
 * Without a Doppler speed a change of pace first looks like an error of the receiver that grows, and would be taken for
 * one: so what the places went in some seconds is held against what was expected of them. Twice plainly the same way is
 * the runner's doing; a burst of the receiver goes once and comes back. In place.
 */
const heedOtherSpeed = (g: Gaussian, from: Mark | null, to: Mark): void => {
  if (from === null || to.leaning === 0 || to.leaning !== from.leaning) return;
  const offMps = Math.abs(offBetween(from, to));
  course.loosenSpeed(g, Math.min(offMps, CHANGE_MPS));
  course.loosenPlace(g, (offMps * (to.timeMs - from.timeMs)) / 1000, 0);
};

/** A fix that does not fit counts against a rival no more than this, however far out it is. */
const WORST_FIT = -14;

const slowSdOf = (acrossM2: number): number =>
  Math.min(
    receiver.SLOW_SD_MAX_M,
    Math.max(receiver.SLOW_SD_MIN_M, Math.sqrt(Math.max(0, acrossM2 - ASIDE_SD_M ** 2))),
  );

export const airNow = (t: CourseTrack): receiver.Air => receiver.airOf(slowSdOf(t.acrossM2));

/** A track that begins at a known place. */
export const beginTrack = (
  line: CourseLine,
  timeMs: number,
  distanceM: number,
  sdM: number,
  prior: ReceiverPrior,
): CourseTrack => ({
  g: course.firstBelief(receiver.airOf(prior.slowSdM), prior, distanceM, sdM, line.endSdM),
  timeMs,
  hills: hillsAlong(line),
  startMs: timeMs,
  untied: false,
  passed: 0,
  acrossM2: prior.slowSdM ** 2 + ASIDE_SD_M ** 2,
  evidenceS: PRIOR_S,
  doppler: firstDoppler,
  firstRefused: null,
  mark: null,
  fit: 0,
});

/** The belief at a later time, by prediction alone. */
export const predictTrack = (line: CourseLine, t: CourseTrack, timeMs: number): Gaussian =>
  movedOn(line, t, copyOf(t.g), timeMs);

/** The same of the runner's way alone, which is asked for more often than fixes come. */
export const wayOfTrack = (line: CourseLine, t: CourseTrack, timeMs: number): Gaussian =>
  movedOn(line, t, course.wayOf(t.g), timeMs);

const movedOn = (line: CourseLine, t: CourseTrack, g: Gaussian, timeMs: number): Gaussian => {
  const dtS = (timeMs - t.timeMs) / 1000;
  motion.advance(g, { line, hills: t.hills }, airNow(t), dtS, getawayVar((timeMs - t.startMs) / 1000, dtS));
  return g;
};

/** The belief at a time, to look at only. */
export const beliefOfTrack = (line: CourseLine, t: CourseTrack, timeMs: number): Gaussian =>
  timeMs <= t.timeMs ? t.g : predictTrack(line, t, timeMs);

const takeSpeed = (g: Gaussian, hills: Hills | null, doppler: Doppler, speedMps: number): Doppler => {
  const seen = readings.fitSpeed(g, hills, speedMps);
  const { innovation, variance } = seen;
  const judged = judgeSpeed(doppler, innovation, variance);
  if (judged.verdict === 'changed') {
    course.loosenSpeed(g, Math.abs(innovation));
    // For a second or two the runner went at the new speed and the belief at the old one.
    course.loosenPlace(g, Math.abs(innovation) * UNNOTICED_S, 0);
  }
  if (judged.verdict !== 'refuse') readings.takeSpeed(g, seen, Math.sqrt(doppler.variance));
  return judged.doppler;
};

/** Takes a fix in; pure. `used` is false where its position was refused. */
export const takeFix = (
  line: CourseLine,
  t: CourseTrack,
  fix: PlaneFix,
): { track: CourseTrack; used: boolean } => {
  const road: Road = { line, hills: t.hills };
  const dtS = Math.max(0, (fix.timeMs - t.timeMs) / 1000);
  const g = predictTrack(line, t, fix.timeMs);
  const passed = motion.roundCorners(g, line, t.passed);
  const doppler = fix.speedMps === null ? t.doppler : takeSpeed(g, t.hills, t.doppler, fix.speedMps);
  if (fix.placeless) return { track: { ...t, g, timeMs: fix.timeMs, passed, doppler }, used: true };
  const expected = readings.expectAt(road, g.x);
  const isDue = t.mark === null || fix.timeMs - t.mark.timeMs >= MARK_MS;
  const fresh = isDue ? markAt(fix, expected, t.mark, WHITE_AND_AIR_M + airNow(t).quickSdM) : t.mark;
  const mark = fix.speedMps === null ? fresh : null;
  if (mark !== null && isDue) heedOtherSpeed(g, t.mark, mark);
  const fit = readings.fitPosition(g, expected, fix);
  const base = {
    g,
    timeMs: fix.timeMs,
    hills: t.hills,
    startMs: t.startMs,
    untied: t.untied,
    mark,
    passed,
    doppler,
    fit: Math.max(WORST_FIT, fit.logLikelihood),
  };
  const evidenceS = Math.min(MEMORY_S, t.evidenceS + dtS);
  const across = readings.acrossM(expected, fix);
  const bound = 3 * Math.sqrt(t.acrossM2);
  const seen = Math.min(across ** 2, bound ** 2);
  const acrossM2 = t.acrossM2 + Math.min(1, dtS / evidenceS) * (seen - t.acrossM2);
  const away = Math.hypot(fit.innovationEastM, fit.innovationNorthM);
  if (fit.distance2 > GATE2 || away > LEAP_M) {
    const first = t.firstRefused ?? fix;
    const seenS = (fix.timeMs - first.timeMs) / 1000;
    const otherMps = Math.abs(speedSince(first, fix) - course.speedOf(g, t.hills));
    if (fix.speedMps === null && seenS >= OTHER_SPEED_S && otherMps > OTHER_SPEED_MPS) {
      // A receiver that errs goes along with the runner; these readings stand, or run away: so does the runner.
      course.loosenSpeed(g, Math.min(otherMps, CHANGE_MPS));
      course.loosenPlace(g, away, 0);
    } else if (seenS < PATIENCE_S) {
      return { track: { ...base, acrossM2, evidenceS, firstRefused: first }, used: false };
    } else if (t.untied) course.loosenLine(g, away, away);
    else course.loosenPlace(g, away, away);
  }
  readings.takePosition(g, road, expected, fix);
  readings.boundLag(g);
  return { track: { ...base, acrossM2, evidenceS, firstRefused: null }, used: true };
};
