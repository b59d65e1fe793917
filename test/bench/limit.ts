import { eastAtM, northAtM } from '../../src/core/course/line.ts';
import { independent, predict, update } from '../../src/core/estimate/kalman.ts';
import type { World } from './worlds.ts';

/**
 * The limit: how sure of the distance anyone could be who takes fixes as they come and knows everything that the engine
 * has to find out: the road, the sizes and time constants of the receiver's error, its lateness, when a reading is
 * thrown by a wall (such readings tell nothing). For noises that are Gauss-Markov and a road that is straight over an
 * error's length that is the covariance of the Kalman filter, and it needs no data, only the moments and directions of
 * the readings: Anderson & Moore, Optimal Filtering, 1979, section 3.1. It is a bound for a receiver without bursts;
 * among many bursts it cannot be reached.
 */
const PLACE = 0;
const SPEED = 1;
const WAVER = 2;
const SLOW = [3, 4] as const;
const QUICK = [5, 6] as const;
const STAY = [7, 8] as const;
const ASIDE = 9;
const STATES = 10;

/** Spread of speeds of a field of runners; a minute of fixes removes it. */
const FIELD_SPEED_SD_MPS = 0.9;
/** The weaving of the simulated runner across the road. */
const WEAVE_TAU_S = 25;
const CHORD_M = 4;

/** Standard deviation of the distance after each fix, in metres, with the own-clock time of it. */
export const limitM = ({
  road,
  receiver,
  runner,
  run: { truth, inputs, startMs },
}: World): { ownS: number; sdM: number }[] => {
  const { slow, quick, stayingM, weaveM, whiteM, speedSdMps, lagS } = receiver;
  const speedMps = road.officialM / truth.toS;
  const waverSd = runner.waverShare * speedMps;
  const sd = [
    0,
    FIELD_SPEED_SD_MPS,
    waverSd,
    slow.sdM,
    slow.sdM,
    quick.sdM,
    quick.sdM,
    stayingM,
    stayingM,
    weaveM,
  ];
  const belief = independent(new Array<number>(STATES).fill(0), sd);
  const limits: { ownS: number; sdM: number }[] = [];
  let lastS = 0;
  for (const input of inputs) {
    if (input.type !== 'fix') continue;
    const ownS = (input.fix.timestampMs - startMs) / 1000;
    const dtS = ownS - lastS;
    if (dtS <= 0) continue;
    lastS = ownS;
    const keep = (tauS: number): number => Math.exp(-dtS / tauS);
    const waver = keep(runner.waverTauS);
    const decay = Float64Array.of(
      1,
      1,
      waver,
      keep(slow.tauS),
      keep(slow.tauS),
      keep(quick.tauS),
      keep(quick.tauS),
      1,
      1,
      keep(WEAVE_TAU_S),
    );
    const noise = Float64Array.from(decay, (k, i) => (sd[i] as number) ** 2 * (1 - k * k));
    // Place takes the integral of the waver over the step, and the part of it that is drawn within the step.
    noise[PLACE] = ((noise[WAVER] as number) * dtS * dtS) / 3;
    predict(
      belief,
      decay,
      [
        { row: PLACE, col: SPEED, value: dtS },
        { row: PLACE, col: WAVER, value: runner.waverTauS * (1 - waver) },
      ],
      noise,
    );
    const along = truth.distanceAtM(ownS - lagS);
    const east = eastAtM(road, along + CHORD_M) - eastAtM(road, along - CHORD_M);
    const north = northAtM(road, along + CHORD_M) - northAtM(road, along - CHORD_M);
    const chord = Math.hypot(east, north) || 1;
    const direction = [east / chord, north / chord] as const;
    const across = [direction[1], -direction[0]] as const;
    for (const axis of [0, 1] as const) {
      const h = new Float64Array(STATES);
      h[PLACE] = direction[axis];
      h[SPEED] = h[WAVER] = -lagS * direction[axis];
      h[ASIDE] = across[axis];
      h[SLOW[axis]] = h[QUICK[axis]] = h[STAY[axis]] = 1;
      update(belief, h, 0, whiteM ** 2);
    }
    if (speedSdMps !== null) {
      const h = new Float64Array(STATES);
      h[SPEED] = h[WAVER] = 1;
      update(belief, h, 0, speedSdMps ** 2);
    }
    limits.push({ ownS, sdM: Math.sqrt(belief.P[PLACE * STATES + PLACE] as number) });
  }
  return limits;
};
