import type { ReceiverModel } from '../../src/sensors/simulatedReceiver.ts';
import { SHAPES } from './courses.ts';
import { type Shown, shownIn } from './curve.ts';
import { type Raced, race } from './race.ts';
import { planOf, RECEIVED, type Reception, type World, worldOf } from './worlds.ts';

export const PLAN = planOf({ distanceM: 10000, goalS: 2700, checkpointsM: [5000] });
export const PACE_S_PER_KM = (PLAN.goalS / PLAN.distanceM) * 1000;
export const CHANGE_M = 4200;
/** The departure that has to be found. */
export const DEPARTURE_S_PER_KM = 6;

export interface Air {
  readonly name: string;
  readonly reception: Reception;
  readonly receiver: Partial<ReceiverModel>;
}
export const AIRS: readonly Air[] = [
  ...RECEIVED.map((name) => ({
    name,
    reception: name,
    receiver: {},
  })),
  { name: 'town, speed to 0.25 m/s', reception: 'town', receiver: { speedSdMps: 0.25 } },
  { name: 'town, speed to 0.15 m/s', reception: 'town', receiver: { speedSdMps: 0.15 } },
];

/** One race and what came of it. */
export interface Paced {
  readonly air: Air;
  readonly waverShare: number;
  /** Departure from CHANGE_M on, seconds per kilometre; 0: none. */
  readonly byS: number;
  readonly changeS: number;
  readonly calls: readonly { readonly ownS: number; readonly side: 'quick' | 'slow' }[];
  readonly falseCalls: number;
  readonly shown: readonly Shown[];
}

/** A call is false when the runner's true pace over the minute before was this near to the plan, or on its other side. */
const NEAR_S_PER_KM = 3;
const MINUTE_S = 60;

const callsOf = ({ run: { startMs } }: World, raced: Raced): Paced['calls'] =>
  raced.calls.flatMap(({ saying, startMs: soundMs }) =>
    saying.kind === 'ease' || saying.kind === 'quicken'
      ? [{ ownS: (soundMs - startMs) / 1000, side: saying.kind === 'ease' ? 'quick' : 'slow' } as const]
      : [],
  );

const falseOf = ({ run: { truth } }: World, calls: Paced['calls']): number =>
  calls.filter(({ ownS, side }) => {
    const ranM = truth.distanceAtM(ownS) - truth.distanceAtM(Math.max(0, ownS - MINUTE_S));
    const slowerS = (1000 * Math.min(MINUTE_S, ownS)) / ranM - PACE_S_PER_KM;
    return (side === 'quick' ? -slowerS : slowerS) < NEAR_S_PER_KM;
  }).length;

export const pacedIn = (air: Air, waverShare: number, byS: number, seed: number): Paced => {
  const stretches =
    byS === 0
      ? []
      : [{ fromM: CHANGE_M, toM: PLAN.distanceM, share: PACE_S_PER_KM / (PACE_S_PER_KM + byS) - 1 }];
  const world = worldOf({
    plan: PLAN,
    shape: SHAPES[seed % SHAPES.length] ?? 'city',
    reception: air.reception,
    receiver: air.receiver,
    runner: { waverShare, stretches },
    seed,
  });
  const raced = race(world);
  const calls = callsOf(world, raced);
  return {
    air,
    waverShare,
    byS,
    changeS: world.run.truth.crossingS(CHANGE_M) ?? 0,
    calls,
    falseCalls: falseOf(world, calls),
    shown: waverShare === 0 ? shownIn(world, raced) : [],
  };
};

/** Seconds from the change to the first call that it calls for; null where none came. */
export const delayOf = ({ byS, changeS }: Paced, calls: Paced['calls']): number | null => {
  const side = byS > 0 ? 'slow' : 'quick';
  const call = calls.find((c) => c.side === side && c.ownS > changeS);
  return call ? call.ownS - changeS : null;
};
export const orNever = (delayS: number | null): number => delayS ?? Number.POSITIVE_INFINITY;
