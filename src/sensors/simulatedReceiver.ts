import { type CourseLine, eastAtM, northAtM } from '../core/course/line.ts';
import type { Fix } from '../core/estimate/input.ts';
import { pointOn } from '../core/geo/ruler.ts';
import type { Chance } from '../core/units/chance.ts';
import type { Truth } from './simulatedRunner.ts';

/**
 * A phone's receiver. Its error is what real ones show against a line on the ground: a part that stays, a part that
 * wanders over a minute or so, a quicker part, a little white noise, and bursts near walls. All in metres an axis.
 */
export interface ReceiverModel {
  readonly everyS: number;
  readonly stayingM: number;
  readonly slow: { readonly sdM: number; readonly tauS: number };
  readonly quick: { readonly sdM: number; readonly tauS: number };
  readonly whiteM: number;
  readonly burstsPerHour: number;
  readonly burstM: number;
  /** Doppler speed's noise in m/s; null where the receiver gives no speed. */
  readonly speedSdMps: number | null;
  /** Positions speak of so long ago. */
  readonly lagS: number;
  /** Arrival after the stamp: always, and the share of fixes that come seconds late, out of order. */
  readonly arrivalS: number;
  readonly lateShare: number;
  /** No fixes between these places (a tunnel). */
  readonly deadM: readonly { readonly fromM: number; readonly toM: number }[];
  /** Away from the measured line, to and fro across the road. */
  readonly weaveM: number;
}

/** Sizes and time constants as in recordings of phones: open sky, streets, and streets of tall buildings. */
export const OPEN_SKY: ReceiverModel = {
  everyS: 1,
  stayingM: 0.8,
  slow: { sdM: 1, tauS: 90 },
  quick: { sdM: 0.3, tauS: 2 },
  whiteM: 0.1,
  burstsPerHour: 0.5,
  burstM: 12,
  speedSdMps: 0.12,
  lagS: 0.3,
  arrivalS: 0.15,
  lateShare: 0.002,
  deadM: [],
  weaveM: 1.2,
};
export const TOWN: ReceiverModel = {
  ...OPEN_SKY,
  stayingM: 1.5,
  slow: { sdM: 3.5, tauS: 100 },
  quick: { sdM: 1.5, tauS: 4 },
  burstsPerHour: 4,
  burstM: 16,
  speedSdMps: 0.3,
  lagS: 0.5,
  lateShare: 0.005,
};
export const TALL: ReceiverModel = {
  ...TOWN,
  slow: { sdM: 6, tauS: 36 },
  quick: { sdM: 2, tauS: 4 },
  burstsPerHour: 15,
  burstM: 20,
  speedSdMps: 0.45,
};

/** A fix and when it arrives, both on the own clock but for the fix's own stamp in epoch ms. */
export interface Received {
  readonly arrivedS: number;
  readonly fix: Fix;
}

const BURST_MIN_S = 8;
const BURST_MORE_S = 25;
const WEAVE_TAU_S = 25;
/** Half the chord over which the road's direction is taken. */
const CHORD_M = 4;
/** Stamps jitter by some hundredths of a second. */
const JITTER_S = 0.04;

/** First-order Markov sequence, sampled every stepS. */
const wander = (chance: Chance, sd: number, tauS: number, stepS: number): (() => number) => {
  const keep = Math.exp(-stepS / tauS);
  const kick = sd * Math.sqrt(1 - keep * keep);
  let x = sd * chance.normal();
  return () => {
    x = keep * x + kick * chance.normal();
    return x;
  };
};

const bursts = (chance: Chance, model: ReceiverModel): (() => readonly [number, number]) => {
  let left = 0;
  let at: readonly [number, number] = [0, 0];
  return () => {
    if (left > 0) left -= model.everyS;
    else if (chance.uniform() < (model.burstsPerHour * model.everyS) / 3600) {
      left = BURST_MIN_S + chance.uniform() * BURST_MORE_S;
      at = [chance.normal() * model.burstM, chance.normal() * model.burstM];
    } else at = [0, 0];
    return at;
  };
};

/** What the receiver gives of a run along a line, in order of arrival. `startMs` is the epoch time of own clock 0. */
export const receive = (
  line: CourseLine,
  truth: Truth,
  model: ReceiverModel,
  startMs: number,
  chance: Chance,
): Received[] => {
  const step = model.everyS;
  const slow = [
    wander(chance, model.slow.sdM, model.slow.tauS, step),
    wander(chance, model.slow.sdM, model.slow.tauS, step),
  ];
  const quick = [
    wander(chance, model.quick.sdM, model.quick.tauS, step),
    wander(chance, model.quick.sdM, model.quick.tauS, step),
  ];
  const staying = [chance.normal() * model.stayingM, chance.normal() * model.stayingM];
  const weave = wander(chance, model.weaveM, WEAVE_TAU_S, step);
  const burst = bursts(chance, model);
  const received: Received[] = [];
  for (let t = truth.fromS; t <= truth.toS; t += step) {
    const stampS = t + chance.uniform() * JITTER_S;
    const along = truth.distanceAtM(stampS - model.lagS);
    const aside = weave();
    const jump = burst();
    const error = [0, 1].map(
      (i) =>
        (staying[i] ?? 0) +
        (slow[i]?.() ?? 0) +
        (quick[i]?.() ?? 0) +
        model.whiteM * chance.normal() +
        (jump[i] ?? 0),
    );
    const late = chance.uniform() < model.lateShare ? 1 + 3 * chance.uniform() : 0;
    const speedNoise = chance.normal();
    const accuracyNoise = chance.uniform();
    const place = truth.distanceAtM(stampS);
    if (model.deadM.some((d) => place >= d.fromM && place < d.toM)) continue;
    const e = eastAtM(line, along + CHORD_M) - eastAtM(line, along - CHORD_M);
    const n = northAtM(line, along + CHORD_M) - northAtM(line, along - CHORD_M);
    const chord = Math.hypot(e, n) || 1;
    const point = pointOn(
      line.plane,
      eastAtM(line, along) + (aside * n) / chord + (error[0] ?? 0),
      northAtM(line, along) - (aside * e) / chord + (error[1] ?? 0),
    );
    const usualM = Math.hypot(model.stayingM, model.slow.sdM, model.quick.sdM);
    const speed = model.speedSdMps === null ? null : truth.speedAtMps(stampS) + model.speedSdMps * speedNoise;
    received.push({
      arrivedS: stampS + model.arrivalS + late,
      fix: {
        timestampMs: Math.round(startMs + stampS * 1000),
        latitudeDeg: rounded(point.latitudeDeg, 7),
        longitudeDeg: rounded(point.longitudeDeg, 7),
        accuracyM: rounded(Math.max(2.5, usualM * (1.2 + 0.8 * accuracyNoise) + (jump[0] === 0 ? 0 : 8)), 1),
        speedMps: speed === null ? null : rounded(Math.max(0, speed), 2),
        altitudeM: null,
      },
    });
  }
  return received.sort((a, b) => a.arrivedS - b.arrivedS);
};

const rounded = (x: number, digits: number): number => Math.round(x * 10 ** digits) / 10 ** digits;
