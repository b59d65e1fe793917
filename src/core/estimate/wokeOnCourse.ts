import type { CourseLine } from '../course/line.ts';
import { eastAtM, northAtM } from '../course/line.ts';
import type { PlaneFix } from './planeFix.ts';

/**
 * A receiver that wakes when the race is under way has not seen the start. Its fixes run along the line from the first
 * on, some way behind the start: the place is taken from there, and the start as long ago as that way takes at the pace
 * seen. Half a minute late that is right to two or three seconds, kilometres late to as many as the pace has changed.
 */
export interface Woke {
  readonly timeMs: number;
  readonly alongM: number;
  readonly startMs: number;
}

/** Running, and for so long, before it is believed; without a stop. */
export const WOKE_AFTER_S = 15;
const RUNNING_MPS = 1.9;
/** Nearer to the start than this, the start itself is to be found. */
export const LEAST_ALONG_M = 30;
const ON_LINE_M = 30;
const STEP_M = 10;
/** The way along the line and the way as the crow flies may differ by this share. */
const SAME_WAY_SHARE = 0.25;

const offM = (line: CourseLine, alongM: number, fix: PlaneFix): number =>
  Math.hypot(fix.eastM - eastAtM(line, alongM), fix.northM - northAtM(line, alongM));

/** The nearest place on the line between two distances. */
const nearestM = (line: CourseLine, fix: PlaneFix, fromM: number, toM: number): number => {
  let best = fromM;
  for (let s = fromM; s <= toM; s += STEP_M) if (offM(line, s, fix) < offM(line, best, fix)) best = s;
  for (let s = best - STEP_M; s <= best + STEP_M; s++)
    if (offM(line, s, fix) < offM(line, best, fix)) best = s;
  return best;
};

/** The first place on the line from which these fixes run along it; null where there is none. */
const placeOf = (line: CourseLine, first: PlaneFix, last: PlaneFix): number | null => {
  const wayM = Math.hypot(last.eastM - first.eastM, last.northM - first.northM);
  for (let s = 0; s < line.officialM - wayM; s += STEP_M) {
    if (offM(line, s, first) > ON_LINE_M) continue;
    const at = nearestM(line, first, s, s + 2 * ON_LINE_M);
    const onM = nearestM(line, last, at, at + 2 * wayM) - at;
    if (offM(line, at + onM, last) < ON_LINE_M && Math.abs(onM - wayM) < SAME_WAY_SHARE * wayM) return at;
    s = at + ON_LINE_M;
  }
  return null;
};

/** @param fixes since the receiver woke, the latest last */
export const wokeOnCourse = (line: CourseLine, fixes: readonly PlaneFix[]): Woke | null => {
  const [first, last] = [fixes[0], fixes.at(-1)];
  if (!first || !last || last.timeMs - first.timeMs < 1000 * WOKE_AFTER_S) return null;
  const sinceS = (last.timeMs - first.timeMs) / 1000;
  const runningMps = Math.hypot(last.eastM - first.eastM, last.northM - first.northM) / sinceS;
  if (runningMps < RUNNING_MPS || fixes.some((f) => f.speedMps !== null && f.speedMps < RUNNING_MPS / 2))
    return null;
  const alongM = placeOf(line, first, last);
  if (alongM === null || alongM < LEAST_ALONG_M) return null;
  return { timeMs: first.timeMs, alongM, startMs: first.timeMs - (1000 * alongM) / runningMps };
};
