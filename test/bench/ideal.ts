import { independent, predict, update } from '../../src/core/estimate/kalman.ts';
import { chanceOf } from '../../src/core/units/chance.ts';
import type { ReceiverModel } from '../../src/sensors/simulatedReceiver.ts';

/**
 * How soon a change of pace could be told by anyone: the road straight, no bursts, the receiver's noise known exactly, and
 * the runner known to be exactly on plan until then. For such a change no test beats the cumulative sum of the log
 * likelihood ratio (Moustakides, Annals of Statistics 14 (1986) 1379-1387: least worst delay at given false alarms).
 */
export interface Ideal {
  /** How many standard deviations the change stands out after 40 s. */
  readonly z40: number;
  /** Median delay at one false alarm in ten kilometres, seconds. */
  readonly delayS: number;
}

const SETTLE_S = 1500;
const SEEN_S = 40;

/** Information about a change by `byMps` within SEEN_S: what a filter that believes in the plan is surprised by. */
const information = (model: ReceiverModel, byMps: number): number => {
  const keep = (tauS: number): number => Math.exp(-model.everyS / tauS);
  const [slow, quick] = [keep(model.slow.tauS), keep(model.quick.tauS)];
  const g = independent([0, 0, 0], [10, model.slow.sdM, model.quick.sdM]);
  const decay = Float64Array.of(1, slow, quick);
  const q = Float64Array.of(
    0,
    model.slow.sdM ** 2 * (1 - slow ** 2),
    model.quick.sdM ** 2 * (1 - quick ** 2),
  );
  const h = { at: [0, 1, 2], by: [1, 1, 1] };
  let sum = 0;
  for (let t = -SETTLE_S; t <= SEEN_S; t += model.everyS) {
    predict(g, decay, [], q);
    const goneM = byMps * Math.max(0, t);
    const off = goneM - g.x.reduce((a, b) => a + b, 0);
    const variance = update(g, h, off, model.whiteM ** 2);
    if (t <= 0) continue;
    sum += off ** 2 / variance;
    if (model.speedSdMps !== null) sum += (byMps / model.speedSdMps) ** 2;
  }
  return sum;
};

const RUNS = 200;
const LIMITS = [2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8];
const BEFORE_S = 400;
const AFTER_S = 900;

/** False alarms in `raceS` and median delay of a two-sided sum with a limit, `rate` being the information per second over 2. */
const cusum = (
  rate: number,
  limit: number,
  raceS: number,
): { readonly alarms: number; readonly delayS: number } => {
  const { normal } = chanceOf(Math.round(1000 * limit));
  const sd = Math.sqrt(2 * rate);
  let up = 0;
  let down = 0;
  const next = (mean: number): 'up' | 'down' | null => {
    const x = mean + sd * normal();
    up = Math.max(0, up + x - rate);
    down = Math.max(0, down - x - rate);
    return up > limit ? 'up' : down > limit ? 'down' : null;
  };
  const begin = (): void => {
    up = 0;
    down = 0;
  };
  let alarms = 0;
  const delays: number[] = [];
  for (let run = 0; run < RUNS; run++) {
    begin();
    for (let t = 0; t < raceS; t++)
      if (next(0) !== null) {
        alarms++;
        begin();
      }
    begin();
    for (let t = 0; t < BEFORE_S; t++) if (next(0) !== null) begin();
    let t = 0;
    while (t < AFTER_S && next(2 * rate) !== 'up') t++;
    delays.push(t + 1);
  }
  return { alarms: alarms / RUNS, delayS: delays.sort((a, b) => a - b)[RUNS >> 1] ?? Number.NaN };
};

/** @param byMps change of speed; @param raceS how long ten kilometres take */
export const idealOf = (model: ReceiverModel, byMps: number, raceS: number): Ideal => {
  const seen = information(model, byMps);
  const rate = seen / SEEN_S / 2;
  const curve = LIMITS.map((limit) => cusum(rate, limit, raceS));
  const i = Math.max(
    1,
    curve.findIndex((c) => c.alarms <= 1),
  );
  const [above, below] = [curve[i - 1], curve[i]];
  if (!above || !below) return { z40: Math.sqrt(seen), delayS: Number.NaN };
  const k = Math.min(1, Math.max(0, (above.alarms - 1) / Math.max(1e-9, above.alarms - below.alarms)));
  return { z40: Math.sqrt(seen), delayS: above.delayS + k * (below.delayS - above.delayS) };
};
