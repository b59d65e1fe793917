import { EVENT_NAMES, type EventName, type Fix, type Input } from '../core/estimate/input.ts';

/** One line of a fix log as it was read, before its times are held against its neighbours'. */
export type LogEntry =
  | {
      readonly type: 'fix';
      readonly timestampMs: number;
      readonly receivedMs: number | null;
      readonly fix: Fix;
    }
  | {
      readonly type: 'event';
      readonly timestampMs: number;
      readonly receivedMs: number | null;
      readonly event: EventName;
    }
  | {
      readonly type: 'motion';
      readonly timestampMs: number;
      readonly receivedMs: number | null;
      readonly stepHz: number | null;
    }
  | { readonly type: 'clock'; readonly timestampMs: number; readonly receivedMs: number | null };

/** Why a line cannot be used: what was expected and what stood there. */
export interface LineFault {
  readonly expected: string;
  readonly found: string;
}

/** Quicker than any runner; a receiver that claims more is not to be believed. */
const MAX_SPEED_MPS = 30;
/** Nobody takes ten steps a second. */
const MAX_STEP_HZ = 10;
const SHOWN_CHARS = 40;

const isNumber = (x: unknown): x is number => typeof x === 'number' && Number.isFinite(x);
const numberIn = (x: unknown, min: number, max: number): number | null =>
  isNumber(x) && x >= min && x <= max ? x : null;
const isObject = (x: unknown): x is Readonly<Record<string, unknown>> =>
  typeof x === 'object' && x !== null && !Array.isArray(x);

const shown = (x: unknown): string => {
  if (x === undefined) return 'nothing';
  if (typeof x === 'object' && x !== null) return Array.isArray(x) ? 'a list' : 'an object';
  const text = JSON.stringify(x) ?? String(x);
  return text.length > SHOWN_CHARS ? `${text.slice(0, SHOWN_CHARS)}…` : text;
};
const fault = (expected: string, found: unknown): LineFault => ({ expected, found: shown(found) });

type Times = { readonly timestampMs: number; readonly receivedMs: number | null };

/** Only the position decides whether a fix is usable; what is odd in the rest is taken for not stated. */
const fixOf = (coords: Readonly<Record<string, unknown>>, times: Times): LogEntry | LineFault => {
  const latitudeDeg = numberIn(coords['latitude'], -90, 90);
  if (latitudeDeg === null) return fault('coords.latitude in degrees, -90 to 90', coords['latitude']);
  const longitudeDeg = numberIn(coords['longitude'], -180, 180);
  if (longitudeDeg === null) return fault('coords.longitude in degrees, -180 to 180', coords['longitude']);
  if (latitudeDeg === 0 && longitudeDeg === 0) return fault('a position', '0, 0: a receiver without one');
  return {
    ...times,
    type: 'fix',
    fix: {
      timestampMs: times.timestampMs,
      latitudeDeg,
      longitudeDeg,
      accuracyM: numberIn(coords['accuracy'], 0, Number.MAX_VALUE),
      speedMps: numberIn(coords['speed'], 0, MAX_SPEED_MPS),
      altitudeM: numberIn(coords['altitude'], -Number.MAX_VALUE, Number.MAX_VALUE),
    },
  };
};

/** One line to an entry, or why not. Never throws. */
export const readLogLine = (line: string): LogEntry | LineFault => {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return fault('a fix or an event as a JSON object', line);
  }
  if (!isObject(value)) return fault('a fix or an event as a JSON object', value);
  const receivedMs = numberIn(value['receivedMs'], 0, Number.MAX_SAFE_INTEGER);
  const timestampMs = numberIn(value['timestamp'], 0, Number.MAX_SAFE_INTEGER) ?? receivedMs;
  if (timestampMs === null) return fault('timestamp in milliseconds', value['timestamp']);
  const times: Times = { timestampMs, receivedMs };
  if (isObject(value['coords'])) return fixOf(value['coords'], times);
  if (isObject(value['motion'])) {
    return { ...times, type: 'motion', stepHz: numberIn(value['motion']['stepHz'], 0, MAX_STEP_HZ) };
  }
  if (value['clock'] === true) return { ...times, type: 'clock' };
  const event = EVENT_NAMES.find((name) => name === value['event']);
  if (event) return { ...times, type: 'event', event };
  if (value['event'] !== undefined) return fault(`event as one of ${EVENT_NAMES.join(', ')}`, value['event']);
  return fault('coords or event', value['coords']);
};

/** The line that gives this input back, without its line break. `receivedMs` is ours; the rest is the shape of the W3C. */
export const writeLogLine = (input: Input): string => {
  const receivedMs = input.atMs;
  switch (input.type) {
    case 'fix': {
      const { timestampMs, latitudeDeg, longitudeDeg, accuracyM, speedMps, altitudeM } = input.fix;
      const coords = {
        latitude: latitudeDeg,
        longitude: longitudeDeg,
        accuracy: accuracyM,
        altitude: altitudeM,
        altitudeAccuracy: null,
        heading: null,
        speed: speedMps,
      };
      return JSON.stringify({ timestamp: timestampMs, receivedMs, coords });
    }
    case 'event':
      return JSON.stringify({ timestamp: input.atMs, receivedMs, event: input.event });
    case 'motion':
      return JSON.stringify({ timestamp: input.atMs, receivedMs, motion: { stepHz: input.stepHz } });
    case 'clock':
      return JSON.stringify({ timestamp: input.atMs, receivedMs, clock: true });
  }
};
