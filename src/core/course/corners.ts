import { at, type Polyline, type Run, turnsRound } from './runs.ts';

/** Corners between straight runs: where they are, and how badly that is known. */

/** Below this angle two runs have no sharp crossing and the joint is taken between their ends. */
const MIN_CORNER_SIN = 0.12;

/** Where the run's line passes closest to a point, and how far along the run's direction that is. */
export const foot = (r: Run, e: number, n: number) => {
  const t = (e - r.eastM) * r.dirE + (n - r.northM) * r.dirN;
  return { e: r.eastM + t * r.dirE, n: r.northM + t * r.dirN, t };
};
/**
 * The joint of two runs: the crossing of their lines where that is near, and neither line has to be cut back to it by
 * more than the shake; else the middle between their ends.
 */
export const joint = (
  line: Polyline,
  a: Run,
  b: Run,
  sigmaM: number,
  legM: number,
): readonly (readonly [number, number])[] => {
  const fa = foot(a, at(line.eastM, a.to), at(line.northM, a.to));
  const fb = foot(b, at(line.eastM, b.from), at(line.northM, b.from));
  const gap = Math.hypot(fb.e - fa.e, fb.n - fa.n);
  const sin = a.dirE * b.dirN - a.dirN * b.dirE;
  if (Math.abs(sin) > MIN_CORNER_SIN) {
    const ta = ((b.eastM - a.eastM) * b.dirN - (b.northM - a.northM) * b.dirE) / sin;
    const e = a.eastM + ta * a.dirE;
    const n = a.northM + ta * a.dirN;
    const onwardA = ta - fa.t;
    const onwardB = fb.t - foot(b, e, n).t;
    const far = Math.max(gap, legM) * 1.3 + sigmaM;
    if (onwardA > -3 * sigmaM && onwardB > -3 * sigmaM && onwardA < far && onwardB < far) return [[e, n]];
  }
  if (turnsRound(a, b, sigmaM)) {
    const tipT = coneT(line, a, b, legM);
    const tip = (r: Run, f: typeof fa, t: number): readonly [number, number] => [
      f.e + r.dirE * t,
      f.n + r.dirN * t,
    ];
    return [tip(a, fa, Math.max(0, tipT - fa.t)), tip(b, fb, -Math.max(0, tipT - foot(a, fb.e, fb.n).t))];
  }
  // Two streets that do not meet: from the end of the one to the beginning of the other.
  if (a.dirE * b.dirE + a.dirN * b.dirN < 0)
    return [
      [fa.e, fa.n],
      [fb.e, fb.n],
    ];
  return [[(fa.e + fb.e) / 2, (fa.n + fb.n) / 2]];
};
/**
 * How far along the way out the cone of a turn-round stands. Points come at even steps, so the step that holds the cone
 * went out and back: of the pairs of neighbours at the turn the furthest one, and what is left of a usual step.
 */
const coneT = (line: Polyline, a: Run, b: Run, legM: number): number =>
  furthestM(line, a, Math.max(a.from, a.to - 2), Math.min(b.to, b.from + 2), legM);

/** The same for a road that is known to be run back: around the point where it turns, measured along its last run. */
export const coneM = (line: Polyline, last: Run, pivot: number, legM: number): number =>
  furthestM(line, last, Math.max(0, pivot - 3), Math.min(line.eastM.length - 1, pivot + 3), legM);

const furthestM = (line: Polyline, a: Run, from: number, to: number, legM: number): number => {
  const t = (i: number): number => foot(a, at(line.eastM, i), at(line.northM, i)).t;
  let cone = Number.NEGATIVE_INFINITY;
  for (let i = from; i < to; i++) cone = Math.max(cone, (legM + t(i) + t(i + 1)) / 2);
  return cone;
};
/**
 * How badly a corner's place along the line is known, as a variance in m²: each run's line has at its end a sideways
 * error of 2σ/√n, which moves the crossing along the other, the more the sharper the turn (tan² of half the angle). At
 * a turn-round nothing tells how far the road went on beyond the last point.
 */
export const cornerDoubtM2 = (a: Run, b: Run, sigmaM: number, legM: number): number => {
  if (turnsRound(a, b, sigmaM)) return 4 * sigmaM * sigmaM + (TIP_DOUBT * legM) ** 2;
  const cos = a.dirE * b.dirE + a.dirN * b.dirN;
  const sideways = 4 * sigmaM * sigmaM * (1 / (a.to - a.from + 1) + 1 / (b.to - b.from + 1));
  const sharpness = Math.min(SHARPEST, (1 - cos) / Math.max(1e-9, 1 + cos));
  return PARTING_DOUBT * sharpness * sideways;
};
const SHARPEST = 4;
const TIP_DOUBT = 0.15;
/** Points given to the wrong run at a corner add to it: measured on simulated lines. */
const PARTING_DOUBT = 1.4;

/**
 * Where one straight run begins after another. The line of a run lies aside of the road by some metres, differently for
 * each run; at a corner that sideways error becomes an error along, and the next corner may take it back.
 */
export interface Corner {
  /** Which vertex of the straightened line. */
  readonly vertex: number;
  /** Tangent of half the angle turned there, left positive; 0 where the road is run back or begins. */
  readonly halfTurnTan: number;
  /** Variance of the new run's sideways error at its middle, m². */
  readonly asideM2: number;
  /** Length of the new run, m. */
  readonly runM: number;
  /** Variance of length that comes in here on top of it, m². */
  readonly extraM2: number;
  /** How much of the length error is left, as a standard deviation, where even steps told the length again; else 1. */
  readonly left: number;
}
export const cornerAt = (
  vertex: number,
  a: Run | null,
  b: Run,
  sigmaM: number,
  legM: number,
  left = 1,
): Corner => {
  const points = b.to - b.from + 1;
  const round = a !== null && turnsRound(a, b, sigmaM);
  const cos = a ? a.dirE * b.dirE + a.dirN * b.dirN : 1;
  const sin = a ? a.dirE * b.dirN - a.dirN * b.dirE : 0;
  const tan = Math.max(-Math.sqrt(SHARPEST), Math.min(Math.sqrt(SHARPEST), sin / Math.max(1e-9, 1 + cos)));
  return {
    vertex,
    halfTurnTan: round ? 0 : tan,
    asideM2: (FIT_FACTOR * sigmaM * sigmaM) / points,
    runM: Math.max(legM, (points - 1) * legM),
    extraM2:
      left *
      left *
      (a ? (round ? cornerDoubtM2(a, b, sigmaM, legM) : PARTING_M2 * sigmaM * sigmaM * tan * tan) : 0),
    left,
  };
};
/** Points given to the wrong run at a right corner: variance of length in parts of the shake's. */
const PARTING_M2 = 0.2;
/** Streets bend a little themselves: the fit is worse than its shake alone would make it. */
const FIT_FACTOR = 1.4;
