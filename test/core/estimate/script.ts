import { type CourseLine, eastAtM, northAtM } from '../../../src/core/course/line.ts';
import {
  absorb,
  beginEstimate,
  type EstimatorSetup,
  type EstimatorState,
  progressAt,
} from '../../../src/core/estimate/estimator.ts';
import type { Input } from '../../../src/core/estimate/input.ts';
import type { Progress } from '../../../src/core/estimate/progress.ts';
import { pointOn } from '../../../src/core/geo/ruler.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';

/**
 * What a runner does, one part after the other. Distances are along the line; before 0 it goes on straight backwards.
 * A press takes no time.
 */
export type Part =
  | { readonly stand: number }
  /** To a distance, forwards or backwards, at m/s; fixes are dropped while dark. */
  | { readonly to: number; readonly mps: number; readonly dark?: boolean }
  /** To metres east and north of where the line is now, in a straight line. */
  | { readonly aside: readonly [eastM: number, northM: number]; readonly mps: number }
  | { readonly press: 'start' | 'gun' | 'marker' };

export interface Scripted {
  readonly inputs: readonly Input[];
  /** When each part began, engine ms, and where the runner is along the line at an instant. */
  readonly partMs: readonly number[];
  readonly alongAt: (atMs: number) => number;
}

const BEGIN_MS = 1_800_000_000_000;

/** A fix a second, 1.5 m off in a manner that wanders over half a minute, positions and speeds prompt. */
export const scripted = (road: CourseLine, fromM: number, parts: readonly Part[], seed = 1): Scripted => {
  const chance = chanceOf(seed);
  const inputs: Input[] = [];
  const alongM: number[] = [];
  const partMs: number[] = [];
  let along = fromM;
  let [asideE, asideN] = [0, 0];
  let [errE, errN] = [0, 0];
  const now = (): number => BEGIN_MS + alongM.length * 1000;
  const tick = (speedMps: number, dark: boolean): void => {
    errE += -errE / 30 + 1.5 * Math.sqrt(2 / 30) * chance.normal();
    errN += -errN / 30 + 1.5 * Math.sqrt(2 / 30) * chance.normal();
    const east = eastAtM(road, along) + asideE + errE;
    const north = northAtM(road, along) + asideN + errN;
    const fix = {
      timestampMs: now(),
      ...pointOn(road.plane, east, north),
      accuracyM: 5,
      altitudeM: null,
      speedMps: Math.max(0, speedMps + 0.1 * chance.normal()),
    };
    if (!dark) inputs.push({ type: 'fix', atMs: now(), fix });
    alongM.push(along);
  };
  for (const part of parts) {
    partMs.push(now());
    if ('press' in part) inputs.push({ type: 'event', atMs: now(), event: part.press });
    else if ('stand' in part) for (let s = 0; s < part.stand; s++) tick(0, false);
    else if ('to' in part) {
      const step = Math.sign(part.to - along) * part.mps;
      while ((part.to - along) * step > 0) {
        tick(part.mps, part.dark ?? false);
        along += step;
      }
    } else {
      const [toE, toN] = part.aside;
      const wayM = Math.hypot(toE - asideE, toN - asideN);
      const [fromE, fromN] = [asideE, asideN];
      for (let m = 0; m < wayM; m += part.mps) {
        asideE = fromE + ((toE - fromE) * m) / wayM;
        asideN = fromN + ((toN - fromN) * m) / wayM;
        tick(part.mps, false);
      }
      [asideE, asideN] = [toE, toN];
    }
  }
  return { inputs, partMs, alongAt: (atMs) => alongM[Math.round((atMs - BEGIN_MS) / 1000)] ?? along };
};

export interface Played {
  readonly state: EstimatorState;
  /** After each fix. */
  readonly progress: readonly Progress[];
}

export const play = (setup: EstimatorSetup, inputs: readonly Input[]): Played => {
  let state = beginEstimate(setup);
  const progress: Progress[] = [];
  for (const input of inputs) {
    state = absorb(setup, state, input);
    if (input.type === 'fix') progress.push(progressAt(setup, state, input.atMs));
  }
  return { state, progress };
};

export const setupOf = (course: CourseLine | null, officialM: number): EstimatorSetup => ({
  course,
  officialM,
  boardsM: Array.from({ length: Math.floor(officialM / 1000) }, (_, i) => 1000 * (i + 1)),
});
