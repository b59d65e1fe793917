import { describe, expect, test } from 'vitest';
import {
  beginDeparture,
  type Departure,
  type Evidence,
  follow,
  newTarget,
  rest,
  tell,
} from '../../../src/core/drift/departure.ts';
import { hear, OPEN, type Reception, TOWN, waving } from './feed.ts';

/** 4:16 a kilometre: a half marathon in an hour and a half. */
const PACE_S_PER_KM = 256;
const SPEED_MPS = 1000 / PACE_S_PER_KM;
const LONG_MIN_S = 60;

const evidence = (speedMps: number, speedSdMps: number, change: Partial<Evidence> = {}): Evidence => ({
  dtS: 1,
  rate: (speedMps * PACE_S_PER_KM) / 1000,
  speedSdMps,
  paceSPerKm: PACE_S_PER_KM,
  quickIsFine: 0,
  slowIsFine: 0,
  ...change,
});

interface Found {
  readonly atS: number;
  readonly side: 'quick' | 'slow';
}

/** Runs the test over what is heard and tells the runner of each departure found, as the rule would. */
const departuresIn = (reception: Reception, speeds: readonly number[], seed: number): Found[] => {
  const found: Found[] = [];
  let departure = beginDeparture;
  let saidS = Number.NEGATIVE_INFINITY;
  hear(reception, speeds.length, (s) => speeds[s] ?? 0, seed).forEach((h, s) => {
    if (s < LONG_MIN_S) return;
    departure = follow(departure, evidence(h.speedMps, h.speedSdMps));
    const side = departure.quick.found ? 'quick' : departure.slow.found ? 'slow' : null;
    if (side === null || s < saidS + 30) return;
    found.push({ atS: s, side });
    departure = tell(departure, side);
    saidS = s;
  });
  return found;
};

const RUNS = 60;
const runs = Array.from({ length: RUNS }, (_, i) => i + 1);
const median = (xs: readonly number[]): number => [...xs].sort((a, b) => a - b)[xs.length >> 1] ?? Number.NaN;

/** Median delay of a departure by so many seconds a kilometre after 25 minutes of even running. */
const delayS = (reception: Reception, byS: number): number => {
  const onsetS = 1500;
  return median(
    runs.map((seed) => {
      const speeds = Array.from({ length: onsetS + 240 }, (_, s) =>
        s < onsetS ? SPEED_MPS : 1000 / (PACE_S_PER_KM + byS),
      );
      const side = byS > 0 ? 'slow' : 'quick';
      const hit = departuresIn(reception, speeds, seed).find((f) => f.atS >= onsetS && f.side === side);
      return hit ? hit.atS - onsetS : Number.POSITIVE_INFINITY;
    }),
  );
};

/** Departures found in ten kilometres of running that waves by a share of the speed, mean. */
const alarmsIn10Km = (reception: Reception, waver: number): number => {
  const seconds = PACE_S_PER_KM * 10;
  const counts = runs.map(
    (seed) =>
      departuresIn(
        reception,
        waving(waver, seconds, seed).map((w) => w * SPEED_MPS),
        seed + 1000,
      ).length,
  );
  return counts.reduce((a, b) => a + b, 0) / RUNS;
};

describe('how soon, and how often for nothing', () => {
  test('6 s/km is found within 25 s in the open, in the median', () => {
    expect(delayS(OPEN, 6)).toBeLessThanOrEqual(25);
    expect(delayS(OPEN, -6)).toBeLessThanOrEqual(25);
  });

  test('and within 55 s in town, where no test of these readings can do much better at one false alarm', () => {
    expect(delayS(TOWN, 6)).toBeLessThanOrEqual(55);
    expect(delayS(TOWN, -6)).toBeLessThanOrEqual(55);
  });

  test('12 s/km in half the time', () => {
    expect(delayS(OPEN, 12)).toBeLessThanOrEqual(14);
    expect(delayS(TOWN, 12)).toBeLessThanOrEqual(25);
  });

  test('at most one false alarm in 10 km of even running', () => {
    expect(alarmsIn10Km(OPEN, 0)).toBeLessThanOrEqual(1);
    expect(alarmsIn10Km(TOWN, 0)).toBeLessThanOrEqual(1.3);
  });

  test('a runner who waves about anyway is learned, and not nagged', () => {
    expect(alarmsIn10Km(OPEN, 0.015)).toBeLessThanOrEqual(3);
    expect(alarmsIn10Km(TOWN, 0.015)).toBeLessThanOrEqual(4);
  });
});

