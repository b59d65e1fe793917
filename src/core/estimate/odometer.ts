import { distanceOf } from './freeFilter.ts';
import { beginFree, type FreeTrack, takeFreeFix } from './freeTracker.ts';
import type { PlaneFix } from './planeFix.ts';
import type { ReceiverPrior } from './receiver.ts';

/**
 * The second witness beside the line: the way as the receiver alone tells it, by the filter that knows no line. Where
 * the two part by more than either may err, one of them is wrong, and the estimate says so.
 */
export interface Odometer {
  readonly track: FreeTrack;
  /** What it showed at the last fix, m. */
  readonly freeM: number;
  /** Where on the line that fix was, m; null where it did not fit the line. */
  readonly placeM: number | null;
  /** By how much the line has gone further than the odometer, over the way on which both were seen. */
  readonly apartM: number;
  /** That way, by the odometer. */
  readonly seenM: number;
  readonly hasSpeed: boolean;
  /** Way on the line and off it, m, as looked at now and then; when that was last, by the odometer. */
  readonly onM: number;
  readonly offM: number;
  readonly lookedM: number;
}

export const beginOdometer = (startMs: number): Odometer => ({
  track: beginFree(startMs),
  freeM: 0,
  placeM: null,
  apartM: 0,
  seenM: 0,
  hasSpeed: false,
  onM: 0,
  offM: 0,
  lookedM: 0,
});

/** Over a longer step the odometer saw nothing of the way. */
const LONGEST_STEP_MS = 9_000;
/** The place on the line was found anew: no witness of the way. */
const LEAP_M = 25;

/** So often it is looked at whether the runner is on the line at all. */
const LOOK_EVERY_M = 25;
/** Receivers err by less, and roads are narrower. */
const OFF_LINE_M = 80;
/** After so much of it, and more than what they ran on it, the line is not the runner's way. */
const NOT_THE_WAY_M = 300;

const looked = (o: Odometer, asideM: () => number): Odometer => {
  const wayM = o.freeM - o.lookedM;
  if (wayM < LOOK_EVERY_M) return o;
  // Out of the dark: where the runner was in there nobody has seen.
  if (wayM > 4 * LOOK_EVERY_M) return { ...o, lookedM: o.freeM };
  return asideM() > OFF_LINE_M
    ? { ...o, lookedM: o.freeM, offM: o.offM + wayM }
    : { ...o, lookedM: o.freeM, onM: o.onM + wayM };
};

/** Whether the line has shown itself to be of another way, or none. */
export const isNotTheWay = ({ onM, offM }: Odometer): boolean => offM > NOT_THE_WAY_M && offM > onM;

/**
 * @param placeM where on the line the fix is believed; null where it did not fit
 * @param asideM how far off the line near there it is
 */
export const turnOdometer = (
  o: Odometer,
  fix: PlaneFix,
  placeM: number | null,
  asideM: () => number,
  prior: ReceiverPrior,
): Odometer => {
  const { track } = takeFreeFix(o.track, fix, prior);
  const freeM = track.stage === 'running' ? distanceOf(track.g) : 0;
  const hasSpeed = fix.speedMps !== null;
  const next = looked({ ...o, track, freeM, placeM, hasSpeed }, asideM);
  if (placeM === null || o.placeM === null || o.track.stage === 'waiting') return next;
  const wayM = freeM - o.freeM;
  const apartM = placeM - o.placeM - wayM;
  if (fix.timeMs - o.track.timeMs > LONGEST_STEP_MS || Math.abs(apartM) > LEAP_M) return next;
  return { ...next, apartM: o.apartM + apartM, seenM: o.seenM + wayM };
};

/** Lines err by so much from place to place without being wrong. */
const LOCAL_M = 10;
/** An odometer by speeds is right to this share (runners leave the shortest line, speeds have a scale), by places to that. */
const BY_SPEEDS = 0.004;
const BY_PLACES = 0.012;

/** By how much line and odometer may part without a fault of either, one standard deviation. */
export const mayPartM = ({ seenM, hasSpeed }: Odometer): number =>
  Math.hypot(LOCAL_M, (hasSpeed ? BY_SPEEDS : BY_PLACES) * seenM);
