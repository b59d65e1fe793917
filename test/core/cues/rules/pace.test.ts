import { describe, expect, test } from 'vitest';
import { again } from '../../../../src/core/cues/again.ts';
import type { Moment } from '../../../../src/core/cues/moment.ts';
import {
  beginPace,
  departedSide,
  findNewTarget,
  paceCue,
  paceEvidence,
} from '../../../../src/core/cues/rules/pace.ts';
import { beginSignal } from '../../../../src/core/cues/rules/signal.ts';
import { beginDeparture, type Departure, type Sum } from '../../../../src/core/drift/departure.ts';
import { momentAt, plan, racePlanned } from '../moments.ts';

const found: Sum = { valueS: 0.3, forS: 25, first: 0.012, wonS: 0.5, mean: 0.025, found: true };
const quick: Departure = { ...beginDeparture, quick: found };
const slow: Departure = { ...beginDeparture, slow: found };
const at = (distanceM: number, departure: Departure, change: object = {}): Moment => ({
  ...momentAt({ distanceM, ...change }),
  departure,
});
const sayingAt = (moment: Moment, side: 'quick' | 'slow') => paceCue(moment, side).saying;
/** Goal pace is 4:56 per km. */
const faster = (share: number) => ({ speedMps: (1000 / 295.77) * (1 + share) });

describe('what is said', () => {
  test('ease, by how much, and where that has led', () => {
    expect(sayingAt(at(7000, quick, { aheadS: 9 }), 'quick')).toMatchObject({
      kind: 'ease',
      unit: 'km',
      ahead: { side: 'up', seconds: 9, sure: true },
    });
  });

  test('2 % of 4:56 is six seconds a kilometre, known to four or so: in fives, a little less than is seen', () => {
    expect(sayingAt(at(7000, slow, faster(-0.02)), 'slow')).toMatchObject({ kind: 'quicken', byS: 5 });
    expect(sayingAt(at(7000, slow, faster(-0.05)), 'slow')).toMatchObject({ kind: 'quicken', byS: 10 });
  });

  test('the size is of now, not of the sum that found it', () => {
    const byNow = (share: number) => sayingAt(at(7000, quick, faster(share)), 'quick');
    expect(byNow(0.06)).toMatchObject({ byS: 15 });
    expect(byNow(0.02)).toMatchObject({ byS: 5 });
  });

  test('by the mile where the plan is by the mile', () => {
    const moment = at(7000, quick, { race: racePlanned({ unit: 'mile' }), ...faster(0.025) });
    expect(sayingAt(moment, 'quick')).toMatchObject({
      unit: 'mile',
      byS: expect.toSatisfy((s: number) => s >= 10 && s <= 14),
    });
  });

  test('in the opening: too quick even for that', () => {
    expect(sayingAt(at(700, quick), 'quick')).toMatchObject({ kind: 'opening', what: 'tooQuick' });
  });
});

describe('when it is said', () => {
  /** Plainly off the pace, on the side that was found. */
  const leaving = (distanceM: number, departure: Departure, change: object = {}): Moment =>
    at(distanceM, departure, { ...faster(departure.slow.found ? -0.05 : 0.05), ...change });
  const side = (moment: Moment, saidAgoS = Number.POSITIVE_INFINITY) =>
    departedSide({ ...beginPace, saidMs: moment.nowMs - saidAgoS * 1000 }, moment);

  test('when a departure is found', () => {
    expect(side(leaving(7000, quick))).toBe('quick');
    expect(side(leaving(7000, slow))).toBe('slow');
    expect(side(leaving(7000, beginDeparture))).toBeNull();
  });

  test('not where the best guess at its size is too little to mind', () => {
    expect(side(at(7000, quick, faster(0.012)))).toBeNull();
    expect(side(at(7000, slow, faster(-0.012)))).toBeNull();
    expect(side(at(7000, quick, faster(0.025)))).toBe('quick');
  });

  test('not within half a minute of the last word, unless it has got worse', () => {
    expect(side(leaving(7000, slow), 20)).toBeNull();
    expect(side(leaving(7000, { ...slow, told: 0.03 }), 20)).toBeNull();
    expect(side(leaving(7000, { ...slow, told: -0.03 }), 20)).toBe('slow');
    expect(side(leaving(7000, slow), 30)).toBe('slow');
  });

  test('not while the speed is hardly known behind the start; there is an end to waiting', () => {
    const unsure = (distanceM: number, hasLine = true): Moment => {
      const moment = leaving(distanceM, quick, { race: racePlanned({}, hasLine) });
      return { ...moment, progress: { ...moment.progress, speedSdMps: 0.08 } };
    };
    expect(side(unsure(500))).toBeNull();
    expect(side(unsure(700))).toBe('quick');
    expect(side(unsure(700, false))).toBeNull();
    expect(side(unsure(2000, false))).toBe('quick');
  });

  test('slow not in the crowd behind the start, and not to whoever walks', () => {
    expect(side(leaving(350, slow))).toBeNull();
    expect(side(leaving(350, quick))).toBe('quick');
    expect(side(leaving(7000, { ...slow, slow: { ...found, mean: 0.25 } }))).toBeNull();
  });

  test('not just before the target changes', () => {
    expect(side(leaving(1460, quick))).toBeNull();
    expect(side(leaving(18_050, slow))).toBeNull();
  });

  test('not to who pushes from behind', () => {
    const pushing = (aheadS: number) => side(leaving(18_600, quick, { aheadS }));
    expect(pushing(-5)).toBeNull();
    expect(pushing(5)).toBe('quick');
  });

  test('not near the line', () => {
    expect(side(leaving(20_150, quick))).toBeNull();
    expect(side(leaving(20_150, slow))).toBe('slow');
    expect(side(leaving(20_850, slow))).toBeNull();
  });
});

