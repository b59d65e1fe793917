import { describe, expect, test } from 'vitest';
import { OPENING_CAP_REASON, withCappedOpening } from '../../../src/core/plan/openingCap.ts';
import { USUAL_STATION_S, USUAL_WANDER_SD, whatIf } from '../../../src/core/prepare/whatIf/whatIf.ts';
import { bareHalf } from '../prepare/plans.ts';

describe('the longest opening', () => {
  const opened = (untilM: number) => ({ ...bareHalf, opening: { untilM, quickerSPerKm: 10 } });

  test('is 2 km; a shorter one stays as it is', () => {
    expect(withCappedOpening(opened(3000)).opening).toEqual({ untilM: 2000, quickerSPerKm: 10 });
    const short = opened(2000);
    expect(withCappedOpening(short)).toBe(short);
    expect(withCappedOpening(bareHalf)).toBe(bareHalf);
  });

  test('has a reason whose figures are the model’s own', () => {
    const spread = {
      middleS: bareHalf.goalS,
      sdLog: 0.04,
      wanderSd: USUAL_WANDER_SD,
      stationS: USUAL_STATION_S,
    };
    const { openings } = whatIf({
      plan: opened(3000),
      course: null,
      spread,
      lineAfterGunS: 0,
      seed: 1,
      runs: 1000,
    });
    const ten = openings.find((o) => o.quickerSPerKm === 10);
    expect(OPENING_CAP_REASON.text).toContain('wins 30 s over 3 km at 10 s a km quicker');
    expect(OPENING_CAP_REASON.text).toContain('about 20 s slower');
    expect(ten?.changeS).toBeGreaterThan(15);
    expect(ten?.changeS).toBeLessThan(25);
  });
});
