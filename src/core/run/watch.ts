import { beginCheckpoints, type CheckpointWatch } from '../cues/rules/checkpoint.ts';
import { beginMarkers, type MarkerWatch } from '../cues/rules/marker.ts';

/** What each rule remembers between two looks. */
export interface Watch {
  readonly checkpoint: CheckpointWatch;
  readonly marker: MarkerWatch;
}

export const beginWatch: Watch = { checkpoint: beginCheckpoints, marker: beginMarkers };
