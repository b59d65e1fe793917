import { independent, predict, update } from '../../src/core/estimate/kalman.ts';
import type { ReceiverModel } from '../../src/sensors/simulatedReceiver.ts';

/**
 * How well a stretch of so many seconds can be measured at all with such a receiver, metres: by a filter that is told
 * the sizes and times of all errors and the road itself, and nothing of the runner's pace. Along the road it adds up the
 * speeds and takes the places in; what is asked for is the way since the stretch began, so the place at its begin is
 * part of the state. Bursts, late fixes and gaps are left out: the limit is on the low side.
 */
const X = 0;
/** Slow and quick errors lie between. */
const BEGAN = 3;
const N = 4;
/** Until the filter knows all it ever will. */
const WARM_S = 600;

export const legLimitSdM = (model: ReceiverModel, stretchS: number): number => {
  if (model.speedSdMps === null) throw new Error('needs a receiver with speed');
  const keepSlow = Math.exp(-1 / model.slow.tauS);
  const keepQuick = Math.exp(-1 / model.quick.tauS);
  const q = Float64Array.of(
    model.speedSdMps ** 2,
    model.slow.sdM ** 2 * (1 - keepSlow ** 2),
    model.quick.sdM ** 2 * (1 - keepQuick ** 2),
    0,
  );
  const g = independent([0, 0, 0, 0], [10, model.slow.sdM, model.quick.sdM, 0]);
  const second = (): void => {
    predict(g, Float64Array.of(1, keepSlow, keepQuick, 1), [], q);
    update(g, { at: [0, 1, 2], by: [1, 1, 1] }, 0, Math.max(0.05, model.whiteM) ** 2);
  };
  for (let s = 0; s < WARM_S; s++) second();
  for (let i = 0; i < N; i++) {
    const c = i === BEGAN ? (g.P[X * N + X] ?? 0) : (g.P[X * N + i] ?? 0);
    g.P[BEGAN * N + i] = c;
    g.P[i * N + BEGAN] = c;
  }
  for (let s = 0; s < stretchS; s++) second();
  const p = (i: number, j: number): number => g.P[i * N + j] ?? 0;
  return Math.sqrt(p(X, X) - 2 * p(X, BEGAN) + p(BEGAN, BEGAN));
};
