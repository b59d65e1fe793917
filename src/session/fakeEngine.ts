import type { Input } from '../core/estimate/input.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';

/** Stand-in until src/demo lands. */
export const fakePlan: RacePlan = {
  version: 1,
  kind: 'race',
  name: 'Demo half',
  distanceM: 21097.5,
  goalS: 6240,
  goalBy: 'own',
  unit: 'km',
  pacing: 'pace',
  opening: { untilM: 1500, quickerSPerKm: 6 },
  push: { fromM: 18097.5, quickerSPerKm: 4 },
  checkpointsM: [5000, 10000, 15000, 20000],
  stations: [],
  fuel: [],
};

export const fakeInputs = (plan: RacePlan, fromMs: number): Input[] => {
  const inputs: Input[] = [{ type: 'event', atMs: fromMs, event: 'start' }];
  for (let t = 1; t < plan.goalS + 30; t++) {
    inputs.push({
      type: 'fix',
      atMs: fromMs + t * 1000,
      fix: {
        timestampMs: fromMs + t * 1000,
        latitudeDeg: 54,
        longitudeDeg: 7,
        accuracyM: 5,
        speedMps: (plan.distanceM / plan.goalS) * (1 + 0.02 * Math.sin(t / 400)),
        altitudeM: null,
      },
    });
  }
  return inputs;
};
