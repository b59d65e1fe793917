import type { Fix, Input } from '../core/estimate/input.ts';

/** What the watch wants of a Geolocation. */
type Receiver = Pick<Geolocation, 'watchPosition' | 'clearWatch'>;

interface Parts {
  /** A simulated run: fixes in order, and the instant of its start. */
  readonly tape: readonly Input[];
  readonly nowMs: () => number;
  readonly every: (ms: number, run: () => void) => () => void;
  /** When the runner pressed start; null before: the simulated runner waits in the pen for it. */
  readonly startedMs: () => number | null;
}

const positionOf = (fix: Fix, timestamp: number): GeolocationPosition =>
  ({
    timestamp,
    coords: {
      latitude: fix.latitudeDeg,
      longitude: fix.longitudeDeg,
      accuracy: fix.accuracyM ?? 0,
      altitude: fix.altitudeM,
      altitudeAccuracy: null,
      heading: null,
      speed: fix.speedMps,
    },
  }) as GeolocationPosition;

const LOOK_EVERY_MS = 200;
const PEN_EVERY_MS = 1000;

/**
 * A Geolocation whose runner is simulated, for practising the day at home on the very screens of the race: in the pen until
 * start is pressed, then along the tape in real time.
 */
export const simulatedGeolocation = ({ tape, nowMs, every, startedMs }: Parts): Receiver => {
  const startAtMs = tape.find((i) => i.type === 'event' && i.event === 'start')?.atMs ?? tape[0]?.atMs ?? 0;
  const fixes = tape.flatMap((i) => (i.type === 'fix' ? [i] : []));
  const pen = fixes.filter((i) => i.atMs <= startAtMs);
  const road = fixes.filter((i) => i.atMs > startAtMs);
  const stops = new Map<number, () => void>();
  let ids = 0;
  let next = 0;
  let penMs = Number.NEGATIVE_INFINITY;
  let penNext = 0;

  const look = (tell: PositionCallback): void => {
    const startMs = startedMs();
    const now = nowMs();
    if (startMs === null) {
      const still = pen[penNext % Math.max(1, pen.length)] ?? road[0];
      if (still === undefined || now < penMs + PEN_EVERY_MS) return;
      penMs = now;
      penNext++;
      tell(positionOf(still.fix, now));
      return;
    }
    for (let fix = road[next]; fix !== undefined && fix.atMs - startAtMs <= now - startMs; fix = road[next]) {
      next++;
      tell(positionOf(fix.fix, startMs + fix.atMs - startAtMs));
    }
  };

  return {
    watchPosition: (tell) => {
      const id = ++ids;
      stops.set(
        id,
        every(LOOK_EVERY_MS, () => look(tell)),
      );
      return id;
    },
    clearWatch: (id) => {
      stops.get(id)?.();
      stops.delete(id);
    },
  };
};
