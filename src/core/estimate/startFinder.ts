import type { CourseLine } from '../course/line.ts';
import { eastAtM, northAtM } from '../course/line.ts';
import type { PlaneFix } from './planeFix.ts';
import { walkedOff } from './walkedOff.ts';
import { LEAST_ALONG_M, WOKE_AFTER_S } from './wokeOnCourse.ts';

/**
 * Finds the start by itself: standing in the pen, a shuffle to the line, then running. With a course the start is where
 * the line's first point is crossed; without one it is where the running begins.
 */

/** Running: at least this fast on average over RUN_WINDOW_S. Shuffles towards a start line are 1 to 1.5 m/s. */
const RUNNING_MPS = 1.9;
const RUN_WINDOW_S = 8;
/** In each half of the window: the first half may still hold the getaway. */
const HALF_RUNNING_MPS = 1.2;
/** Standing still, the summed distance creeps 16-23 m a minute, 0.4 m/s; walking in the pen is faster. */
const STANDING_MPS = 0.7;
/** Further than this from the line's first point the line says nothing about the start. */
const NEAR_START_M = 150;
/** A recording that begins this little behind the line began at the line. */
const AT_LINE_M = 15;
/** The line's direction at its start, over this length. */
const START_CHORD_M = 30;

const speedBetween = (a: PlaneFix, b: PlaneFix): number =>
  Math.hypot(b.eastM - a.eastM, b.northM - a.northM) / Math.max(0.001, (b.timeMs - a.timeMs) / 1000);

/** Speed at fix i: Doppler where given, else over about three seconds around it. */
const speedAt = (fixes: readonly PlaneFix[], i: number): number => {
  const own = fixes[i]?.speedMps;
  if (own !== null && own !== undefined) return own;
  let a = i;
  let b = i;
  const t = (fixes[i] as PlaneFix).timeMs;
  while (a > 0 && t - (fixes[a] as PlaneFix).timeMs < 2000) a--;
  while (b < fixes.length - 1 && (fixes[b] as PlaneFix).timeMs - t < 2000) b++;
  return a === b ? 0 : speedBetween(fixes[a] as PlaneFix, fixes[b] as PlaneFix);
};

/** Metres past the start line, by the line's direction at its start. */
export const pastStartM = (line: CourseLine, fix: Pick<PlaneFix, 'eastM' | 'northM'>): number => {
  const e0 = eastAtM(line, 0);
  const n0 = northAtM(line, 0);
  const te = eastAtM(line, START_CHORD_M) - e0;
  const tn = northAtM(line, START_CHORD_M) - n0;
  return ((fix.eastM - e0) * te + (fix.northM - n0) * tn) / Math.hypot(te, tn);
};

/** The same where it says something; Infinity far from the start. */
const pastAtWakingM = (line: CourseLine, fix: PlaneFix): number =>
  nearStart(line, fix) ? pastStartM(line, fix) : Number.POSITIVE_INFINITY;

const nearStart = (line: CourseLine, fix: PlaneFix): boolean =>
  Math.hypot(fix.eastM - eastAtM(line, 0), fix.northM - northAtM(line, 0)) < NEAR_START_M;

/** Where the run begins: the time when speed last rose through half of the running speed. */
const onsetMs = (fixes: readonly PlaneFix[], runningMps: number): number => {
  const threshold = Math.max(STANDING_MPS, runningMps / 2);
  for (let i = fixes.length - 1; i > 0; i--) {
    const before = speedAt(fixes, i - 1);
    if (before > threshold) continue;
    const here = speedAt(fixes, i);
    const a = fixes[i - 1] as PlaneFix;
    const b = fixes[i] as PlaneFix;
    const k = here > before ? (threshold - before) / (here - before) : 1;
    return a.timeMs + Math.min(1, Math.max(0, k)) * (b.timeMs - a.timeMs);
  }
  return (fixes[0] as PlaneFix).timeMs;
};

