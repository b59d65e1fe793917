import { type Corner, cornerAt, cornerDoubtM2, foot, joint } from './corners.ts';
import { lengthFromSteps, type Pass } from './evenSteps.ts';
import { at, type Polyline, type Run } from './runs.ts';

/** A vertex of a line laid along straight runs. */
export interface Vertex {
  readonly eastM: number;
  readonly northM: number;
  /** Which point of the input it stands for; corners get a value between their neighbours. */
  readonly index: number;
  /** Variance of length, m², that comes in here. */
  readonly doubtM2: number;
  /** Length to be added here, m. */
  readonly addM: number;
}

/** Where one run meets the next: the first vertex of the corner, and the two runs. */
export interface Meeting {
  readonly vertex: number;
  readonly before: Run;
  readonly after: Run;
  readonly sigmaM: number;
  /** How much of the length error is left where even steps told it again; else 1. */
  readonly left: number;
}

/** The passes over two runs that meet; none where the points do not stand evenly. */
export type PassesOf = (before: Run, after: Run) => readonly (readonly [Pass, Pass])[];

export interface Laid {
  readonly vertices: readonly Vertex[];
  readonly meetings: readonly Meeting[];
  readonly runs: readonly Run[];
}

/** Where a corner lies along the run before it and along the run after it. */
const sides = (before: Run, after: Run, [e, n]: readonly [number, number]): [number, number] => [
  foot(before, e, n).t,
  foot(after, e, n).t,
];

/** Where streets meet at 35 degrees and more, and do not turn back, their crossing may be metres off along them. */
const SHARP_SIN = 0.57;
const isSharp = (a: Run, b: Run): boolean =>
  Math.abs(a.dirE * b.dirN - a.dirN * b.dirE) > SHARP_SIN && a.dirE * b.dirE + a.dirN * b.dirN > -0.7;

/** cos of 18 degrees. */
const EASY_COS = 0.95;

/**
 * Lays the line along straight runs, round the corners where they meet.
 * @param easyM over how much to either side the line goes from one run to the next where they all but go on in one
 */
export const lay = (
  line: Polyline,
  shake: Float64Array,
  legM: number,
  runs: readonly Run[],
  passesOf: PassesOf,
  easyM = legM,
): Laid => {
  const vertices: Vertex[] = [];
  const meetings: Meeting[] = [];
  let startT = Number.NEGATIVE_INFINITY;
  runs.forEach((run, k) => {
    const next = runs[k + 1];
    const sigmaM = at(shake, run.to);
    const ends = next ? joint(line, run, next, sigmaM, legM) : [];
    // Where two runs all but go on in one line, the step aside from the one to the other is taken over a usual leg.
    const easy = next && ends.length === 1 && run.dirE * next.dirE + run.dirN * next.dirN > EASY_COS;
    const easeM = easy ? easyM : 0;
    const stop = ends[0] ? foot(run, ends[0][0], ends[0][1]).t - easeM : Number.POSITIVE_INFINITY;
    for (let i = run.from; i <= run.to; i++) {
      const f = foot(run, at(line.eastM, i), at(line.northM, i));
      if (f.t > startT && f.t < stop) {
        vertices.push({ eastM: f.e, northM: f.n, index: i, doubtM2: 0, addM: 0 });
        startT = f.t;
      }
    }
    if (next) {
      const before = cornerDoubtM2(run, next, sigmaM, legM);
      const told =
        ends[0] && isSharp(run, next)
          ? lengthFromSteps(passesOf(run, next), ...sides(run, next, ends[0]), sigmaM, before)
          : null;
      const doubtM2 = told?.doubtM2 ?? before;
      const left = told ? Math.sqrt(doubtM2 / before) : 1;
      meetings.push({ vertex: vertices.length, before: run, after: next, sigmaM, left });
      const [n, addM] = [ends.length, told?.addM ?? 0];
      ends.forEach(([eastM, northM], m) => {
        const index = run.to + (m + 1) / (n + 1);
        vertices.push({ eastM, northM, index, doubtM2: doubtM2 / n, addM: addM / n });
      });
    }
    const last = ends.at(-1);
    startT = next && last ? foot(next, last[0], last[1]).t + easeM : Number.NEGATIVE_INFINITY;
  });
  return { vertices, meetings, runs };
};

export const cornersOf = (meetings: readonly Meeting[], legM: number): Corner[] =>
  meetings.map(({ vertex, before, after, sigmaM, left }) =>
    cornerAt(vertex, before, after, sigmaM, legM, left),
  );
