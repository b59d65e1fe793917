import type { RacePlan } from '../../../src/core/plan/racePlan.ts';

export const HALF_M = 21_097.5;

/** A half marathon in 1:44 with nothing but a goal. */
export const bareHalf: RacePlan = {
  version: 1,
  kind: 'race',
  name: 'Harbour half',
  distanceM: HALF_M,
  goalS: 6240,
  goalBy: 'own',
  unit: 'km',
  pacing: 'pace',
  opening: null,
  push: null,
  checkpointsM: [5000, 10_000, HALF_M / 2, 15_000, 20_000],
  stations: [],
  fuel: [],
};

const water = (atM: number) => ({ atM, offers: ['water' as const] });

/** The same with an opening, a push, stations and a gel. */
export const fullHalf: RacePlan = {
  ...bareHalf,
  opening: { untilM: 1500, quickerSPerKm: 6 },
  push: { fromM: 18_097.5, quickerSPerKm: 4 },
  stations: [water(4700), water(9600), { atM: 11_000, offers: ['drink'] }, water(12_300), water(17_000)],
  fuel: [{ item: 'gel', atM: 12_150 }],
};
