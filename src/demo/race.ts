import { defaultCheckpointsM } from '../core/plan/checkpoints.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import { DEMO_DISTANCE_M, stretchM } from './course.ts';

/** What the demo runner means to do: 1:44:00, a first kilometre and a half a little quicker, the rest at even effort. */
export const demoPlan: RacePlan = {
  version: 1,
  kind: 'race',
  name: 'Harbour half, the demo',
  distanceM: DEMO_DISTANCE_M,
  goalS: 6240,
  goalBy: 'own',
  unit: 'km',
  pacing: 'effort',
  opening: { untilM: 1500, quickerSPerKm: 6 },
  push: { fromM: 18_097.5, quickerSPerKm: 4 },
  checkpointsM: defaultCheckpointsM(DEMO_DISTANCE_M),
  stations: [
    { atM: 4700, offers: ['water'] },
    { atM: 8900, offers: ['water', 'drink'] },
    { atM: 13_300, offers: ['water'] },
    { atM: 17_400, offers: ['water', 'drink'] },
  ],
  fuel: [
    { item: 'gel', atM: 8700 },
    { item: 'gel', atM: 13_100 },
  ],
};

const tunnel = stretchM('Headland Tunnel');
const hill = { fromM: stretchM('Lantern Lane').fromM, toM: stretchM('Beacon Road').toM };

/**
 * What the demo runner does instead (a runner model of src/sensors): carried away at the start, slower up the hill than
 * even effort asks, heavy legs for some kilometres after it, and something left for the end.
 */
export const demoRunner = {
  waverShare: 0.011,
  waverTauS: 50,
  tooQuick: { untilM: 1900, share: 0.03 },
  hillLossPerPercent: 0.008,
  fade: null,
  stretches: [
    { fromM: hill.toM, toM: 16_200, share: -0.012 },
    { fromM: 17_500, toM: DEMO_DISTANCE_M, share: 0.025 },
  ],
  stationLossS: 3,
  stops: [],
};

/** Where reception is gone: the tunnel, and a moment longer while the receiver finds itself again. */
export const demoDeadM = [{ fromM: tunnel.fromM, toM: tunnel.toM + 20 }];

/** What the demo runner presses: the start, boards now and then, and twice the question where they stand. */
export const demoPresses = {
  boards: { atM: [3000, 7000, 11_000, 16_000], sdS: 0.6, missedShare: 0 },
  others: [
    { atS: 0, event: 'start' as const },
    { atS: 2150, event: 'ask' as const },
    { atS: 4475, event: 'ask' as const },
  ],
};

/** Seconds in the pen before the start, and the seed of the demo's chance. */
export const DEMO_PEN_S = 60;
export const DEMO_SEED = 14;
