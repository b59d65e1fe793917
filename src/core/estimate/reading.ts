import type { Fix } from './input.ts';
import { beginSpeedCheck, checkSpeed, type SpeedCheck } from './speedCheck.ts';

/** What has been learned of how this receiver fills in its readings. */
export interface Reading {
  /** Running middle of the stated accuracies; null before the first. */
  readonly usualAccuracyM: number | null;
  /** Readings with a speed above zero so far: a receiver that has none fills zeros. */
  readonly movingSpeeds: number;
  readonly check: SpeedCheck;
}

/** Receivers that give a speed have given this many by the time a zero is believed to be standing. */
const SPEEDS_TO_TRUST_ZERO = 5;
/** The stated accuracy is a hint of unknown meaning: only against this receiver's own usual does it say anything. */
const WORSE_FACTOR = 2;
/** Wireless networks and masts place a phone to within no less; a satellite receiver that takes over is so much better. */
const COARSE_M = 40;
const WOKEN_FACTOR = 3;
/** From a radius to one axis, taking the radius as 68 % (phones; the standard says 95 %): 1.51 σ. */
const RADIUS_TO_SD = 1.51;
const LEARN = 0.03;

export const readFix = {
  begin: { usualAccuracyM: null, movingSpeeds: 0, check: beginSpeedCheck } satisfies Reading,
  take: (
    state: Reading,
    fix: Fix,
  ): {
    readonly reading: Reading;
    readonly speedMps: number | null;
    readonly extraSdM: number;
    readonly wokeUp: boolean;
  } => {
    const movingSpeeds = state.movingSpeeds + (fix.speedMps !== null && fix.speedMps > 0 ? 1 : 0);
    const usual = state.usualAccuracyM ?? fix.accuracyM;
    const worseM =
      fix.accuracyM !== null && usual !== null && fix.accuracyM > WORSE_FACTOR * usual
        ? fix.accuracyM - usual
        : 0;
    // Network positions until now: what they said of the place was no more than the block.
    const wokeUp =
      fix.accuracyM !== null && usual !== null && usual >= COARSE_M && fix.accuracyM * WOKEN_FACTOR < usual;
    const usualAccuracyM = wokeUp
      ? fix.accuracyM
      : usual === null || fix.accuracyM === null
        ? usual
        : usual * Math.exp(LEARN * Math.sign(fix.accuracyM - usual));
    const { check, speedMps } = checkSpeed(state.check, fix);
    return {
      reading: { usualAccuracyM, movingSpeeds, check },
      speedMps: speedMps === 0 && movingSpeeds < SPEEDS_TO_TRUST_ZERO ? null : speedMps,
      extraSdM: worseM / RADIUS_TO_SD,
      wokeUp,
    };
  },
};
