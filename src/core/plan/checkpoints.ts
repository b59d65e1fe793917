import { M_PER_KM } from '../units/units.ts';

const EVERY_M = 5 * M_PER_KM;
/** Nearer than this to half-way, a 5 km mat says the same thing twice. */
const APART_M = 100;

/** Where nothing is asked for: every 5 km short of the finish, and half-way. Ascending. */
export const defaultCheckpointsM = (distanceM: number): number[] => {
  const places = [distanceM / 2];
  for (let atM = EVERY_M; atM < distanceM; atM += EVERY_M) {
    if (Math.abs(atM - distanceM / 2) > APART_M) places.push(atM);
  }
  return places.sort((a, b) => a - b);
};

/** Ascending, each place once, the finish itself left out: it has a call of its own. */
export const tidyCheckpointsM = (placesM: readonly number[], distanceM: number): number[] =>
  [...new Set(placesM)].filter((atM) => atM < distanceM).sort((a, b) => a - b);
