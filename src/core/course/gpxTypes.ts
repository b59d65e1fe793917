import type { Message } from '../units/message.ts';

import type { LinePoint } from './line.ts';

/** A point of a GPX file: on the ground for certain, the rest where the file has it. */
export interface GpxPoint extends LinePoint {
  /** Milliseconds of the Unix epoch. */
  readonly timeMs: number | null;
  readonly name: string | null;
}

/** One `trk` or `rte`. A route is one stretch; a track has one for each `trkseg`. Stretches without points are left out. */
export interface GpxPath {
  readonly name: string | null;
  readonly segments: readonly (readonly GpxPoint[])[];
}

/** What a GPX file holds, and what of it could not be used. */
export interface Gpx {
  readonly name: string | null;
  readonly tracks: readonly GpxPath[];
  readonly routes: readonly GpxPath[];
  readonly waypoints: readonly GpxPoint[];
  /** Points that were left out. */
  readonly skipped: number;
  /** Why, in words, each reason once with its count: `2 points without a usable lat`. */
  readonly faults: readonly Message[];
}
