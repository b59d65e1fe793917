import { RIEGEL_EXPONENT } from '../goal/formulas.ts';

/**
 * The fade model, ours: what a runner can do today is one number, the time C in which they could run the whole distance
 * D at an even effort. Riegel's curve through (D, C) says how far each speed v could be held:
 *
 *   L(v) = D (vC / v)^(1 / 0.06),   vC = D / C
 *
 * and each stretch dx run at v is taken to use up dx / L(v) of what there is (as metals are taken to tire, Miner 1945).
 * All used up exactly at the line is the best race. The curve is steep: 1 % quicker uses 18 % more. So a quick opening
 * is paid for later with more than it won, the more so the quicker, and an even effort is the best there is.
 */

/** Power of the curve: 1 / (Riegel's exponent - 1), about 16.7. */
const STEEPNESS = 1 / (RIEGEL_EXPONENT - 1);

/** What running `stretchM` at an effort worth `speedMps` on the level uses up; 1 is all there is. */
export const usedBy = (stretchM: number, speedMps: number, distanceM: number, capableMps: number): number =>
  (stretchM / distanceM) * (speedMps / capableMps) ** STEEPNESS;

/** Never quite nothing left: somebody who has used everything still moves, at a little under half speed. */
const LEAST_LEFT = 1e-6;

/** The even speed that uses up what is left exactly at the line. `leftM` above 0. */
export const speedLeftMps = (left: number, leftM: number, distanceM: number, capableMps: number): number =>
  capableMps * ((Math.max(left, LEAST_LEFT) * distanceM) / leftM) ** (1 / STEEPNESS);
