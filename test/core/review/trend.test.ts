import { describe, expect, test } from 'vitest';
import { USUAL_RECEIVER } from '../../../src/core/estimate/receiver.ts';
import { receiverPriorOf } from '../../../src/core/estimate/receiverSeen.ts';
import { receiverOf, withReceiver } from '../../../src/core/plan/planReceiver.ts';
import { predict } from '../../../src/core/prepare/goal/predict.ts';
import { parseRaceResult } from '../../../src/core/prepare/goal/raceResult.ts';
import { usualFade } from '../../../src/core/prepare/whatIf/fade.ts';
import { USUAL_WANDER_SD } from '../../../src/core/prepare/whatIf/whatIf.ts';
import { digestOf } from '../../../src/core/review/digest.ts';
import type { PracticeDigest, RanLeg } from '../../../src/core/review/practiceDigest.ts';
import { ownRunnerOf, practiceFacts, type RunFacts } from '../../../src/core/review/trend.ts';
import { demoCourse } from '../../../src/demo/course.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { NO_PRESSES, simulate } from '../../../src/sensors/simulated.ts';
import { TOWN } from '../../../src/sensors/simulatedReceiver.ts';
import { STEADY } from '../../../src/sensors/simulatedRunner.ts';
import { blankPrepare } from '../../../src/session/prepare/prepareDraft.ts';
import { goalSheetOf } from '../../../src/session/prepare/prepareGoal.ts';
import { whatIfWishOf } from '../../../src/session/prepare/prepareWhatIf.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const DAY_MS = 86_400_000;
const NOW_MS = 1_810_000_000_000;

const work = (timeS: number, paceSPerKm: number): RanLeg => ({
  kind: 'work',
  rep: null,
  target: { by: 'pace', paceSPerKm },
  timeS,
  distanceM: (1000 * timeS) / paceSPerKm,
  distanceSdM: 12,
  aheadS: 0,
  heartBpm: null,
});

const session = (daysAgo: number, ...legs: RanLeg[]): RunFacts => {
  const digest: PracticeDigest = {
    version: 1,
    kind: 'practice',
    startMs: NOW_MS - daysAgo * DAY_MS,
    endS: 3600,
    legs,
    calls: [],
    samples: [],
    podFactor: null,
    alarms: 0,
  };
  return practiceFacts(digest);
};

describe('practice moves the realistic goal', () => {
  test('a quicker threshold predicts a quicker half, with its uncertainty', () => {
    const half = (paceSPerKm: number) => {
      const { results } = ownRunnerOf([session(3, work(900, paceSPerKm), work(900, paceSPerKm))], NOW_MS);
      const [first] = results;
      if (first === undefined) throw new Error('no result');
      return predict([first], 21_097.5, 50);
    };
    expect(half(270).middleS).toBeLessThan(half(290).middleS);
    expect(half(270).sdLog).toBeGreaterThan(0.01);
  });

  test('short intervals, short work and old sessions move nothing', () => {
    const facts = [
      session(3, ...Array.from({ length: 8 }, () => work(240, 250))),
      session(3, work(900, 280)),
      session(90, work(900, 270), work(900, 270)),
    ];
    expect(ownRunnerOf(facts, NOW_MS).results).toEqual([]);
  });
});

describe('what a runner shows', () => {
  test('is believed by and by', () => {
    const fact = (wanderSd: number): RunFacts => ({ ...session(1), wanderSd });
    const one = ownRunnerOf([fact(0.03)], NOW_MS).wanderSd;
    const many = ownRunnerOf(
      Array.from({ length: 20 }, () => fact(0.03)),
      NOW_MS,
    ).wanderSd;
    expect(ownRunnerOf([], NOW_MS).wanderSd).toBe(USUAL_WANDER_SD);
    expect(one).toBeGreaterThan(USUAL_WANDER_SD);
    expect(many).toBeGreaterThan(one);
    expect(many).toBeLessThan(0.03);
  });
});