/** Follows steady evidence for so many seconds. */
const run = (from: Departure, seconds: number, share: number, change: Partial<Evidence> = {}): Departure => {
  let departure = from;
  for (let s = 0; s < seconds; s++)
    departure = follow(departure, evidence(SPEED_MPS * (1 + share), 0.045, change));
  return departure;
};
const even = run(beginDeparture, 900, 0);

test('a limit set lower tells sooner', () => {
  const found = (limit: number): number => {
    let departure = even;
    for (let s = 1; s < 200; s++) {
      departure = follow(departure, evidence(SPEED_MPS * 0.975, 0.06), limit);
      if (departure.slow.found) return s;
    }
    return Number.POSITIVE_INFINITY;
  };
  expect(found(5)).toBeGreaterThan(found(2.5));
  expect(found(10)).toBeGreaterThan(found(5));
});

test('too quick in the first part is believed sooner, too slow is not', () => {
  const secondsUntil = (share: number, quickIsLikely: boolean): number => {
    let departure = even;
    for (let s = 1; s < 300; s++) {
      departure = follow(departure, evidence(SPEED_MPS * (1 + share), 0.06, { quickIsLikely }));
      if (departure.quick.found || departure.slow.found) return s;
    }
    return Number.POSITIVE_INFINITY;
  };
  expect(secondsUntil(0.02, true)).toBeLessThan(secondsUntil(0.02, false));
  expect(secondsUntil(-0.02, true)).toBe(secondsUntil(-0.02, false));
});

describe('what counts', () => {
  test('a stumble of some seconds is nothing, however deep', () => {
    const stumbled = run(run(even, 6, -0.4), 40, 0);
    expect(run(even, 6, -0.4).slow.found).toBe(false);
    expect(stumbled.slow).toEqual(rest(even).slow);
  });

  test('a large slowing must last longer than a lapse of pace', () => {
    expect(run(even, 15, -0.15).slow.found).toBe(false);
    expect(run(even, 26, -0.15).slow.found).toBe(true);
    expect(run(even, 15, 0.15).quick.found).toBe(true);
  });

  test('its size is what was seen since it began', () => {
    expect(run(even, 20, 0.05).quick.mean).toBeCloseTo(0.05, 3);
    expect(tell(run(even, 20, 0.05), 'quick').told).toBeCloseTo(0.05, 3);
    expect(tell(run(even, 20, -0.05), 'slow').told).toBeCloseTo(-0.05, 3);
  });

  test('what is welcome is no departure', () => {
    expect(run(even, 120, 0.03, { quickIsFine: 0.03 }).quick.found).toBe(false);
    expect(run(even, 120, -0.03, { slowIsFine: 0.03 }).slow.found).toBe(false);
    expect(run(even, 120, -0.03, { quickIsFine: 0.03 }).slow.found).toBe(true);
  });
});

test('while the estimate is shaken nothing is judged; where it stays worse, that is the usual before long', () => {
  const shaken = (from: Departure, seconds: number, share: number): Departure => {
    let departure = from;
    for (let s = 0; s < seconds; s++) departure = follow(departure, evidence(SPEED_MPS * (1 + share), 0.08));
    return departure;
  };
  expect(shaken(even, 60, 0.05).quick.found).toBe(false);
  expect(shaken(run(even, 8, 0.05), 1, 0.05).quick).toEqual(rest(even).quick);
  expect(shaken(even, 400, 0.05).quick.found).toBe(true);
});

describe('once it was told', () => {
  const told = tell(run(even, 30, 0.03), 'quick');

  test('it is not found again while it stays as it is', () => {
    expect(run(told, 900, 0.03).quick.found).toBe(false);
    expect(run(told, 900, 0.04).quick.found).toBe(false);
    const far = tell(run(even, 30, 0.3), 'quick');
    expect(run(far, 900, 0.28)).toMatchObject({ told: far.told, quick: { found: false } });
  });

  test('plainly worse is found', () => {
    expect(run(told, 60, 0.08).quick.found).toBe(true);
  });

  test('each time it must be worse by more', () => {
    const twice = tell(run(told, 60, 0.08), 'quick');
    expect(twice.times).toBe(2);
    expect(run(twice, 60, 0.13).quick.found).toBe(false);
    expect(run(twice, 60, 0.16).quick.found).toBe(true);
  });

  test('over when the runner is back; after that the same is found anew', () => {
    const back = run(told, 60, 0);
    expect(back.told).toBe(0);
    expect(run(back, 60, 0.03).quick.found).toBe(true);
  });

  test('too far the other way is found at once', () => {
    expect(run(told, 40, -0.03).slow.found).toBe(true);
  });

  test('a new target forgets it, a rest does not', () => {
    expect(newTarget(told).told).toBe(0);
    expect(rest(run(told, 2, -0.03)).told).toBe(told.told);
    expect(rest(even)).toBe(even);
  });
});
