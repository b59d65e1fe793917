/** How good reception is, judged by what the fixes do, not by what they state. */
export type Signal = 'waiting' | 'good' | 'poor' | 'lost';

/** How far along the course, how fast, and how sure, at one instant. */
export interface Progress {
  /** The instant this speaks of, engine clock, ms. */
  readonly atMs: number;
  /** When the runner crossed the start line; null while that has not happened. */
  readonly startMs: number | null;
  /** Metres along the official course, in [0, official]; 0 before the start. */
  readonly distanceM: number;
  /** Standard deviation of distanceM; 95 % intervals hold 95 % of the time. */
  readonly distanceSdM: number;
  /** Speed along the course now. */
  readonly speedMps: number;
  readonly speedSdMps: number;
  /** The speed the runner keeps up over minutes, without the waver of the last seconds: for projections. */
  readonly baseSpeedMps: number;
  readonly signal: Signal;
  /** Seconds since the last fix that was used; Infinity when there was none. */
  readonly sinceFixS: number;
}
