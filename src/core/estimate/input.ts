/**
 * What the engine eats. The devices adapt to these types; the log keeps them; everything later is a fold over them.
 * Times are milliseconds. `atMs` is the moment the input arrived, on the engine's one clock (live: wall clock at the
 * start of the run plus the monotonic clock since; in a log without arrival times: the latest timestamp seen so far).
 * It never runs backwards. `timestampMs` is what the source claims and may be anything.
 */

/** One reading of the Geolocation API (W3C Geolocation, coordinates in degrees of WGS 84). */
export interface Fix {
  /** Epoch milliseconds of acquisition, as claimed by the receiver, repaired if it came in the 2001 epoch. */
  readonly timestampMs: number;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** Stated radius in metres (95 % by the standard, about 68 % on real phones); null where none is stated. */
  readonly accuracyM: number | null;
  /** Doppler ground speed; null where the receiver gives none. */
  readonly speedMps: number | null;
  /** Metres above the ellipsoid; null where none. Not used for distance. */
  readonly altitudeM: number | null;
}

export const EVENT_NAMES = ['gun', 'start', 'marker', 'ask', 'level', 'stop'] as const;
/**
 * gun: the race clock starts. start: the runner crosses the start line (own clock 0). marker: pressed at a kilometre
 * or mile board. ask: where do I stand? level: beside the pacer now. stop: the runner ends the run.
 */
export type EventName = (typeof EVENT_NAMES)[number];

export type Input =
  | { readonly type: 'fix'; readonly atMs: number; readonly fix: Fix }
  | { readonly type: 'event'; readonly atMs: number; readonly event: EventName }
  /** Step rate from the accelerometer, steps a second; null when no rhythm was found. */
  | { readonly type: 'motion'; readonly atMs: number; readonly stepHz: number | null }
  /** A heart rate belt, beats a minute; null where it says that it feels no skin. */
  | { readonly type: 'heart'; readonly atMs: number; readonly bpm: number | null }
  /** A foot pod: speed as it believes, steps a minute where it counts them. */
  | {
      readonly type: 'footPod';
      readonly atMs: number;
      readonly speedMps: number;
      readonly stepsPerMin: number | null;
    }
  /** Time passed and nothing came. */
  | { readonly type: 'clock'; readonly atMs: number };
