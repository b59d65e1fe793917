import { type CourseLine, eastAtM, northAtM } from '../../course/line.ts';
import type { PlaneFix } from '../../estimate/planeFix.ts';
import type { LaidLine } from './lay.ts';

/** A fix on the course's plane, and how far the runner had come by then, without the line. */
export interface Seen {
  readonly fix: PlaneFix;
  readonly freeM: number;
}

/** Where on which line the latest fix is, metres along. */
export interface Place {
  readonly laid: LaidLine;
  readonly atM: number;
}

/** A fix further from the line than this is not on it: streets, and the worst of a phone in town. */
const NEAR_M = 40;
/** The legs of the way that are compared: the shortest that tells a street from one that crosses it, and a longer one. */
const SPANS_M = [50, 150] as const;
/** Fixes may lie off the line by this on average (a phone in town: 6 to 8 m), over a longer way by more. */
const MOST_OFF_M = 12;
const MOST_OFF_SHARE = 0.13;
/** One fix thrown far aside counts no more than this. */
const WORST_OFF_M = 40;
/** So many fixes of the way are compared at most. */
const COMPARED = 12;
const AROUND_M = 25;
const STEP_M = 2.5;

/** Where on a leg of the line a fix falls, as a share of the leg, and how far off it. */
const footOn = ({ eastM, northM }: CourseLine, i: number, fix: PlaneFix): { k: number; offM: number } => {
  const [e, n] = [eastM[i] as number, northM[i] as number];
  const [de, dn] = [(eastM[i + 1] as number) - e, (northM[i + 1] as number) - n];
  const along = ((fix.eastM - e) * de + (fix.northM - n) * dn) / (de * de + dn * dn || 1);
  const k = Math.min(1, Math.max(0, along));
  return { k, offM: Math.hypot(fix.eastM - e - k * de, fix.northM - n - k * dn) };
};

/** Places of one lap where the line passes near a fix, metres along from home. */
const passes = ({ line, lapM, homeM }: LaidLine, fix: PlaneFix): number[] => {
  const { alongM } = line;
  const endM = lapM ?? line.officialM;
  const found: number[] = [];
  let best = { m: 0, offM: Number.POSITIVE_INFINITY };
  const close = (): void => {
    if (best.offM <= NEAR_M) found.push(best.m);
    best = { m: 0, offM: Number.POSITIVE_INFINITY };
  };
  for (let i = 0; i + 1 < alongM.length && (alongM[i] as number) < endM; i++) {
    const { k, offM } = footOn(line, i, fix);
    if (offM > NEAR_M) close();
    else if (offM < best.offM) {
      const from = alongM[i] as number;
      best = { m: from + k * ((alongM[i + 1] as number) - from), offM };
    }
  }
  close();
  return found.map((m) => m + homeM);
};

/** How far a fix is from the nearest place of the line. */
export const offLineM = ({ line, lapM }: LaidLine, fix: PlaneFix): number => {
  const endM = lapM ?? line.officialM;
  let leastM = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 1 < line.alongM.length && (line.alongM[i] as number) < endM; i++)
    leastM = Math.min(leastM, footOn(line, i, fix).offM);
  return leastM;
};

/** The last so many metres of the way, thinned; null while less has been run. */
const lastOf = (seen: readonly Seen[], spanM: number): readonly Seen[] | null => {
  const now = seen.at(-1);
  const from = now === undefined ? -1 : seen.findLastIndex((s) => now.freeM - s.freeM >= spanM);
  if (from < 0) return null;
  const part = seen.slice(from);
  const every = Math.max(1, Math.floor(part.length / COMPARED));
  return part.filter((_, i) => (part.length - 1 - i) % every === 0);
};

/** How far the fixes lie off the line on average if the latest is there; Infinity where they begin before the line does. */
const offAt = ({ line, lapM }: LaidLine, atM: number, part: readonly Seen[]): number => {
  const nowM = part.at(-1)?.freeM ?? 0;
  let sum = 0;
  for (const { fix, freeM } of part) {
    const m = atM - (nowM - freeM);
    if (lapM === null && (m < 0 || m > line.officialM)) return Number.POSITIVE_INFINITY;
    const offM = Math.hypot(fix.eastM - eastAtM(line, m), fix.northM - northAtM(line, m));
    sum += Math.min(WORST_OFF_M, offM) ** 2;
  }
  return Math.sqrt(sum / part.length);
};

const bestPlace = (lines: readonly LaidLine[], part: readonly Seen[]): (Place & { offM: number }) | null => {
  const now = part.at(-1);
  if (now === undefined) return null;
  let best: (Place & { offM: number }) | null = null;
  for (const laid of lines)
    for (const m of passes(laid, now.fix))
      for (let atM = m - AROUND_M; atM <= m + AROUND_M; atM += STEP_M) {
        const offM = offAt(laid, atM, part);
        if (offM < (best?.offM ?? Number.POSITIVE_INFINITY)) best = { laid, atM, offM };
      }
  return best;
};

/**
 * Where on a course the runner is, from the last fixes and the way run between them: which way round tells itself, for
 * the places must follow each other. Null where the way of late is not on the line, or is too short to tell.
 */
export const findPlace = (lines: readonly LaidLine[], seen: readonly Seen[]): Place | null => {
  for (const spanM of SPANS_M) {
    const part = lastOf(seen, spanM);
    const best = part && bestPlace(lines, part);
    if (best && best.offM < Math.max(MOST_OFF_M, MOST_OFF_SHARE * spanM)) return best;
  }
  return null;
};
