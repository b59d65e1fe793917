import { describe, expect, test } from 'vitest';
import { pacerCue } from '../../../src/core/cues/rules/pacer.ts';
import { rivalCue } from '../../../src/core/cues/rules/rival.ts';
import { evenShareAt } from '../../../src/core/plan/pacer.ts';
import { rivalTimeAtS } from '../../../src/core/plan/rival.ts';
import { scheduleOf } from '../../../src/core/plan/schedule.ts';
import { momentAt, plan, racePlanned, START_MS } from './moments.ts';

const flagged = racePlanned({ pacer: { flagS: 6240, by: 'gun' } });

describe('level with the pacer', () => {
  test('says so where the plan has none', () => {
    expect(pacerCue(momentAt({ distanceM: 9000 }), null).saying).toEqual({ kind: 'noPacer' });
  });

  test('beside a pacer on pace for the goal: go with them', () => {
    // By the gun 6240 s, of which 20 s were spent before the runner's line and 15 before the pacer's.
    const gunMs = START_MS - 20_000;
    const { saying } = pacerCue(momentAt({ race: flagged, distanceM: 14_000, gunBeforeS: 20 }), gunMs);
    if (saying.kind !== 'pacer') throw new Error(saying.kind);
    expect(saying.advice).toBe('with');
    // The plan is 9 s up on even pace here: over the whole race about 14.
    expect(saying.ownS).toBeGreaterThan(6200);
    expect(saying.ownS).toBeLessThan(6245);
    expect((saying.gunS ?? 0) - saying.ownS).toBeGreaterThan(0);
    expect((saying.gunS ?? 0) - saying.ownS).toBeLessThanOrEqual(30);
  });

  test('beside a pacer two minutes too quick: let them go; too slow: go past', () => {
    const ahead = pacerCue(
      momentAt({ race: flagged, distanceM: 14_000, aheadS: 90, gunBeforeS: 5 }),
      START_MS - 5000,
    );
    const behind = pacerCue(
      momentAt({ race: flagged, distanceM: 14_000, aheadS: -90, gunBeforeS: 5 }),
      START_MS - 5000,
    );
    expect(ahead.saying.kind === 'pacer' && ahead.saying.advice).toBe('let go');
    expect(behind.saying.kind === 'pacer' && behind.saying.advice).toBe('go past');
    expect(ahead.saying.kind === 'pacer' && ahead.saying.flag.side).toBe('up');
    expect(behind.saying.kind === 'pacer' && behind.saying.flag.side).toBe('down');
  });

  test('in the first metres, and with the gun unheard early on, it does not know', () => {
    const soon = pacerCue(momentAt({ race: flagged, distanceM: 300 }), START_MS - 5000);
    const unheard = pacerCue(momentAt({ race: flagged, distanceM: 2000, aheadS: 20 }), null);
    expect(soon.saying.kind === 'pacer' && soon.saying.advice).toBe('unsure');
    expect(unheard.saying.kind === 'pacer' && unheard.saying.advice).toBe('unsure');
    expect(unheard.saying.kind === 'pacer' && unheard.saying.gunS).toBeNull();
  });

  test('takes opening and push out of the share of the way', () => {
    const share = evenShareAt(plan, scheduleOf(plan, null));
    expect(share(plan.distanceM)).toBeCloseTo(1, 12);
    expect(share(plan.distanceM / 4)).toBeCloseTo(0.25, 12);
  });
});

describe('the gap to a rival', () => {
  const rival = {
    name: 'Ines',
    splits: [
      { atM: 10_000, timeS: 3000 },
      { atM: plan.distanceM, timeS: 6300 },
    ],
  };

  test('runs evenly between their splits', () => {
    expect(rivalTimeAtS(rival, 0)).toBe(0);
    expect(rivalTimeAtS(rival, 5000)).toBe(1500);
    expect(rivalTimeAtS(rival, 10_000)).toBe(3000);
    expect(rivalTimeAtS(rival, plan.distanceM + 50)).toBe(6300);
  });

  test('is said at a checkpoint, in seconds on the clock of the goal', () => {
    const race = racePlanned({ rival });
    const cue = rivalCue(momentAt({ race, distanceM: 10_000, distanceSdM: 1 }), 10_000);
    // The plan passes 10 km at 2948.7 s.
    expect(cue?.aheadS).toBeCloseTo(3000 - race.schedule.timeAtS(10_000), 1);
    expect(cue?.saying).toMatchObject({ kind: 'rival', ahead: { side: 'up', seconds: 51 } });
    expect(rivalCue(momentAt({ distanceM: 10_000 }), 10_000)).toBeNull();
  });
});

describe('boards that are wrong on the day', () => {
  test('stand where they stand, or count for nothing', () => {
    const { boards } = racePlanned({
      wrongBoards: [
        { saysM: 3000, standsAtM: 3090 },
        { saysM: 4000, standsAtM: null },
      ],
    });
    expect(boards.slice(0, 4).map((b) => [b.count, b.atM])).toEqual([
      [1, 1000],
      [2, 2000],
      [3, 3090],
      [5, 5000],
    ]);
  });
});
