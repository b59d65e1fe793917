import { dot, independent, predict, update } from '../../../src/core/estimate/kalman.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';

/** How a phone hears the sky, along the road: a wandering error, a quicker one, white noise, and Doppler speed. */
export interface Reception {
  readonly slowM: number;
  readonly slowTauS: number;
  readonly quickM: number;
  readonly quickTauS: number;
  readonly whiteM: number;
  readonly dopplerMps: number;
}

/** Sizes as measured on phones: open sky, and streets. */
export const OPEN: Reception = {
  slowM: 1.2,
  slowTauS: 80,
  quickM: 0.3,
  quickTauS: 4,
  whiteM: 0.1,
  dopplerMps: 0.15,
};
export const TOWN: Reception = {
  slowM: 3.3,
  slowTauS: 80,
  quickM: 0.8,
  quickTauS: 4,
  whiteM: 0.1,
  dopplerMps: 0.25,
};

/** What the estimate knows of the speed after a second of running. */
export interface Heard {
  readonly speedMps: number;
  readonly speedSdMps: number;
}

/** As the estimate believes that speeds change: a pace kept up, and a waver of 0.08 m/s over 50 s. */
const WAVER_MPS = 0.08;
const WAVER_TAU_S = 50;
const BASE_WALK_MPS = 0.004;

/** A first-order Gauss-Markov sequence at one second. */
const markov = (normal: () => number, sd: number, tauS: number): (() => number) => {
  const keep = Math.exp(-1 / tauS);
  let x = sd * normal();
  return () => {
    x = keep * x + sd * Math.sqrt(1 - keep * keep) * normal();
    return x;
  };
};

/**
 * A run heard through a receiver and followed by a filter along the road (distance, pace, waver, slow and quick error):
 * the errors of what comes out are as correlated as those of the real estimate.
 * @param speedAt true speed in m/s for each second
 */
export const hear = (
  reception: Reception,
  seconds: number,
  speedAt: (s: number) => number,
  seed: number,
): Heard[] => {
  const { normal } = chanceOf(seed);
  const slow = markov(normal, reception.slowM, reception.slowTauS);
  const quick = markov(normal, reception.quickM, reception.quickTauS);
  const keep = (tauS: number): number => Math.exp(-1 / tauS);
  const decay = Float64Array.of(1, 1, keep(WAVER_TAU_S), keep(reception.slowTauS), keep(reception.quickTauS));
  const grown = (sd: number, tauS: number): number => sd ** 2 * (1 - keep(tauS) ** 2);
  const q = Float64Array.of(
    grown(WAVER_MPS, WAVER_TAU_S) / 3,
    BASE_WALK_MPS ** 2,
    grown(WAVER_MPS, WAVER_TAU_S),
    grown(reception.slowM, reception.slowTauS),
    grown(reception.quickM, reception.quickTauS),
  );
  const couplings = [
    { row: 0, col: 1, value: 1 },
    { row: 0, col: 2, value: WAVER_TAU_S * (1 - keep(WAVER_TAU_S)) },
  ];
  const place = { at: [0, 3, 4], by: [1, 1, 1] };
  const doppler = { at: [1, 2], by: [1, 1] };
  const g = independent([0, speedAt(0), 0, 0, 0], [1, 0.3, 0.1, reception.slowM, reception.quickM]);
  const heard: Heard[] = [];
  let trueM = 0;
  for (let s = 0; s < seconds; s++) {
    const speed = speedAt(s);
    trueM += speed;
    predict(g, decay, couplings, q);
    update(
      g,
      doppler,
      speed + reception.dopplerMps * normal() - dot(doppler, g.x),
      reception.dopplerMps ** 2,
    );
    const readM = trueM + slow() + quick() + reception.whiteM * normal();
    update(g, place, readM - dot(place, g.x), reception.whiteM ** 2);
    const variance = (g.P[6] ?? 0) + 2 * (g.P[7] ?? 0) + (g.P[12] ?? 0);
    heard.push({ speedMps: dot(doppler, g.x), speedSdMps: Math.sqrt(variance) });
  }
  return heard;
};

/** A pace that waves about by itself: share of the speed, over 50 s. */
export const waving = (share: number, seconds: number, seed: number): number[] => {
  const wave = markov(chanceOf(seed + 7919).normal, share, WAVER_TAU_S);
  return Array.from({ length: seconds }, () => 1 + wave());
};