describe('the runner’s own fade', () => {
  const race = (fadeShare: number, timeS = 7200): RunFacts => {
    const result = parseRaceResult('run', 21_097.5, timeS, null);
    if (!result.ok) throw new Error('no result');
    return { ...session(1), fadeShare, result: result.value };
  };
  const of = (...facts: RunFacts[]): number => ownRunnerOf(facts, NOW_MS).fadeMore;

  test('is as other people’s until it is seen, and is then believed by and by', () => {
    expect(of()).toBe(0);
    expect(of(race(usualFade(7200)))).toBeCloseTo(0, 12);
    const one = of(race(0.08));
    const ten = of(...Array.from({ length: 10 }, () => race(0.08)));
    expect(one).toBeCloseTo((0.08 - 0.02) / 3, 9);
    expect(ten).toBeCloseTo((10 * (0.08 - 0.02)) / 12, 9);
  });

  test('is not told by a race that was given up, or whose halves could not be compared', () => {
    const unknown = [
      { ...race(0.08), result: null },
      { ...race(0.08), fadeShare: null },
    ];
    for (const facts of unknown) expect(of(facts)).toBe(0);
    expect(of(race(0.08), ...unknown)).toBe(of(race(0.08)));
  });

  test('of a short race tells of a long one by the root of the time', () => {
    expect(of(race(0.04, 4600))).toBeGreaterThan(of(race(0.04, 7200)));
    expect(usualFade(4 * 3600) / usualFade(3600)).toBeCloseTo(2, 9);
  });

  test('and wander move the what-if of the plan', () => {
    const goal = goalSheetOf(blankPrepare('x'), demoPlan, null);
    const own = ownRunnerOf([{ ...race(0.09), wanderSd: 0.04 }], NOW_MS);
    const moved = whatIfWishOf(blankPrepare('x'), goal, demoPlan, null, own).spread;
    const usual = whatIfWishOf(blankPrepare('x'), goal, demoPlan, null).spread;
    expect(moved.fadeMore).toBeGreaterThan(0.01);
    expect(usual.fadeMore).toBe(0);
    expect(moved.wanderSd).toBeGreaterThan(usual.wanderSd);
  });
});

describe('the calibration of a phone', () => {
  const seen = { slowSdM: 1.4, lagS: 1.2, lagSdS: 0.1 };

  test('moves the prior towards what was seen, and never makes the lag too sure', () => {
    const prior = receiverPriorOf([seen, seen, seen]);
    expect(prior.slowSdM).toBeLessThan(USUAL_RECEIVER.slowSdM);
    expect(prior.lagS).toBeGreaterThan(USUAL_RECEIVER.lagS);
    expect(prior.lagSdS).toBeGreaterThanOrEqual(0.25);
    expect(receiverPriorOf([])).toEqual(USUAL_RECEIVER);
  });

  test('goes with the plan file of a run, so that its log folds to the same calls', () => {
    const file = withReceiver('{"kind":"race","distanceM":10000,"goalS":3000}', receiverPriorOf([seen]));
    const back = receiverOf(file);
    expect(back?.lagS).toBeCloseTo(0.8, 6);
    expect(receiverOf('{"kind":"race"}')).toBeNull();
    expect(withReceiver('no JSON', seen)).toBe('no JSON');
  });

  test('is learned from a run along a line', () => {
    const line = demoCourse();
    const { inputs } = simulate({
      plan: demoPlan,
      line,
      runner: STEADY,
      receiver: TOWN,
      presses: NO_PRESSES,
      penS: 10,
      seed: 3,
    });
    const part = inputs.slice(0, 1200);
    const { receiver } = digestOf(
      { plan: demoPlan, course: line, voice: voiceOf(english.pack, english.words) },
      part,
    );
    expect(receiver?.slowSdM).toBeGreaterThan(1);
    expect(receiver?.slowSdM).toBeLessThan(8);
    expect(receiver?.lagS).toBeGreaterThan(-0.5);
    expect(receiver?.lagS).toBeLessThan(2);
  });
});
