import { describe, expect, test } from 'vitest';
import {
  beginDeparture,
  type Departure,
  type Evidence,
  follow,
  tell,
} from '../../../src/core/drift/departure.ts';

const PACE_S_PER_KM = 296;
const DEAR_S = 11;

/** A runner at a share off the plan, and how far ahead of it that leaves them. */
interface Runner {
  readonly departure: Departure;
  readonly aheadS: number;
  readonly atS: number;
  readonly toldAtS: readonly number[];
}

const begin = (aheadS = 0): Runner => ({ departure: beginDeparture, aheadS, atS: 0, toldAtS: [] });

/** Runs on, and is told whenever a departure is found. */
const run = (from: Runner, seconds: number, share: number, dearS: number | null = DEAR_S): Runner => {
  let { departure, aheadS, atS } = from;
  const toldAtS = [...from.toldAtS];
  for (let s = 0; s < seconds; s++) {
    atS++;
    aheadS += share;
    const evidence: Evidence = {
      dtS: 1,
      rate: 1 + share,
      speedSdMps: 0.045,
      paceSPerKm: PACE_S_PER_KM,
      quickIsFine: 0,
      slowIsFine: 0,
      ...(dearS === null ? {} : { stake: { aheadS, dearS } }),
    };
    departure = follow(departure, evidence);
    const side = departure.quick.found ? 'quick' : departure.slow.found ? 'slow' : null;
    if (side === null) continue;
    toldAtS.push(atS);
    departure = tell(departure, side);
  }
  return { departure, aheadS, atS, toldAtS };
};

describe('a departure that was told of and goes on', () => {
  const slow = run(run(begin(), 600, 0), 3600, -0.02);
  const sinceFirstS = slow.toldAtS.map((s) => s - (slow.toldAtS[0] ?? 0));

  test('is told once more when it has become dear, then after twice as long, and then no more', () => {
    expect(sinceFirstS).toHaveLength(3);
    // 11 s behind at 2 % takes 550 s; by the next time the eight minutes are the longer.
    expect(sinceFirstS[1]).toBeGreaterThan(500);
    expect(sinceFirstS[1]).toBeLessThan(600);
    expect((sinceFirstS[2] ?? 0) - (sinceFirstS[1] ?? 0)).toBeGreaterThanOrEqual(480);
    expect((sinceFirstS[2] ?? 0) - (sinceFirstS[1] ?? 0)).toBeLessThan(620);
  });

  test('not before four minutes, however dear', () => {
    const fast = run(run(begin(), 600, 0), 600, 0.06);
    expect((fast.toldAtS[1] ?? 0) - (fast.toldAtS[0] ?? 0)).toBeGreaterThanOrEqual(240);
  });

  test('a word that it goes on is no word that it has grown: what is worse is found as before', () => {
    const twice = run(run(begin(), 600, 0), 700, -0.02);
    expect(twice.toldAtS).toHaveLength(2);
    expect(twice.departure.times).toBe(1);
    expect(twice.departure.cost.reminders).toBe(1);
    expect(run(twice, 60, -0.08).toldAtS).toHaveLength(3);
  });

  test('not where it only wins back or spends what was in hand', () => {
    expect(run(run(begin(60), 600, 0), 2400, -0.02).toldAtS).toHaveLength(1);
    expect(run(run(begin(-60), 600, 0), 2400, 0.02).toldAtS).toHaveLength(1);
  });

  test('not when the last minute was on plan, though it has cost much', () => {
    const told = run(run(begin(), 600, 0), 40, -0.03);
    const { departure } = told;
    expect(told.toldAtS).toHaveLength(1);
    const back = run({ ...told, departure: { ...departure, told: -0.2 }, aheadS: -40 }, 900, -0.002);
    expect(back.toldAtS).toHaveLength(1);
  });

  test('not where nobody asks for it (a leg of a session)', () => {
    expect(run(run(begin(), 600, 0), 3600, -0.02, null).toldAtS).toHaveLength(1);
  });
});
