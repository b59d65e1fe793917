import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runningIndex, timeAtIndexS } from '../../../../src/core/prepare/goal/danielsGilbert.ts';
import { type Prediction, predict as predictMessage } from '../../../../src/core/prepare/goal/predict.ts';
import { parseRaceResult, type RaceResult } from '../../../../src/core/prepare/goal/raceResult.ts';
import { inEnglish } from '../../../support/english.ts';

const predict = inEnglish(predictMessage);

const HALF_M = 21_097.5;
const MARATHON_M = 42_195;

const anyResult: fc.Arbitrary<RaceResult> = fc
  .record({
    distanceM: fc.double({ min: 1500, max: 50_000, noNaN: true }),
    speedMps: fc.double({ min: 1.5, max: 6, noNaN: true }),
    daysAgo: fc.option(fc.integer({ min: 0, max: 1000 })),
  })
  .map(({ distanceM, speedMps, daysAgo }) => ({ distanceM, timeS: distanceM / speedMps, daysAgo }));
const anyResults = fc
  .array(anyResult, { minLength: 1, maxLength: 4 })
  .map((all) => all as [RaceResult, ...RaceResult[]]);
const anyTarget = fc.double({ min: 1500, max: 100_000, noNaN: true });
const anyWeekly = fc.option(fc.double({ min: 0, max: 250, noNaN: true }));

const tenK: RaceResult = { distanceM: 10_000, timeS: 2700, daysAgo: 20 };

describe('the running index', () => {
  test('is undone by the time at that index', () => {
    void fc.assert(
      fc.property(anyResult, ({ distanceM, timeS }) => {
        expect(timeAtIndexS(distanceM, runningIndex(distanceM, timeS))).toBeCloseTo(timeS, 5);
      }),
    );
  });

  test('falls as the time grows', () => {
    void fc.assert(
      fc.property(anyResult, ({ distanceM, timeS }) => {
        expect(runningIndex(distanceM, timeS * 1.001)).toBeLessThan(runningIndex(distanceM, timeS));
      }),
    );
  });
});

describe('a prediction', () => {
  test('is finite, with its ranges one inside the other', () => {
    void fc.assert(
      fc.property(anyResults, anyTarget, anyWeekly, (results, toM, weeklyKm) => {
        const p = predict(results, toM, weeklyKm);
        const order = [p.wide.quickS, p.likely.quickS, p.middleS, p.likely.slowS, p.wide.slowS];
        expect(order.every((s) => Number.isFinite(s) && s > 0)).toBe(true);
        expect(order).toEqual([...order].sort((a, b) => a - b));
        expect(p.byResult).toHaveLength(results.length);
      }),
    );
  });

  // Of one result: several that contradict each other teach a fall-off of their own, which weighs against the distance.
  test('never gets quicker by fewer kilometres a week', () => {
    void fc.assert(
      fc.property(anyResult, anyTarget, fc.double({ min: 0, max: 200, noNaN: true }), (result, toM, km) => {
        expect(predict([result], toM, km).middleS).toBeGreaterThanOrEqual(
          predict([result], toM, km + 10).middleS - 1e-6,
        );
      }),
    );
  });

  test('is quicker where a result is', () => {
    void fc.assert(
      fc.property(anyResult, anyTarget, (result, toM) => {
        const better = { ...result, timeS: result.timeS * 0.98 };
        expect(predict([better], toM, null).middleS).toBeLessThan(predict([result], toM, null).middleS);
      }),
    );
  });

  test('of the distance just raced is that time', () => {
    expect(predict([tenK], 10_000, 40).middleS).toBeCloseTo(2700, 6);
  });

  const widthOf = (p: Pick<Prediction, 'sdLog'>): number => p.sdLog;

  test('is surer from a nearer, newer or second result', () => {
    const alone = widthOf(predict([tenK], HALF_M, 50));
    expect(widthOf(predict([{ distanceM: 5000, timeS: 1300, daysAgo: 20 }], HALF_M, 50))).toBeGreaterThan(
      alone,
    );
    expect(widthOf(predict([{ ...tenK, daysAgo: 400 }], HALF_M, 50))).toBeGreaterThan(alone);
    expect(
      widthOf(predict([tenK, { distanceM: 15_000, timeS: 4170, daysAgo: 10 }], HALF_M, 50)),
    ).toBeLessThan(alone);
  });

  test('learns the fall-off of a runner who slows more than most', () => {
    const steep: [RaceResult, RaceResult] = [
      { distanceM: 5000, timeS: 1260, daysAgo: 10 },
      { distanceM: HALF_M, timeS: 6300, daysAgo: 10 },
    ];
    expect(predict(steep, MARATHON_M, 60).middleS).toBeGreaterThan(
      predict([steep[1]], MARATHON_M, 60).middleS,
    );
  });

  test('says what the reader must know', () => {
    expect(predict([{ ...tenK, daysAgo: 300 }], HALF_M, 50).notes.join()).toContain('half a year old');
    expect(predict([tenK], MARATHON_M, null).notes.join()).toContain('much longer');
    expect(predict([tenK], MARATHON_M, null).notes.join()).toContain('Slowed on purpose');
    expect(
      predict([tenK, { distanceM: 10_000, timeS: 3600, daysAgo: 5 }], HALF_M, 50).notes.join(),
    ).toContain('different times');
    expect(predict([{ distanceM: HALF_M, timeS: 7200, daysAgo: 5 }], MARATHON_M, 50).notes.join()).toContain(
      'never fitted',
    );
    expect(predict([tenK], 12_000, 50).notes).toEqual([]);
    expect(predict([tenK], 12_000, 50).sources.map((s) => s.kind)).toContain('practice');
  });
});

describe('a result typed by the runner', () => {
  test.each([
    [400, 60, null, 'results[0].distanceM'],
    [Number.NaN, 60, null, 'results[0].distanceM'],
    [10_000, 0, null, 'results[0].timeS'],
    [10_000, -5, null, 'results[0].timeS'],
    [10_000, 900, null, 'results[0].timeS'],
    [10_000, 45, null, 'results[0].timeS'],
    [10_000, Number.NaN, null, 'results[0].timeS'],
    [10_000, 2700, -1, 'results[0].daysAgo'],
  ])('%d m in %d s, %s days ago, is refused by name', (distanceM, timeS, daysAgo, place) => {
    const parsed = parseRaceResult('results[0]', distanceM, timeS, daysAgo);
    expect(parsed.ok ? 'accepted' : parsed.error.place).toBe(place);
  });

  test('is taken where it makes sense', () => {
    expect(parseRaceResult('r', 10_000, 2700, 20)).toEqual({ ok: true, value: tenK });
  });
});
