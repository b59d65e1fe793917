import { NOTICES, type NoticeName } from '../core/cues/notice.ts';
import { TALK, type Talk } from '../core/cues/talk.ts';
import { EVENT_NAMES, type EventName, type Fix } from '../core/estimate/input.ts';
import { nonNumbersQuoted } from '../core/plan/json.ts';
import type { RunInput } from '../core/run/settings.ts';

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
  | {
      readonly type: 'heart';
      readonly timestampMs: number;
      readonly receivedMs: number | null;
      readonly bpm: number | null;
    }
  | {
      readonly type: 'footPod';
      readonly timestampMs: number;
      readonly receivedMs: number | null;
      readonly speedMps: number;
      readonly stepsPerMin: number | null;
    }
  | { readonly type: 'clock'; readonly timestampMs: number; readonly receivedMs: number | null }
  | {
      readonly type: 'notice';
      readonly timestampMs: number;
      readonly receivedMs: number | null;
      readonly what: NoticeName;
    }
  | {
      readonly type: 'setting';
      readonly timestampMs: number;
      readonly receivedMs: number | null;
      readonly talk?: Talk;
      readonly quietUntilMs?: number | null;
    };

/** Why a line cannot be used: what was expected and what stood there. */
export interface LineFault {
  readonly expected: string;
  readonly found: string;
}

/** Quicker than any runner; a receiver that claims more is not to be believed. */
const MAX_SPEED_MPS = 30;
/** A fix this bad says nothing of where one is; squares of what a broken receiver may state beyond it are no numbers. */
const WORST_ACCURACY_M = 1_000_000;
/** Dead Sea shore to above the highest pass, as in GPX files. */
const LOWEST_M = -500;
const HIGHEST_M = 9000;
/** Nobody takes ten steps a second. */
const MAX_STEP_HZ = 10;
const MAX_STEPS_PER_MIN = 600;
const HEART_BPM = { least: 20, most: 260 };
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
  const accuracyM = numberIn(coords['accuracy'], 0, Number.MAX_VALUE);
  return {
    ...times,
    type: 'fix',
    fix: {
      timestampMs: times.timestampMs,
      latitudeDeg,
      longitudeDeg,
      accuracyM: accuracyM === null ? null : Math.min(accuracyM, WORST_ACCURACY_M),
      speedMps: numberIn(coords['speed'], 0, MAX_SPEED_MPS),
      altitudeM: numberIn(coords['altitude'], LOWEST_M, HIGHEST_M),
    },
  };
};

/** What is odd in a setting is taken for not stated. */
const settingOf = (setting: Readonly<Record<string, unknown>>, times: Times): LogEntry => {
  const talk = TALK.find((level) => level === setting['talk']);
  const until = setting['quietUntilMs'];
  const quiet = until === null || isNumber(until) ? { quietUntilMs: until } : {};
  return { ...times, type: 'setting', ...(talk ? { talk } : {}), ...quiet };
};

const footPodOf = (pod: Readonly<Record<string, unknown>>, times: Times): LogEntry | LineFault => {
  const speedMps = numberIn(pod['speedMps'], 0, MAX_SPEED_MPS);
  if (speedMps === null) return fault('footPod.speedMps in metres a second, 0 to 30', pod['speedMps']);
  const stepsPerMin = numberIn(pod['stepsPerMin'], 0, MAX_STEPS_PER_MIN);
  return { ...times, type: 'footPod', speedMps, stepsPerMin };
};

/** The line as JSON; where a program wrote NaN for what it did not know, that is not known and the rest is. */
const jsonOf = (line: string): unknown => {
  for (const text of [line, nonNumbersQuoted(line)]) {
    try {
      return JSON.parse(text);
    } catch {
      // The second reading may do; else it is no JSON.
    }
  }
  return line;
};

/** One line to an entry, or why not. Never throws. */
export const readLogLine = (line: string): LogEntry | LineFault => {
  const value = jsonOf(line);
  if (!isObject(value)) return fault('a fix or an event as a JSON object', value);
  const receivedMs = numberIn(value['receivedMs'], 0, Number.MAX_SAFE_INTEGER);
  const timestampMs = numberIn(value['timestamp'], 0, Number.MAX_SAFE_INTEGER) ?? receivedMs;
  if (timestampMs === null) return fault('timestamp in milliseconds', value['timestamp']);
  const times: Times = { timestampMs, receivedMs };
  if (isObject(value['coords'])) return fixOf(value['coords'], times);
  if (isObject(value['motion'])) {
    return { ...times, type: 'motion', stepHz: numberIn(value['motion']['stepHz'], 0, MAX_STEP_HZ) };
  }
  if (isObject(value['heart'])) {
    const bpm = numberIn(value['heart']['bpm'], HEART_BPM.least, HEART_BPM.most);
    return { ...times, type: 'heart', bpm };
  }
  if (isObject(value['footPod'])) return footPodOf(value['footPod'], times);
  if (value['clock'] === true) return { ...times, type: 'clock' };
  const what = NOTICES.find((name) => name === value['notice']);
  if (what) return { ...times, type: 'notice', what };
  if (isObject(value['setting'])) return settingOf(value['setting'], times);
  const event = EVENT_NAMES.find((name) => name === value['event']);
  if (event) return { ...times, type: 'event', event };
  if (value['event'] !== undefined) return fault(`event as one of ${EVENT_NAMES.join(', ')}`, value['event']);
  return fault('coords or event', value['coords']);
};

/** The line that gives this input back, without its line break. `receivedMs` is ours; the rest is the shape of the W3C. */
export const writeLogLine = (input: RunInput): string => {
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
    case 'heart':
      return JSON.stringify({ timestamp: input.atMs, receivedMs, heart: { bpm: input.bpm } });
    case 'footPod': {
      const { speedMps, stepsPerMin } = input;
      return JSON.stringify({ timestamp: input.atMs, receivedMs, footPod: { speedMps, stepsPerMin } });
    }
    case 'clock':
      return JSON.stringify({ timestamp: input.atMs, receivedMs, clock: true });
    case 'notice':
      return JSON.stringify({ timestamp: input.atMs, receivedMs, notice: input.what });
    case 'setting': {
      const { talk, quietUntilMs } = input;
      return JSON.stringify({ timestamp: input.atMs, receivedMs, setting: { talk, quietUntilMs } });
    }
  }
};
