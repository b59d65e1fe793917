/**
 * Receivers as they are: a position error is a slow part that wanders over a minute or more, a quick part over seconds,
 * and a part that stays. How large they are differs by street and by phone and is not told by the stated accuracy: it is
 * learned from how far across the line the fixes fall.
 *
 * Published and recorded phone errors, per axis: in the open 0.6-1.3 m with time constants of 26-250 s; in town 3-5 m,
 * 67-159 s, with 1.5-3.4 m of quicker noise; among tall buildings 7 m RMS with 13 % over 10 m, 30-43 s. That static
 * receivers err in a strongly time-correlated way, better described by a Gauss-Markov process than by white noise:
 * Soundy et al., Sensors 20 (2020) 6050.
 */
export interface Air {
  readonly slowSdM: number;
  readonly slowTauS: number;
  readonly quickSdM: number;
  readonly quickTauS: number;
}

/** The slow error is never believed smaller or larger than this. */
export const SLOW_SD_MIN_M = 1;
export const SLOW_SD_MAX_M = 15;
/** Among tall buildings errors are larger and change sooner, as the sky that is left turns with the street. */
const TALL_SD_M = 5;

export const airOf = (slowSdM: number): Air => ({
  slowSdM,
  slowTauS: slowSdM > TALL_SD_M ? 50 : 80,
  quickSdM: 0.6 + 0.2 * slowSdM,
  quickTauS: 4,
});

/** What is believed of the receiver before it has shown itself. */
export interface ReceiverPrior {
  /** The slow error, per axis. */
  readonly slowSdM: number;
  /** Positions come late by this much (phones in the open: 0.5-1.5 s; some hardly at all). */
  readonly lagS: number;
  readonly lagSdS: number;
  /** The part of the position error that stays for the whole run, per axis. */
  readonly stayingSdM: number;
  /** Relative error of the Doppler speed that stays. */
  readonly speedScaleSd: number;
}

export const USUAL_RECEIVER: ReceiverPrior = {
  slowSdM: 2.8,
  lagS: 0.6,
  lagSdS: 0.45,
  stayingSdM: 1.5,
  speedScaleSd: 0.003,
};

/** White rest of a position reading, per axis: rounding and what the other parts do not catch. */
export const WHITE_SD_M = 0.25;
/** Doppler speed noise at first; learned from the innovations afterwards, within these bounds. */
export const DOPPLER_SD_MPS = 0.3;
export const DOPPLER_SD_MIN_MPS = 0.1;
export const DOPPLER_SD_MAX_MPS = 1.5;
