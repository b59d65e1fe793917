import { foot } from './corners.ts';
import { at, type Polyline, type Run } from './runs.ts';

/**
 * Recorders and route tools set their points at even steps. Where they do, the way from the last point before a corner
 * round it to the first one after is one step too, and tells the corner's length a second time: along the streets,
 * where the crossing of their lines tells it from their sideways places. The two errors are independent; on simulated
 * lines with 1.5 m of shake the length at a sharp corner is then known to 0.9 m where the crossing alone has 1.35 m.
 */

/** The points of one pass over a run: their count along the way, and where they fall along the run's direction. */
export interface Pass {
  readonly count: readonly number[];
  readonly alongM: readonly number[];
}

/** Points of a pass lie along the run as a fitted row of even steps would have them. */
interface Row {
  readonly stepM: number;
  readonly firstM: number;
  readonly lastM: number;
  readonly points: number;
  readonly residualM: number;
}

/** Fewer points do not show whether they stand evenly. */
const LEAST_POINTS = 4;
/** Along the way points shake as they do sideways; where they stray by more than this many times of it, steps are uneven. */
const EVEN_SDS = 1.5;
/** Steps differ from street to street by so much, m, as a standard deviation, and at most by this share. */
const STEP_SD_M = 0.3;
const ALIKE_SHARE = 0.1;
/** What disagrees by more than this many standard deviations is another thing: a missing point, a corner cut. */
const BELIEVED_SDS = 3;

const rowOf = ({ count, alongM }: Pass): Row | null => {
  const n = count.length;
  if (n < LEAST_POINTS) return null;
  const mi = count.reduce((a, b) => a + b, 0) / n;
  const mt = alongM.reduce((a, b) => a + b, 0) / n;
  let sii = 0;
  let sit = 0;
  let stt = 0;
  for (let k = 0; k < n; k++) {
    const i = (count[k] as number) - mi;
    const t = (alongM[k] as number) - mt;
    sii += i * i;
    sit += i * t;
    stt += t * t;
  }
  const stepM = sit / sii;
  return {
    stepM,
    firstM: mt + stepM * ((count[0] as number) - mi),
    lastM: mt + stepM * ((count[n - 1] as number) - mi),
    points: n,
    residualM: Math.sqrt(Math.max(0, stt - stepM * sit) / (n - 2)),
  };
};

const isEven = (row: Row, sigmaM: number): boolean => row.stepM > 0 && row.residualM < EVEN_SDS * sigmaM;

/** Steps change from street to street, and a run may hold two that all but go on in one: the points near the corner tell. */
const NEAR = 12;
const tail = ({ count, alongM }: Pass): Pass => ({ count: count.slice(-NEAR), alongM: alongM.slice(-NEAR) });
const head = ({ count, alongM }: Pass): Pass => ({
  count: count.slice(0, NEAR),
  alongM: alongM.slice(0, NEAR),
});

/** Most of the longer runs have their points at even steps: then this line is such a one. */
export const hasEvenSteps = (line: Polyline, runs: readonly Run[], sigmaM: number): boolean => {
  const rows = runs.flatMap((run) => {
    const row = run.to - run.from >= 2 * LEAST_POINTS ? rowOf(passOver(line, run, run.from, run.to)) : null;
    return row ? [row] : [];
  });
  return rows.length > 0 && rows.filter((row) => isEven(row, sigmaM)).length > MOST * rows.length;
};
const MOST = 0.8;

/** Of fewer points a fitted row takes most of what they have in common. */
const TELLING_POINTS = 8;
/**
 * Neighbouring points that err together by more than this share are a runner's own: their pace changes from step to step,
 * and receivers err alike for a minute. Recorded races have 0.26 to 0.59 along the way; points set by a tool and shaken
 * each for itself -0.13 to 0.
 */
const TOGETHER = 0.12;

/** Whether each point errs for itself along the runs: what is left beside a fitted row does not go on to the next point. */
export const errsAlone = (line: Polyline, runs: readonly Run[]): boolean => {
  let own = 0;
  let shared = 0;
  for (const run of runs) {
    const pass = passOver(line, run, run.from, run.to);
    const row = run.to - run.from + 1 >= TELLING_POINTS ? rowOf(pass) : null;
    if (!row) continue;
    const left = pass.alongM.map((t, i) => t - row.firstM - row.stepM * i);
    left.forEach((x, i) => {
      own += x * x;
      shared += x * (left[i - 1] ?? 0);
    });
  }
  return own > 0 && shared < TOGETHER * own;
};

/** One pass over a run by the points from one to another, both included, counted forward. */
export const passOver = (line: Polyline, run: Run, from: number, to: number): Pass => {
  const count: number[] = [];
  const alongM: number[] = [];
  for (let i = from; i <= to; i++) {
    count.push(i);
    alongM.push(foot(run, at(line.eastM, i), at(line.northM, i)).t);
  }
  return { count, alongM };
};

/**
 * By how much the way round a corner is too long as laid, by each pass over it.
 * @param cornerBeforeM where the corner lies along the run before it, and `cornerAfterM` along the run after it
 * @param doubtM2 variance of the way's length as laid
 * @returns how much to add, and the variance that is left; null where the steps tell nothing
 */
export const lengthFromSteps = (
  passes: readonly (readonly [Pass, Pass])[],
  cornerBeforeM: number,
  cornerAfterM: number,
  sigmaM: number,
  doubtM2: number,
): { readonly addM: number; readonly doubtM2: number } | null => {
  let weight = 1 / doubtM2;
  let sum = 0;
  let seen = 0;
  for (const [before, after] of passes) {
    const a = rowOf(tail(before));
    const b = rowOf(head(after));
    if (!a || !b || !isEven(a, sigmaM) || !isEven(b, sigmaM)) continue;
    if (Math.abs(a.stepM - b.stepM) > ALIKE_SHARE * a.stepM) continue;
    const steps = (after.count[0] as number) - (before.count.at(-1) as number);
    const tooLongM = cornerBeforeM - a.lastM + b.firstM - cornerAfterM - (steps * (a.stepM + b.stepM)) / 2;
    const variance = 4 * sigmaM * sigmaM * (1 / a.points + 1 / b.points) + STEP_SD_M ** 2;
    if (Math.abs(tooLongM) > BELIEVED_SDS * Math.sqrt(variance + doubtM2)) continue;
    weight += 1 / variance;
    sum += tooLongM / variance;
    seen++;
  }
  return seen === 0 ? null : { addM: -sum / weight, doubtM2: 1 / weight };
};

/**
 * Where the cone of a turn-round stands along a run: the step that holds it went out and back.
 * @param out the pass over the run on the way out, `back` the one on the way back, both counted in the way out's direction
 */
export const coneFromSteps = (
  out: Pass,
  back: Pass,
  sigmaM: number,
): { readonly alongM: number; readonly doubtM2: number } | null => {
  const [a, b] = [rowOf(out), rowOf(back)];
  if (!a || !b || !isEven(a, sigmaM) || !isEven(b, sigmaM)) return null;
  const steps = -(back.count.at(-1) as number) - (out.count.at(-1) as number);
  return {
    alongM: (a.lastM + b.lastM + (steps * (a.stepM + b.stepM)) / 2) / 2,
    doubtM2: sigmaM * sigmaM * (1 / a.points + 1 / b.points) + STEP_SD_M ** 2,
  };
};