describe('what counts as evidence', () => {
  const evidence = (distanceM: number, change: object = {}) =>
    paceEvidence(beginPace, momentAt({ distanceM, ...change }), 0.5, 0);

  test('running on good fixes', () => {
    expect(evidence(7000)?.rate).toBeCloseTo(1, 9);
    expect(evidence(7000, { speedMps: 3.5 })?.rate).toBeCloseTo(3.5 * 0.295_77, 4);
  });

  test('not the first 150 m, not a tunnel, not a walk, not a station', () => {
    expect(evidence(149)).toBeNull();
    expect(evidence(7000, { sinceFixS: 5 })).toBeNull();
    expect(evidence(7000, { speedMps: 1.6 })).toBeNull();
    expect(evidence(4690)).toBeNull();
    expect(evidence(4790)).toBeNull();
    expect(evidence(4810)).not.toBeNull();
  });

  test('a slow receiver tells of pace between its fixes, too', () => {
    expect(evidence(7000, { sinceFixS: 7, usualGapS: 5 })).not.toBeNull();
  });

  test('not while a new target is being found', () => {
    const moment = momentAt({ distanceM: 7000 });
    const watch = findNewTarget(beginPace, moment.nowMs - 10_000);
    expect(paceEvidence(watch, moment, 0.5, 0)).toBeNull();
    expect(paceEvidence(watch, { ...moment, nowMs: moment.nowMs + 10_000 }, 0.5, 0)).not.toBeNull();
  });

  test('in the opening too quick is likely, later it is not', () => {
    expect(evidence(1000)?.quickIsLikely).toBe(true);
    expect(evidence(7000)?.quickIsLikely).toBe(false);
  });

  test('what is at stake: the drift, and what is dear in a race so long', () => {
    expect(evidence(7000, { aheadS: -7 })?.stake?.aheadS).toBeCloseTo(-7, 2);
    expect(evidence(7000)?.stake?.dearS).toBeCloseTo(0.0018 * 6240, 6);
    expect(
      evidence(3000, { race: racePlanned({ distanceM: 5000, goalS: 1320, push: null }) })?.stake?.dearS,
    ).toBe(6);
  });

  test('hills are in the schedule: effort on a climb is no departure', () => {
    const race = racePlanned();
    const climb = { ...race, schedule: { ...race.schedule, paceAtSPerKm: () => 340 } };
    expect(evidence(7000, { race: climb, speedMps: 1000 / 340 })?.rate).toBeCloseTo(1, 9);
  });

  test('whoever is late may be quicker, whoever has time in hand slower, by what it is worth over the rest', () => {
    const restS = 6219 - 2061.4;
    expect(evidence(7000, { aheadS: -42, distanceSdM: 3.38 })?.quickIsFine).toBeCloseTo(40 / restS, 3);
    expect(evidence(7000, { aheadS: -42 })?.slowIsFine).toBe(0);
    expect(evidence(7000, { aheadS: 42, distanceSdM: 3.38 })?.slowIsFine).toBeCloseTo(40 / restS, 3);
    expect(evidence(7000, { aheadS: 1 })?.slowIsFine).toBe(0);
    expect(evidence(20_900, { aheadS: -42, race: racePlanned({ ...plan, push: null }) })?.quickIsFine).toBe(
      0.1,
    );
  });
});

test('a call that waits says the size and the drift of now, and is dropped when the runner has come back', () => {
  const told: Departure = { ...beginDeparture, told: 0.025 };
  const cue = paceCue(at(7000, quick, faster(0.02)), 'quick');
  const later = { ...at(7030, told, faster(0.06)), aheadS: 11 };
  expect(again(cue, later, beginSignal)?.saying).toMatchObject({ ahead: { side: 'up', seconds: 11 } });
  expect(again(cue, later, beginSignal)?.expiresMs).toBe(cue.expiresMs);
  expect(cue.saying).toMatchObject({ byS: 5 });
  expect(again(cue, later, beginSignal)?.saying).toMatchObject({ byS: 15 });
  expect(again(cue, at(7030, beginDeparture), beginSignal)).toBeNull();
  expect(again(cue, at(7030, told, faster(-0.01)), beginSignal)).toBeNull();
});
