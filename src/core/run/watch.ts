import { beginCheckpoints, type CheckpointWatch } from '../cues/rules/checkpoint.ts';
import { beginDue, type DueWatch } from '../cues/rules/due.ts';
import { beginFuel, type FuelWatch } from '../cues/rules/fuel.ts';
import { beginMarkers, type MarkerWatch } from '../cues/rules/marker.ts';
import { beginOpening, type OpeningWatch } from '../cues/rules/opening.ts';
import { beginPace, type PaceWatch } from '../cues/rules/pace.ts';
import { beginPush, type PushWatch } from '../cues/rules/push.ts';
import { beginSettle, type SettleWatch } from '../cues/rules/settle.ts';
import { beginSignal, type SignalWatch } from '../cues/rules/signal.ts';
import { beginStations, type StationWatch } from '../cues/rules/station.ts';

/** What each rule remembers between two looks. */
export interface Watch {
  readonly opening: OpeningWatch;
  readonly settle: SettleWatch;
  readonly marker: MarkerWatch;
  readonly checkpoint: CheckpointWatch;
  readonly station: StationWatch;
  readonly fuel: FuelWatch;
  readonly push: PushWatch;
  readonly pace: PaceWatch;
  readonly signal: SignalWatch;
  readonly due: DueWatch;
}

export const beginWatch: Watch = {
  opening: beginOpening,
  settle: beginSettle,
  marker: beginMarkers,
  checkpoint: beginCheckpoints,
  station: beginStations,
  fuel: beginFuel,
  push: beginPush,
  pace: beginPace,
  signal: beginSignal,
  due: beginDue,
};
