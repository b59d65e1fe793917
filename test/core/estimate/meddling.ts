import type { Input } from '../../../src/core/estimate/input.ts';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';
import type { Wish } from './follow.ts';

/** What receivers and logs do to fixes on their way. Times are own-clock seconds. */
export type Meddle = NonNullable<Wish['meddle']>;
type FixInput = Extract<Input, { type: 'fix' }>;

export const changeFixes =
  (change: (input: FixInput, ownS: number) => Input | null): Meddle =>
  (inputs, run) =>
    inputs.flatMap((input) => {
      const changed = input.type === 'fix' ? change(input, (input.atMs - run.startMs) / 1000) : input;
      return changed ? [changed] : [];
    });

/** Moves all positions of a stretch aside, stated accuracy as good as ever. */
export const shift = (fromS: number, toS: number, east: number, north: number): Meddle =>
  changeFixes((i, ownS) =>
    ownS < fromS || ownS > toS ? i : { ...i, fix: { ...i.fix, ...pointOn(planeAt(i.fix), east, north) } },
  );

export const tunnel = (fromS: number, toS: number): Meddle =>
  changeFixes((i, ownS) => (ownS < fromS || ownS > toS ? i : null));

/** The receiver repeats its last fix with new timestamps. */
export const freeze = (fromS: number, toS: number): Meddle => {
  let last: FixInput | null = null;
  return changeFixes((i, ownS) => {
    if (ownS < fromS || ownS > toS || !last) {
      last = i;
      return i;
    }
    return { ...i, fix: { ...last.fix, timestampMs: i.fix.timestampMs } };
  });
};

/** Changes the speeds that are given. */
export const speeds = (change: (mps: number, index: number, ownS: number) => number): Meddle => {
  let index = 0;
  return changeFixes((i, ownS) => {
    const { speedMps } = i.fix;
    return { ...i, fix: { ...i.fix, speedMps: speedMps === null ? null : change(speedMps, index++, ownS) } };
  });
};

/** Fixes are kept back and come so many at a time, each with the time at which it was taken. */
export const bundled =
  (count: number): Meddle =>
  (inputs) => {
    const fixes = inputs.filter((i) => i.type === 'fix');
    const atMs = new Map(
      fixes.map((i, k) => [
        i,
        fixes[Math.min(fixes.length - 1, k - (k % count) + count - 1)]?.atMs ?? i.atMs,
      ]),
    );
    return inputs
      .map((i) => ({ ...i, atMs: atMs.get(i as FixInput) ?? i.atMs }))
      .sort((a, b) => a.atMs - b.atMs);
  };

export const withoutEvents: Meddle = (inputs) => inputs.filter((i) => i.type !== 'event');

/** A fix from a cache comes first: 5 km away, its stamp so old. */
export const cached =
  (ageMs: number): Meddle =>
  (inputs) => {
    const first = inputs.find((i) => i.type === 'fix');
    if (first?.type !== 'fix') return inputs;
    const { fix, atMs } = first;
    const old = { ...fix, latitudeDeg: fix.latitudeDeg + 0.045, timestampMs: atMs - ageMs };
    return [{ type: 'fix', atMs: atMs - 500, fix: old }, ...inputs];
  };

/** Steps by the accelerometer, beside the fixes: what the true speed makes of a step length. */
export const withSteps =
  (stepM: number): Meddle =>
  (inputs, run) => {
    const steps: Input[] = [];
    for (let ownS = 0; ownS < run.truth.toS; ownS++)
      steps.push({
        type: 'motion',
        atMs: run.startMs + ownS * 1000 + 300,
        stepHz: run.truth.speedAtMps(ownS) / stepM,
      });
    return [...inputs, ...steps].sort((a, b) => a.atMs - b.atMs);
  };

export const inTurn =
  (...meddles: readonly Meddle[]): Meddle =>
  (inputs, run) =>
    meddles.reduce((now, meddle) => meddle(now, run), inputs);
