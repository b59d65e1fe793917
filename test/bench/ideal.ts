import { independent, predict, update } from '../../src/core/estimate/kalman.ts';
import { chanceOf } from '../../src/core/units/chance.ts';
import type { ReceiverModel } from '../../src/sensors/simulatedReceiver.ts';

/**
 * How soon a change of pace could be told by anyone: the road straight, no bursts, the receiver's noise known exactly, the
 * size of the change known, and the runner known to be exactly on plan until then. Places and speeds both count: what a
 * filter that believes in the plan is surprised by at each fix is white, and a change that began so long ago shifts it by
 * a known amount; places say little of it at first and more and more later. The test is the greatest log likelihood ratio
 * over all onsets, quicker and slower together: in white noise no test beats it (Moustakides, Annals of Statistics 14
 * (1986) 1379-1387); here none that we tried did (a sum over all onsets takes as long, in town 72 s for 66).
 */
export interface Ideal {
  /** How many standard deviations the change stands out after 40 s. */
  readonly z40: number;
  /** Median delay at one false alarm in ten kilometres, both sides together, seconds. */
  readonly delayS: number;
}

const SETTLE_S = 1500;
const SEEN_S = 40;
/** Onsets further back are given up, and between these nobody tells the difference. */
const BACK_S = 300;
const ONSET_EVERY_S = 2;

/** By how many deviations a change by `byMps` shifts what a place tells, each second since it began. */
const signatureOf = (model: ReceiverModel, byMps: number): Float64Array => {
  const keep = (tauS: number): number => Math.exp(-1 / tauS);
  const [slow, quick] = [keep(model.slow.tauS), keep(model.quick.tauS)];
  const g = independent([0, 0, 0], [10, model.slow.sdM, model.quick.sdM]);
  const decay = Float64Array.of(1, slow, quick);
  const q = Float64Array.of(
    0,
    model.slow.sdM ** 2 * (1 - slow ** 2),
    model.quick.sdM ** 2 * (1 - quick ** 2),
  );
  const h = { at: [0, 1, 2], by: [1, 1, 1] };
  const shifts = new Float64Array(BACK_S + ONSET_EVERY_S);
  for (let t = -SETTLE_S; t < shifts.length; t++) {
    predict(g, decay, [], q);
    const off = byMps * Math.max(0, t + 1) - g.x.reduce((a, b) => a + b, 0);
    const variance = update(g, h, off, model.whiteM ** 2);
    if (t >= 0) shifts[t] = off / Math.sqrt(variance);
  }
  return shifts;
};

/** What a second tells: of the place and of the speed, in deviations from the plan. */
interface Second {
  readonly place: number;
  readonly speed: number;
}

/** The test: one log likelihood ratio for each onset and side. */
const bank = (shifts: Float64Array, speedShift: number, limit: number) => {
  const onsets = Math.ceil(BACK_S / ONSET_EVERY_S);
  const [up, down] = [new Float64Array(onsets), new Float64Array(onsets)];
  const ages = new Int32Array(onsets).fill(-1);
  let t = 0;
  const begin = (): void => {
    ages.fill(-1);
    t = 0;
  };
  const next = ({ place, speed }: Second): 'up' | 'down' | null => {
    if (t % ONSET_EVERY_S === 0) {
      const i = (t / ONSET_EVERY_S) % onsets;
      ages[i] = up[i] = down[i] = 0;
    }
    t++;
    let [mostUp, mostDown] = [0, 0];
    for (let i = 0; i < onsets; i++) {
      const age = ages[i] ?? -1;
      if (age < 0) continue;
      const shift = shifts[age] ?? 0;
      const seen = shift * place + speedShift * speed;
      const cost = (shift * shift + speedShift * speedShift) / 2;
      ages[i] = age + 1;
      up[i] = (up[i] ?? 0) + seen - cost;
      down[i] = (down[i] ?? 0) - seen - cost;
      mostUp = Math.max(mostUp, up[i] ?? 0);
      mostDown = Math.max(mostDown, down[i] ?? 0);
    }
    return mostUp > limit ? 'up' : mostDown > limit ? 'down' : null;
  };
  return { begin, next };
};

const RUNS = 100;
const LIMITS = [2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7];
const BEFORE_S = 400;
const AFTER_S = 900;

interface Point {
  readonly alarms: number;
  readonly delayS: number;
}

/** False alarms in `raceS` and median delay at a limit. */
const pointAt = (
  shifts: Float64Array,
  speedShift: number,
  limit: number,
  raceS: number,
  runs: number,
): Point => {
  const { normal } = chanceOf(Math.round(1000 * limit));
  const { begin, next } = bank(shifts, speedShift, limit);
  const even = (): Second => ({ place: normal(), speed: normal() });
  let alarms = 0;
  const delays: number[] = [];
  for (let run = 0; run < runs; run++) {
    begin();
    for (let t = 0; t < raceS; t++)
      if (next(even()) !== null) {
        alarms++;
        begin();
      }
    begin();
    for (let t = 0; t < BEFORE_S; t++) if (next(even()) !== null) begin();
    let t = 0;
    const last = shifts.length - 1;
    const changed = (): Second => ({
      place: normal() + (shifts[Math.min(last, t)] ?? 0),
      speed: normal() + speedShift,
    });
    while (t < AFTER_S && next(changed()) !== 'up') t++;
    delays.push(t + 1);
  }
  return { alarms: alarms / runs, delayS: delays.sort((a, b) => a - b)[runs >> 1] ?? Number.NaN };
};

/** @param byMps change of speed; @param raceS how long ten kilometres take; @param runs how many times it is tried */
export const idealOf = (model: ReceiverModel, byMps: number, raceS: number, runs = RUNS): Ideal => {
  const shifts = signatureOf(model, byMps);
  const speedShift = model.speedSdMps === null ? 0 : byMps / model.speedSdMps;
  const seen = shifts.slice(0, SEEN_S).reduce((sum, shift) => sum + shift ** 2 + speedShift ** 2, 0);
  const z40 = Math.sqrt(seen);
  let before: Point | null = null;
  for (const limit of LIMITS) {
    const point = pointAt(shifts, speedShift, limit, raceS, runs);
    if (point.alarms <= 1) {
      if (before === null) return { z40, delayS: point.delayS };
      const k = (before.alarms - 1) / Math.max(1e-9, before.alarms - point.alarms);
      return { z40, delayS: before.delayS + k * (point.delayS - before.delayS) };
    }
    before = point;
  }
  return { z40, delayS: Number.NaN };
};
