import { describe, expect, test } from 'vitest';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../../src/core/plan/racePlan.ts';
import { digestOf } from '../../../src/core/review/digest.ts';
import { passedAtS } from '../../../src/core/review/passing.ts';
import { type Review, reviewOf } from '../../../src/core/review/review.ts';
import { written } from '../../../src/core/units/message.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { NO_PRESSES, type Simulated, simulate } from '../../../src/sensors/simulated.ts';
import { OPEN_SKY } from '../../../src/sensors/simulatedReceiver.ts';
import { roadOf } from '../../../src/sensors/simulatedRoad.ts';
import { type RunnerModel, STEADY } from '../../../src/sensors/simulatedRunner.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const lines = ({ summary }: Review): readonly string[] => summary.map((line) => written(line));
const voice = voiceOf(english.pack, english.words);

const planOf = (value: object): RacePlan => {
  const got = readRacePlan({ kind: 'race', distanceM: 10_000, goalS: 3000, checkpointsM: [5000], ...value });
  if (!got.ok) throw new Error(JSON.stringify(got.error));
  return got.value;
};

const line = roadOf(10_000, 4);
const run = (plan: RacePlan, runner: Partial<RunnerModel>): Simulated =>
  simulate({
    plan,
    line,
    runner: { ...STEADY, waverShare: 0.004, stationLossS: 0, ...runner },
    receiver: OPEN_SKY,
    presses: NO_PRESSES,
    penS: 20,
    seed: 8,
  });
const review = (plan: RacePlan, sim: Simulated) => {
  const digest = digestOf({ plan, course: line, voice }, sim.inputs);
  return { digest, review: reviewOf(digest, plan, line) };
};

describe('a race that went to plan', () => {
  const plan = planOf({ opening: { untilM: 1000, quickerSPerKm: 6 } });
  const sim = run(plan, {});
  const { digest, review: r } = review(plan, sim);

  test('its splits are the truth to a second or two', () => {
    expect(r.splits).toHaveLength(10);
    for (const split of r.splits)
      expect(Math.abs(split.timeS - (sim.truth.crossingS(split.atM) ?? 0))).toBeLessThan(2.5);
  });

  test('each call is there with its reason', () => {
    expect(digest.calls.length).toBeGreaterThan(5);
    for (const call of digest.calls) expect(written(call.why)).not.toBe('');
  });

  test('is said in five lines', () => {
    expect(r.summary).toHaveLength(5);
    expect(lines(r)[1]).toContain('a good opening');
    expect(lines(r)[3]).toContain('even');
  });

  test('the projected finish at half-way holds the truth', () => {
    const [half] = r.projected;
    expect(half?.atM).toBe(5000);
    const truthS = sim.truth.crossingS(10_000) ?? 0;
    expect(Math.abs((half?.projectedS ?? 0) - truthS)).toBeLessThan(3 * (half?.projectedSdS ?? 0));
  });

  test('a digest goes through JSON and back', () => {
    expect(reviewOf(JSON.parse(JSON.stringify(digest)), plan, line)).toEqual(r);
  });
});

describe('a race that did not', () => {
  test('an opening that was not capped and a fade are named, with what to try', () => {
    const plan = planOf({ opening: { untilM: 1500, quickerSPerKm: 6 } });
    const sim = run(plan, { tooQuick: { untilM: 1500, share: 0.05 }, fade: { fromM: 4000, share: 0.16 } });
    const { review: r } = review(plan, sim);
    expect(r.opening?.verdict).toBe('tooQuick');
    expect(r.fade?.share).toBeGreaterThan(0.03);
    expect(r.fade?.worst.fromM).toBe(9000);
    expect(lines(r)[4]).toContain('hold the opening back');
  });

  test('a station that cost ten seconds is found', () => {
    const plan = planOf({ stations: [{ atM: 3000, offers: ['water'] }] });
    const { review: r } = review(plan, run(plan, { stationLossS: 10 }));
    expect(r.stations[0]?.lostS).toBeGreaterThan(6);
    expect(r.stations[0]?.lostS).toBeLessThan(14);
  });

  test('a run given up has a review as far as it came', () => {
    const plan = planOf({});
    const sim = run(plan, {});
    const untilMs = sim.startMs + 1000 * (sim.truth.crossingS(4200) ?? 0);
    const inputs = sim.inputs.filter((i) => i.atMs < untilMs);
    const digest = digestOf({ plan, course: line, voice }, [
      ...inputs,
      { type: 'event', atMs: untilMs, event: 'stop' },
    ]);
    const r = reviewOf(digest, plan, line);
    expect(digest.finishS).toBeNull();
    expect(r.splits).toHaveLength(4);
    expect(lines(r)[0]).toContain('ended at 4.2 km');
    expect(passedAtS(digest, 5000)).toBeNull();
  });

  test('a run that came without a plan is told of no plan and of no opening', () => {
    const plan = planOf({});
    const sim = run(plan, { tooQuick: { untilM: 1500, share: 0.05 } });
    const { digest } = review(plan, sim);
    const r = reviewOf(digest, plan, line, true);
    expect(r.opening).toBeNull();
    expect(lines(r)[0]).toMatch(/^The run took \d+:\d\d\. It came without a plan/);
    expect(lines(r).join(' ')).not.toMatch(/opening|planned|Next time|on plan/);
    expect(lines(r)).toHaveLength(3);
    expect(lines(reviewOf(digest, plan, line)).join(' ')).toContain('too quick an opening');
  });
});
