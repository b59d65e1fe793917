import { legM } from '../geo/ruler.ts';
import type { Fix } from './input.ts';

/**
 * Whether a receiver's speeds are speeds. Some fill in zeros between true ones, some repeat one value, some count in
 * other units than metres a second. What they amount to over a quarter of a minute is held against the way between the
 * places: never shorter than it, and longer only where the road winds.
 */
export interface SpeedCheck {
  /** Where the window began; null before the first fix with a speed. */
  readonly from: Fix | null;
  readonly last: Fix | null;
  /** What the speeds amount to since then, m. */
  readonly bySpeedM: number;
  /** Weight of the windows, one after the other, in which they were no speeds. */
  readonly against: number;
  readonly believed: boolean;
  /** Readings one after the other with the very same speed. */
  readonly repeats: number;
  /** The last speed that was believed. */
  readonly believedMps: number;
}

export const beginSpeedCheck: SpeedCheck = {
  from: null,
  last: null,
  bySpeedM: 0,
  against: 0,
  believed: true,
  repeats: 0,
  believedMps: 0,
};

const WINDOW_MS = 15_000;
/** Over a gap speeds say nothing of the way. */
const GAP_MS = 9_000;
/** A window in which the runner hardly moved shows nothing. */
const LEAST_M = 25;
/** Round the bend of a track the straight way is 0.8 of the way run; shorter than this it is another unit. */
const WINDING_SHARE = 0.72;
const FAR_TOO_QUICK_SHARE = 0.6;
/** The straight way can only be longer by the noise of its ends. */
const TOO_SLOW_SHARE = 1.25;
const FAR_TOO_SLOW_SHARE = 1.6;
const NOISE_M = 8;
/** Two windows that are plainly wrong, or four that are wrong, in a row; to be believed again, as many that are right. */
const AGAINST = 4;

/** Faster than any runner keeps up. */
const MOST_MPS = 9;
/** A receiver that gives the same speed so often, to the centimetre, repeats it. */
const STUCK_REPEATS = 20;
/** From running to standing by the reading, while the place goes on like this: a zero that was filled in. */
const RUNNING_MPS = 2;
const STANDING_MPS = 0.5;
const GOES_ON_MPS = 1.5;

/** How much a window speaks against the speeds: 0 where it speaks for them, null where it shows nothing. */
const weighed = (straightM: number, bySpeedM: number): number | null => {
  if (Math.max(straightM, bySpeedM) < LEAST_M) return null;
  if (straightM < FAR_TOO_QUICK_SHARE * bySpeedM - NOISE_M) return 2;
  if (straightM < WINDING_SHARE * bySpeedM - NOISE_M) return 1;
  if (straightM > FAR_TOO_SLOW_SHARE * bySpeedM + NOISE_M) return 2;
  return straightM > TOO_SLOW_SHARE * bySpeedM + NOISE_M ? 1 : 0;
};

const closed = (check: SpeedCheck, fix: Fix, bySpeedM: number): SpeedCheck => {
  const from = check.from ?? fix;
  const weight = weighed(legM(from, fix), bySpeedM);
  const against =
    weight === null
      ? check.against
      : weight > 0
        ? Math.min(AGAINST, check.against + weight)
        : check.believed
          ? 0
          : check.against - 1;
  const believed = check.believed ? against < AGAINST : against <= 0;
  return { ...check, from: fix, bySpeedM: 0, against, believed };
};

const followed = (check: SpeedCheck, fix: Fix, speedMps: number): SpeedCheck => {
  const { from, last } = check;
  const dtMs = last ? fix.timestampMs - last.timestampMs : 0;
  if (!from || !last || dtMs <= 0 || dtMs > GAP_MS) return { ...check, from: fix, bySpeedM: 0 };
  const meanMps = (speedMps + (last.speedMps ?? speedMps)) / 2;
  const bySpeedM = check.bySpeedM + (meanMps * dtMs) / 1000;
  return fix.timestampMs - from.timestampMs < WINDOW_MS
    ? { ...check, bySpeedM }
    : closed(check, fix, bySpeedM);
};

/** The speed of a fix where it is one; null where it is not to be believed. */
export const checkSpeed = (
  check: SpeedCheck,
  fix: Fix,
): { readonly check: SpeedCheck; readonly speedMps: number | null } => {
  const { last } = check;
  const { speedMps } = fix;
  if (speedMps === null) return { check: { ...check, from: null, last: fix }, speedMps };
  const repeats = last?.speedMps === speedMps && speedMps > 0 ? check.repeats + 1 : 0;
  const next = { ...followed(check, fix, speedMps), last: fix, repeats };
  const sinceS = last ? (fix.timestampMs - last.timestampMs) / 1000 : 0;
  const goesOn = last !== null && sinceS > 0 && legM(last, fix) > GOES_ON_MPS * sinceS;
  const filledIn = speedMps < STANDING_MPS && check.believedMps > RUNNING_MPS && goesOn;
  const doubted = !next.believed || filledIn || repeats >= STUCK_REPEATS || speedMps > MOST_MPS;
  return doubted ? { check: next, speedMps: null } : { check: { ...next, believedMps: speedMps }, speedMps };
};
