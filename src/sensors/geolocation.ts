import type { Fix } from '../core/estimate/input.ts';

/** What the sensor says of itself, judged by when fixes come. */
export type Reception =
  /** Asked, nothing came yet. */
  | 'waiting'
  | 'good'
  /** No fix for 5 s: the estimate goes on by prediction. */
  | 'degraded'
  /** No fix for 15 s. */
  | 'lost'
  /** The runner, or the system, said no. Final, unless they think better of it. */
  | 'denied'
  /** There is no Geolocation here. */
  | 'absent';

export interface FixWatch {
  /** Clears the watch and makes a new one: after the page was hidden, some systems let it die. */
  readonly renew: () => void;
  readonly stop: () => void;
}

export interface FixWatchPorts {
  readonly geolocation: Pick<Geolocation, 'watchPosition' | 'clearWatch'> | undefined;
  /** Epoch ms on a clock that never steps. */
  readonly nowMs: () => number;
  readonly every: (ms: number, run: () => void) => () => void;
  /** Calls when the runner has allowed it after all; returns what ends that. Absent where nobody can tell. */
  readonly whenAllowed?: (run: () => void) => () => void;
  readonly onFix: (fix: Fix, arrivedMs: number) => void;
  readonly onReception: (reception: Reception) => void;
}

/**
 * One watch and no getCurrentPosition beside it, which starves a watch in some browsers (w3c/geolocation#218). Nothing
 * from a cache; a timeout is only "no fix now".
 */
export const WATCH_OPTIONS: PositionOptions = { enableHighAccuracy: true, maximumAge: 0, timeout: 15_000 };

const LOOK_EVERY_MS = 1000;
const DEGRADED_MS = 5000;
const LOST_MS = 15_000;
const RENEW_MS = 30_000;

/** Between the Unix epoch and that of some Apple clocks, 2001-01-01. */
const EPOCH_2001_MS = 978_307_200_000;
/** No phone clock is a year off, and 1970 is 31 years from 2001. */
const YEAR_MS = 365.25 * 24 * 3600 * 1000;

/** The time a fix claims, brought back from the 2001 epoch; arrival time where it makes no sense at all. */
export const repairedMs = (claimedMs: number, arrivedMs: number): number => {
  if (Math.abs(claimedMs - arrivedMs) < YEAR_MS) return claimedMs;
  const moved = claimedMs + EPOCH_2001_MS;
  return Math.abs(moved - arrivedMs) < YEAR_MS ? moved : arrivedMs;
};

const numberOrNull = (value: number | null | undefined): number | null =>
  typeof value === 'number' && Number.isFinite(value) ? value : null;

/** A reading as the core wants it; null where it holds no place. */
export const fixOf = (position: GeolocationPosition, arrivedMs: number): Fix | null => {
  const { latitude, longitude, accuracy, speed, altitude } = position.coords;
  if (!Number.isFinite(latitude) || !Number.isFinite(longitude)) return null;
  return {
    timestampMs: repairedMs(position.timestamp, arrivedMs),
    latitudeDeg: latitude,
    longitudeDeg: longitude,
    accuracyM: numberOrNull(accuracy),
    speedMps: numberOrNull(speed),
    altitudeM: numberOrNull(altitude),
  };
};

/** Watches the receiver until stopped or refused. */
export const watchFixes = (ports: FixWatchPorts): FixWatch => {
  const { geolocation } = ports;
  if (geolocation === undefined) {
    ports.onReception('absent');
    return { renew: () => {}, stop: () => {} };
  }
  let reception: Reception = 'waiting';
  let lastFixMs: number | null = null;
  let watchedMs = ports.nowMs();
  let id: number | null = null;

  const become = (next: Reception): void => {
    if (next === reception) return;
    reception = next;
    ports.onReception(next);
  };

  const onPosition = (position: GeolocationPosition): void => {
    const arrivedMs = ports.nowMs();
    const fix = fixOf(position, arrivedMs);
    if (fix === null) return;
    lastFixMs = arrivedMs;
    become('good');
    ports.onFix(fix, arrivedMs);
  };

  /** 2 (unavailable) and 3 (timeout) mean that there is no fix now; only 1 (denied) ends it. */
  const onError = (error: GeolocationPositionError): void => {
    if (error.code !== error.PERMISSION_DENIED) return;
    stop();
    become('denied');
  };

  const clear = (): void => {
    if (id !== null) geolocation.clearWatch(id);
    id = null;
  };

  const allowed = (): void => {
    if (reception !== 'denied') return;
    become('waiting');
    lastFixMs = null;
    stopLooking = ports.every(LOOK_EVERY_MS, look);
    renew();
  };

  const renew = (): void => {
    if (reception === 'denied') return;
    clear();
    watchedMs = ports.nowMs();
    id = geolocation.watchPosition(onPosition, onError, WATCH_OPTIONS);
  };

  const look = (): void => {
    const nowMs = ports.nowMs();
    if (lastFixMs !== null) {
      const agoMs = nowMs - lastFixMs;
      become(agoMs >= LOST_MS ? 'lost' : agoMs >= DEGRADED_MS ? 'degraded' : 'good');
    }
    if (nowMs - Math.max(lastFixMs ?? watchedMs, watchedMs) >= RENEW_MS) renew();
  };

  let stopLooking = ports.every(LOOK_EVERY_MS, look);
  const stopWaiting = ports.whenAllowed?.(allowed) ?? (() => {});
  const stop = (): void => {
    stopLooking();
    clear();
  };

  ports.onReception(reception);
  renew();
  return {
    renew,
    stop: () => {
      stop();
      stopWaiting();
    },
  };
};

/** Tells when the permission turns to granted, where the browser has the Permissions API. */
export const whenGeolocationAllowed =
  (permissions: Permissions | undefined) =>
  (run: () => void): (() => void) => {
    let status: PermissionStatus | null = null;
    let ended = false;
    const changed = (): void => {
      if (status?.state === 'granted') run();
    };
    permissions
      ?.query({ name: 'geolocation' })
      .then((found) => {
        if (ended) return;
        status = found;
        status.addEventListener('change', changed);
      })
      .catch(() => {});
    return () => {
      ended = true;
      status?.removeEventListener('change', changed);
    };
  };
