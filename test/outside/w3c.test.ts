import { describe, expect, test } from 'vitest';
import { TONES } from '../../src/core/cues/voicePort.ts';
import {
  fixOf,
  type Reception,
  repairedMs,
  WATCH_OPTIONS,
  watchFixes,
} from '../../src/sensors/geolocation.ts';
import { vibrationOf } from '../../src/voice/tones/vibration.ts';

/** Kept apart from the code under test: what the standards print. */
const CODES = { PERMISSION_DENIED: 1, POSITION_UNAVAILABLE: 2, TIMEOUT: 3 } as const;
const NOW_MS = Date.UTC(2026, 8, 13, 9, 0, 0);

const position = (coords: Partial<GeolocationCoordinates>, timestamp = NOW_MS): GeolocationPosition => {
  const all = {
    latitude: 54,
    longitude: 7,
    accuracy: 5,
    altitude: null,
    altitudeAccuracy: null,
    heading: null,
    speed: null,
    ...coords,
  };
  return { timestamp, coords: { ...all, toJSON: () => all }, toJSON: () => ({ timestamp, coords: all }) };
};

/** A geolocation that does what it is told, and what became of it. */
const stubWatch = () => {
  const receptions: Reception[] = [];
  const fixes: number[] = [];
  let tell: { fix: PositionCallback; error: PositionErrorCallback } | null = null;
  let watched: PositionOptions | undefined;
  let cleared = 0;
  watchFixes({
    geolocation: {
      watchPosition: (fix, error, options) => {
        tell = { fix, error: error ?? (() => {}) };
        watched = options;
        return 1;
      },
      clearWatch: () => {
        cleared++;
      },
    },
    nowMs: () => NOW_MS,
    every: () => () => {},
    onFix: (fix) => fixes.push(fix.latitudeDeg),
    onReception: (reception) => receptions.push(reception),
  });
  return {
    receptions,
    fixes,
    options: () => watched,
    cleared: () => cleared,
    fix: () => tell?.fix(position({})),
    fail: (code: number) => tell?.error({ code, message: '', ...CODES }),
  };
};

describe('W3C Geolocation [seen: w3c/geolocation index.html 4aebf6e7]', () => {
  test.each([CODES.POSITION_UNAVAILABLE, CODES.TIMEOUT])(
    'error %i is no fix now: the watch goes on',
    (code) => {
      const watch = stubWatch();
      watch.fail(code);
      watch.fix();
      expect(watch.receptions.at(-1)).toBe('good');
      expect(watch.fixes).toHaveLength(1);
      expect(watch.cleared()).toBe(0);
    },
  );
  test('error 1, permission denied, is final', () => {
    const watch = stubWatch();
    watch.fail(CODES.PERMISSION_DENIED);
    expect(watch.receptions.at(-1)).toBe('denied');
    expect(watch.cleared()).toBe(1);
  });
  test('a cached fix is never taken (maximumAge 0, the default); high accuracy and an end to waiting are asked for (not the defaults)', () => {
    expect(stubWatch().options()).toEqual(WATCH_OPTIONS);
    expect(WATCH_OPTIONS.maximumAge ?? 0).toBe(0);
    expect(WATCH_OPTIONS.enableHighAccuracy).toBe(true);
    expect(WATCH_OPTIONS.timeout).toBeLessThan(0xffffffff);
  });
  test('timestamp is epoch milliseconds of the reading, and is kept', () => {
    expect(fixOf(position({}, NOW_MS - 1234), NOW_MS)?.timestampMs).toBe(NOW_MS - 1234);
  });
  test('speed null means not given; speed 0 means standing', () => {
    expect(fixOf(position({ speed: null }), NOW_MS)?.speedMps).toBeNull();
    expect(fixOf(position({ speed: 0 }), NOW_MS)?.speedMps).toBe(0);
  });
  test('altitude null means not given', () => {
    expect(fixOf(position({ altitude: null }), NOW_MS)?.altitudeM).toBeNull();
    expect(fixOf(position({ altitude: 0 }), NOW_MS)?.altitudeM).toBe(0);
  });
});

describe('Epochs: Unix time and Apple’s reference date 2001-01-01T00:00:00Z [seen: reports of Safari, la5nta/pat#462]', () => {
  const SECONDS_1970_TO_2001 = 31 * 365 * 86_400 + 8 * 86_400; // leap days: 1972, 76, 80, 84, 88, 92, 96, 2000
  test('they are 978 307 200 s apart', () => {
    expect(SECONDS_1970_TO_2001).toBe(978_307_200);
    expect(Date.UTC(2001, 0, 1)).toBe(SECONDS_1970_TO_2001 * 1000);
  });
  test('a time counted from 2001 is brought back', () => {
    expect(repairedMs(NOW_MS - 800 - SECONDS_1970_TO_2001 * 1000, NOW_MS)).toBe(NOW_MS - 800);
  });
});

describe('W3C Vibration [seen: w3c/vibration index.html 43e6abb3]', () => {
  test.each(TONES)('%s: at most 10 entries, each whole and at most 10 000 ms, ending on a pulse', (tone) => {
    const pattern = vibrationOf(tone);
    expect(pattern.length).toBeGreaterThan(0);
    expect(pattern.length).toBeLessThanOrEqual(10);
    expect(pattern.length % 2).toBe(1);
    for (const ms of pattern) {
      expect(ms).toBe(Math.round(ms));
      expect(ms).toBeGreaterThan(0);
      expect(ms).toBeLessThanOrEqual(10_000);
    }
  });
});
