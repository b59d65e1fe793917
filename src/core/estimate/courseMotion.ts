import type { CourseLine } from '../course/line.ts';
import { doubtAtM2 } from '../course/line.ts';
import {
  at,
  BASE,
  cov,
  forget,
  HILL,
  LINE,
  levelSpeedOf,
  N,
  OFFSET,
  S,
  slopeFactor,
  TILT,
  WAVER,
  WAY,
} from './courseState.ts';
import { easeOver, type Road } from './hills.ts';
import type { Coupling, Gaussian } from './kalman.ts';
import { predict } from './kalman.ts';
import type { Air } from './receiver.ts';
import * as runner from './runner.ts';

/**
 * Moves the belief on by dtS seconds, in place: the whole, or the runner's way alone (`wayOf`).
 * @param restlessVar variance of speed that comes in on top of the usual waver over the step
 */
export const advance = (
  g: Gaussian,
  { line, hills }: Road,
  air: Air,
  dtS: number,
  restlessVar: number,
): void => {
  if (!(dtS > 0)) return;
  const n = g.x.length;
  // Half of the change before the step and half after it: on average a change happens in the middle.
  g.P[WAVER * n + WAVER] = cov(g, WAVER, WAVER) + restlessVar / 2;
  const waver = Math.exp(-dtS / runner.WAVER_TAU_S);
  const slow = Math.exp(-dtS / air.slowTauS);
  const quick = Math.exp(-dtS / air.quickTauS);
  const aside = Math.exp(-dtS / runner.ASIDE_TAU_S);
  const from = Math.max(0, at(g, S));
  const wavering = runner.WAVER_TAU_S * (1 - waver);
  const levelM = at(g, BASE) * dtS + at(g, WAVER) * wavering;
  const ease = easeOver(hills, from, from + Math.max(0, levelM));
  const slope = slopeFactor(at(g, HILL), ease);
  const stepM = Math.max(0, levelSpeedOf(g) * slope * dtS);
  const known = line.knownM.find((d) => d > from) ?? line.officialM;
  const restM = Math.max(known - from, stepM, 1);
  // The line's ends are the course's ends: its error is a bridge, drawn to nothing as the finish comes near, and so
  // it is at the cone of an out-and-back and at the end of a lap.
  const bridge = 1 - Math.min(0.5, stepM / restM);
  const couplings: Coupling[] = [
    { row: S, col: BASE, value: slope * dtS },
    { row: S, col: WAVER, value: slope * wavering },
    { row: S, col: HILL, value: ease * levelM },
  ];
  if (n > WAY) couplings.push({ row: OFFSET, col: TILT, value: stepM });
  const byHillMps2 = (cov(g, HILL, HILL) + at(g, HILL) ** 2) * (ease * levelSpeedOf(g)) ** 2;
  const waverVar = runner.WAVER_SD_MPS ** 2 + runner.HILL_WAVER_SHARE ** 2 * byHillMps2;
  const qWaver = waverVar * (1 - waver * waver);
  const qSlow = air.slowSdM ** 2 * (1 - slow * slow);
  const qQuick = air.quickSdM ** 2 * (1 - quick * quick);
  const qAside = runner.ASIDE_SD_M ** 2 * (1 - aside * aside);
  const unseen = runner.unseen(levelSpeedOf(g), dtS);
  const q = [
    (qWaver * dtS * dtS) / 3 + unseen.m ** 2,
    runner.BASE_WALK_MPS_PER_SQRT_S ** 2 * dtS + unseen.mps ** 2,
    qWaver + restlessVar / 2,
    runner.HILL_WALK_PER_SQRT_S ** 2 * dtS,
    from < line.officialM ? Math.max(0, doubtAtM2(line, from + stepM) - doubtAtM2(line, from)) : 0,
    qSlow,
    qSlow,
    qQuick,
    qQuick,
    0,
    0,
    0,
    qAside,
    0,
    0,
    0,
    0,
  ];
  const decay = [1, 1, waver, 1, bridge, slow, slow, quick, quick, 1, 1, 1, aside, 1, 1, 1, 1];
  // The way alone is the first of the states: of what stands for the others predict takes no notice.
  const distanceM = at(g, S) + slope * levelM;
  predict(g, decay, couplings, q);
  // The slope multiplies: what it does is not linear in the state, so the mean moves along it by itself.
  g.x[S] = distanceM;
};

/**
 * Goes round the corners that lie behind the runner now, in place. The line's sideways error on the old street moves
 * the corner along the new one and the other way round: over a corner that turns left by θ the line gets longer by
 * -tan(θ/2) times the sum of the two (left positive). The new street's own error is independent: a line fitted through
 * n points that shake by σ is off by σ/√n at its middle, tilts by √12 of that over its length, and so is off at its
 * beginning by twice that, of the other sign than its tilt.
 * @param passed corners gone round before
 * @returns corners gone round now
 */
export const roundCorners = (g: Gaussian, line: CourseLine, passed: number): number => {
  const reached = at(g, S) + at(g, LINE);
  let k = passed;
  for (; k < line.corners.length; k++) {
    const corner = line.corners[k];
    if (!corner || corner.alongM > reached) break;
    addTo(g, LINE, OFFSET, -corner.halfTurnTan * corner.left);
    for (const i of [OFFSET, TILT]) forget(g, i);
    g.P[OFFSET * N + OFFSET] = 4 * corner.asideM2;
    g.P[TILT * N + TILT] = (12 * corner.asideM2) / corner.runM ** 2;
    g.P[OFFSET * N + TILT] = (-6 * corner.asideM2) / corner.runM;
    g.P[TILT * N + OFFSET] = (-6 * corner.asideM2) / corner.runM;
    addTo(g, LINE, OFFSET, -corner.halfTurnTan * corner.left);
    g.P[LINE * N + LINE] = cov(g, LINE, LINE) + corner.extraM2;
  }
  return k;
};

/** x[row] += value * x[col]. */
const addTo = (g: Gaussian, row: number, col: number, value: number): void => {
  g.x[row] = at(g, row) + value * at(g, col);
  for (let j = 0; j < N; j++) g.P[row * N + j] = cov(g, row, j) + value * cov(g, col, j);
  for (let i = 0; i < N; i++) g.P[i * N + row] = cov(g, i, row) + value * cov(g, i, col);
};
