import type { CourseLine } from '../course/line.ts';
import { eastAtM, northAtM } from '../course/line.ts';
import type { PlaneFix } from './planeFix.ts';

/**
 * A race that begins at a walk. Runners are known by their speed; who walks is known by going along the course, past the
 * start and on, without a stop, for longer than anybody walks about in a pen. (Who does so to warm up stands in the pen
 * again before the race: backInPen.ts.)
 */
const WALKING_MPS = 1.1;
const WINDOW_MS = 40_000;
/** In each quarter of the window, for a receiver creeps and jumps. */
const QUARTER_MPS = 0.8;
const QUARTERS = 4;
const STANDING_MPS = 0.5;
/** The walk is on the line, as far behind the start as the straight way to it is long, more or less. */
const ON_LINE_M = 25;
const LEAST_ALONG_M = 40;
const MOST_ALONG_M = 150;
const STEP_M = 5;
/** At the beginning of the window they were on their way to the line, or just over it. */
const BEGAN_BEFORE_M = 20;

/** Where along the line's first metres a fix lies, m; null off it. */
const alongOf = (line: CourseLine, fix: PlaneFix): number | null => {
  let best: number | null = null;
  let nearestM = ON_LINE_M;
  for (let s = 0; s <= MOST_ALONG_M + STEP_M; s += STEP_M) {
    const offM = Math.hypot(fix.eastM - eastAtM(line, s), fix.northM - northAtM(line, s));
    if (offM < nearestM) [best, nearestM] = [s, offM];
  }
  return best;
};

const wayM = (a: PlaneFix, b: PlaneFix): number => Math.hypot(b.eastM - a.eastM, b.northM - a.northM);

/** @param fixes since the receiver woke, the latest last */
export const walkedOff = (line: CourseLine, fixes: readonly PlaneFix[]): boolean => {
  const last = fixes.at(-1);
  if (!last) return false;
  const alongM = alongOf(line, last);
  if (alongM === null || alongM < LEAST_ALONG_M || alongM > MOST_ALONG_M) return false;
  const begin = fixes.findLastIndex((f) => last.timeMs - f.timeMs >= WINDOW_MS);
  const window = begin < 0 ? [] : fixes.slice(begin);
  const first = window[0];
  if (!first || window.some((f) => f.speedMps !== null && f.speedMps < STANDING_MPS)) return false;
  const begunM = alongOf(line, first);
  if (begunM !== null && begunM > BEGAN_BEFORE_M) return false;
  const spanMs = last.timeMs - first.timeMs;
  if (wayM(first, last) < (WALKING_MPS * spanMs) / 1000) return false;
  const marks = Array.from({ length: QUARTERS + 1 }, (_, k) =>
    window.findLast((f) => f.timeMs <= first.timeMs + (spanMs * k) / QUARTERS),
  );
  return marks.slice(1).every((mark, k) => {
    const before = marks[k];
    if (!mark || !before) return false;
    return wayM(before, mark) >= (QUARTER_MPS * (mark.timeMs - before.timeMs)) / 1000;
  });
};