/** Last crossing of the start line, by a straight fit over the fixes around it; null where there was none. */
const crossingMs = (line: CourseLine, fixes: readonly PlaneFix[]): number | null => {
  const past = fixes.map((f) => pastStartM(line, f));
  let i = past.length - 1;
  while (i >= 0 && (past[i] as number) > 0) i--;
  if (i < 0 || i === past.length - 1) return null;
  const around = fixes
    .map((f, k) => ({ t: f.timeMs, a: past[k] as number }))
    .filter((p) => Math.abs(p.t - (fixes[i] as PlaneFix).timeMs) <= 4000);
  const n = around.length;
  const mt = around.reduce((s, p) => s + p.t, 0) / n;
  const ma = around.reduce((s, p) => s + p.a, 0) / n;
  const stt = around.reduce((s, p) => s + (p.t - mt) ** 2, 0);
  const sta = around.reduce((s, p) => s + (p.t - mt) * (p.a - ma), 0);
  const slope = stt > 0 ? sta / stt : 0;
  const a = fixes[i] as PlaneFix;
  const b = fixes[i + 1] as PlaneFix;
  const fitted = slope > 0 ? mt - ma / slope : a.timeMs;
  return Math.min(b.timeMs + 2000, Math.max(a.timeMs - 2000, fitted));
};

/** A receiver that jumps moves in one half of the window; a runner in both, and the same way. */
const bothHalvesRun = (fixes: readonly PlaneFix[], from: PlaneFix, last: PlaneFix): boolean => {
  const middleMs = (from.timeMs + last.timeMs) / 2;
  const middle = fixes.findLast((f) => f.timeMs <= middleMs);
  if (!middle || middle === from) return false;
  const along =
    (middle.eastM - from.eastM) * (last.eastM - middle.eastM) +
    (middle.northM - from.northM) * (last.northM - middle.northM);
  const slower = Math.min(speedBetween(from, middle), speedBetween(middle, last));
  return along > 0 && slower > HALF_RUNNING_MPS;
};

/**
 * @param fixes since the receiver woke, in order of time, the latest last
 * @param lagS how late positions are believed to come
 * @returns when the runner crossed the start, engine ms; null while they have not
 */
export const findStartMs = (
  line: CourseLine | null,
  fixes: readonly PlaneFix[],
  lagS: number,
): number | null => {
  const last = fixes.at(-1);
  const first = fixes[0];
  if (!last || !first) return null;
  const from = fixes.findLast((f) => last.timeMs - f.timeMs >= RUN_WINDOW_S * 1000);
  if (!from) return null;
  const runningMps = speedBetween(from, last);
  // As the crow flies, so that a receiver that wanders on the spot does not run.
  const runs =
    runningMps >= RUNNING_MPS &&
    bothHalvesRun(fixes, from, last) &&
    speedAt(fixes, fixes.length - 1) >= RUNNING_MPS;
  if (!runs && !(line && walkedOff(line, fixes))) return null;
  const onset = onsetMs(fixes, runningMps);
  // Running since the receiver woke, and not at the line: whether that is on the course shows a little later.
  const wokeRunning = line !== null && onset === first.timeMs && pastAtWakingM(line, first) > LEAST_ALONG_M;
  if (wokeRunning && last.timeMs - first.timeMs <= 1000 * WOKE_AFTER_S) return null;
  if (!line || !nearStart(line, last)) {
    if (line && !fixes.some((f) => nearStart(line, f))) return onset;
    if (line) return Math.max(onset, (crossingMs(line, fixes) ?? onset) - lagS * 1000);
    return onset;
  }
  if (pastStartM(line, last) <= 0) return null;
  if (pastStartM(line, first) > -AT_LINE_M && onset === first.timeMs) return onset;
  const moving = fixes.filter((f) => f.timeMs >= shuffleMs(fixes) - 4000);
  const crossed = crossingMs(line, moving);
  return crossed === null ? onset : Math.max(crossed - lagS * 1000, shuffleMs(fixes));
};

/** When the runner last stood still. */
const shuffleMs = (fixes: readonly PlaneFix[]): number => {
  for (let i = fixes.length - 1; i >= 0; i--)
    if (speedAt(fixes, i) < STANDING_MPS) return (fixes[i] as PlaneFix).timeMs;
  return (fixes[0] as PlaneFix).timeMs;
};
