import { describe, expect, test } from 'vitest';
import type { Fix } from '../../src/core/estimate/input.ts';
import {
  fixOf,
  type Reception,
  repairedMs,
  WATCH_OPTIONS,
  watchFixes,
} from '../../src/sensors/geolocation.ts';
import { pretendTime } from '../session/pretend.ts';

const EPOCH_MS = 1_800_000_000_000;

const positionAt = (timestamp: number, coords: Partial<GeolocationCoordinates> = {}): GeolocationPosition =>
  ({
    timestamp,
    coords: {
      latitude: 54.1,
      longitude: 7.3,
      accuracy: 5,
      speed: null,
      heading: null,
      altitude: null,
      altitudeAccuracy: null,
      ...coords,
    },
  }) as GeolocationPosition;

const errorOf = (code: number): GeolocationPositionError =>
  ({
    code,
    message: '',
    PERMISSION_DENIED: 1,
    POSITION_UNAVAILABLE: 2,
    TIMEOUT: 3,
  }) as GeolocationPositionError;

const rig = () => {
  const time = pretendTime();
  const watches = new Map<number, { onFix: PositionCallback; onError: PositionErrorCallback }>();
  const asked: (PositionOptions | undefined)[] = [];
  let ids = 0;
  let allow = (): void => {};
  const fixes: Fix[] = [];
  const receptions: Reception[] = [];
  const watch = watchFixes({
    geolocation: {
      watchPosition: (onFix, onError, options) => {
        asked.push(options);
        watches.set(++ids, { onFix, onError: onError ?? (() => {}) });
        return ids;
      },
      clearWatch: (id) => {
        watches.delete(id);
      },
    },
    nowMs: () => EPOCH_MS + time.nowMs(),
    every: time.every,
    onFix: (fix) => fixes.push(fix),
    onReception: (reception) => receptions.push(reception),
    whenAllowed: (run) => {
      allow = run;
      return () => {};
    },
  });
  const one = () => {
    expect(watches.size).toBe(1);
    return [...watches.values()][0] as { onFix: PositionCallback; onError: PositionErrorCallback };
  };
  const tell = (coords?: Partial<GeolocationCoordinates>) =>
    one().onFix(positionAt(EPOCH_MS + time.nowMs(), coords));
  return { time, watches, asked, fixes, receptions, watch, one, tell, allow: () => allow() };
};

describe('the watch', () => {
  test('is one, precise, without cache', () => {
    const { asked } = rig();
    expect(asked).toEqual([WATCH_OPTIONS]);
    expect(WATCH_OPTIONS).toEqual({ enableHighAccuracy: true, maximumAge: 0, timeout: 15_000 });
  });

  test('grades reception by the silence since the last fix', () => {
    const { time, tell, receptions } = rig();
    expect(receptions).toEqual(['waiting']);
    tell();
    time.pass(4000);
    expect(receptions.at(-1)).toBe('good');
    time.pass(2000);
    expect(receptions.at(-1)).toBe('degraded');
    time.pass(10_000);
    expect(receptions.at(-1)).toBe('lost');
    tell();
    expect(receptions.at(-1)).toBe('good');
  });

  test('is made anew after half a minute of silence, and again after the next', () => {
    const { time, tell, asked, watches } = rig();
    tell();
    time.pass(29_000);
    expect(asked).toHaveLength(1);
    time.pass(2000);
    expect(asked).toHaveLength(2);
    time.pass(31_000);
    expect(asked).toHaveLength(3);
    expect(watches.size).toBe(1);
  });

  test('is made anew where the first fix never comes', () => {
    const { time, asked } = rig();
    time.pass(31_000);
    expect(asked).toHaveLength(2);
  });

  test('takes "unavailable" and "timeout" as no fix now, and goes on', () => {
    const { time, one, tell, receptions, fixes } = rig();
    one().onError(errorOf(2));
    one().onError(errorOf(3));
    expect(receptions).toEqual(['waiting']);
    time.pass(1000);
    tell();
    expect(fixes).toHaveLength(1);
    one().onError(errorOf(2));
    expect(receptions.at(-1)).toBe('good');
  });

  test('takes a refusal as final', () => {
    const { time, one, watch, watches, receptions, asked } = rig();
    one().onError(errorOf(1));
    expect(receptions.at(-1)).toBe('denied');
    time.pass(120_000);
    watch.renew();
    expect(watches.size).toBe(0);
    expect(asked).toHaveLength(1);
  });

  test('begins again when the runner has allowed it after all', () => {
    const { one, tell, allow, receptions, fixes, asked, time } = rig();
    one().onError(errorOf(1));
    allow();
    expect(asked).toHaveLength(2);
    tell();
    expect(receptions.slice(-3)).toEqual(['denied', 'waiting', 'good']);
    expect(fixes).toHaveLength(1);
    time.pass(6000);
    expect(receptions.at(-1)).toBe('degraded');
  });

  test('leaves nothing running when stopped', () => {
    const { time, watch, watches, asked } = rig();
    watch.stop();
    time.pass(120_000);
    expect(watches.size).toBe(0);
    expect(asked).toHaveLength(1);
  });

  test('says where there is no Geolocation', () => {
    const receptions: Reception[] = [];
    const time = pretendTime();
    watchFixes({
      geolocation: undefined,
      nowMs: time.nowMs,
      every: time.every,
      onFix: () => {},
      onReception: (r) => receptions.push(r),
    });
    expect(receptions).toEqual(['absent']);
  });
});

describe('a reading', () => {
  test('keeps a speed of zero apart from no speed', () => {
    expect(fixOf(positionAt(EPOCH_MS, { speed: 0 }), EPOCH_MS)?.speedMps).toBe(0);
    expect(fixOf(positionAt(EPOCH_MS, { speed: null }), EPOCH_MS)?.speedMps).toBeNull();
    expect(fixOf(positionAt(EPOCH_MS, { speed: Number.NaN }), EPOCH_MS)?.speedMps).toBeNull();
  });

  test('without a place is none', () => {
    expect(fixOf(positionAt(EPOCH_MS, { latitude: Number.NaN }), EPOCH_MS)).toBeNull();
  });

  test('has its time brought back from the epoch of 2001', () => {
    expect(repairedMs(EPOCH_MS - 978_307_200_000, EPOCH_MS + 400)).toBe(EPOCH_MS);
    expect(repairedMs(EPOCH_MS, EPOCH_MS + 400)).toBe(EPOCH_MS);
    expect(repairedMs(0, EPOCH_MS)).toBe(EPOCH_MS);
  });
});
