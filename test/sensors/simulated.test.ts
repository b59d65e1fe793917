import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointAtM } from '../../src/core/course/line.ts';
import { legM } from '../../src/core/geo/ruler.ts';
import { parseRacePlan } from '../../src/core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../src/core/plan/racePlan.ts';
import { scheduleOf } from '../../src/core/plan/schedule.ts';
import { NO_PRESSES, type Simulated, simulate } from '../../src/sensors/simulated.ts';
import { OPEN_SKY, type ReceiverModel, TALL, TOWN } from '../../src/sensors/simulatedReceiver.ts';
import { roadOf } from '../../src/sensors/simulatedRoad.ts';
import { type RunnerModel, STEADY } from '../../src/sensors/simulatedRunner.ts';

const planOf = (fields: object): RacePlan => {
  const got = parseRacePlan(JSON.stringify({ distanceM: 5000, goalS: 1500, ...fields }));
  if (!got.ok) throw new Error('plan refused');
  return got.value;
};
const PLAN = planOf({});
const ROAD = roadOf(5000, 3);
const EXACT: RunnerModel = { ...STEADY, waverShare: 0, stationLossS: 0 };
const PERFECT: ReceiverModel = {
  ...OPEN_SKY,
  stayingM: 0,
  slow: { sdM: 0, tauS: 1 },
  quick: { sdM: 0, tauS: 1 },
  whiteM: 0,
  burstsPerHour: 0,
  lagS: 0,
  lateShare: 0,
  weaveM: 0,
};

const run = (
  runner: Partial<RunnerModel> = {},
  receiver: Partial<ReceiverModel> = {},
  plan = PLAN,
  seed = 1,
  presses = NO_PRESSES,
): Simulated =>
  simulate({
    plan,
    line: ROAD,
    runner: { ...EXACT, ...runner },
    receiver: { ...PERFECT, ...receiver },
    presses,
    penS: 30,
    seed,
  });

/** Metres from each fix to where the runner was at its stamp. */
const errorsM = ({ inputs, truth, startMs }: Simulated): number[] =>
  inputs.flatMap((i) => {
    if (i.type !== 'fix') return [];
    const true_ = pointAtM(ROAD, truth.distanceAtM((i.fix.timestampMs - startMs) / 1000));
    return [legM(true_, i.fix)];
  });
const rms = (xs: readonly number[]): number => Math.sqrt(xs.reduce((a, x) => a + x * x, 0) / xs.length);

describe('the simulated runner', () => {
  it('runs the schedule, but for the seconds of getting away', () => {
    const { truth } = run();
    const schedule = scheduleOf(PLAN, null);
    for (const m of [500, 1000, 2500, 4999]) {
      expect((truth.crossingS(m) ?? 0) - schedule.timeAtS(m)).toBeGreaterThan(1);
      expect((truth.crossingS(m) ?? 0) - schedule.timeAtS(m)).toBeLessThan(3);
    }
  });

  it('stands in the pen behind the line, crosses it at 0, and walks on after the finish', () => {
    const { truth } = run();
    expect(truth.distanceAtM(-25)).toBeLessThan(-5);
    expect(truth.distanceAtM(0)).toBeCloseTo(0, 1);
    expect(truth.crossingS(0)).toBeCloseTo(0, 1);
    expect(truth.distanceAtM(truth.toS)).toBeGreaterThan(5010);
    expect(truth.crossingS(9000)).toBeNull();
  });

  it('never runs backwards and reads the same place at the time of crossing it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }),
        fc.double({ min: 1, max: 4999, noNaN: true }),
        (seed, m) => {
          const { truth } = run(STEADY, {}, PLAN, seed);
          let before = Number.NEGATIVE_INFINITY;
          for (let t = truth.fromS; t <= truth.toS; t += 0.7) {
            expect(truth.distanceAtM(t)).toBeGreaterThanOrEqual(before);
            before = truth.distanceAtM(t);
          }
          expect(truth.distanceAtM(truth.crossingS(m) ?? 0)).toBeCloseTo(m, 6);
        },
      ),
      { numRuns: 20 },
    );
  });

  it.each<[string, Partial<RunnerModel>, number, number]>([
    ['a rush', { tooQuick: { untilM: 1000, share: 0.05 } }, -17, -12],
    ['a fade', { fade: { fromM: 3000, share: 0.1 } }, 28, 34],
    ['a slow stretch', { stretches: [{ fromM: 1000, toM: 2000, share: -0.1 }] }, 32, 35],
    ['a stop', { stops: [{ atM: 2000, seconds: 40 }] }, 39, 42],
    ['two stations', { stationLossS: 5 }, 9, 11],
  ])('%s costs or wins what it should', (_, model, from, to) => {
    const plan = planOf({ stations: [{ atM: 1500 }, { atM: 3500 }] });
    const finishS = (m: Partial<RunnerModel>): number => run(m, {}, plan).truth.crossingS(5000) ?? 0;
    const cost = finishS(model) - finishS({});
    expect(cost).toBeGreaterThan(from);
    expect(cost).toBeLessThan(to);
  });
});

describe('the simulated receiver', () => {
  it('is exact where its model has no error', () => {
    expect(Math.max(...errorsM(run()))).toBeLessThan(0.03);
  });

  it.each<[string, ReceiverModel, number, number]>([
    ['open sky', OPEN_SKY, 0.8, 4],
    ['town', TOWN, 3, 9],
    ['tall buildings', TALL, 6, 14],
  ])('is about as wrong as its model: %s', (_, model, from, to) => {
    const all = [1, 2, 3, 4, 5].flatMap((seed) => errorsM(run({}, model, PLAN, seed)));
    expect(rms(all)).toBeGreaterThan(from);
    expect(rms(all)).toBeLessThan(to);
  });

  it('is late by its lag', () => {
    const errors = errorsM(run({}, { lagS: 2 }));
    expect(errors[300]).toBeGreaterThan(5);
    expect(errors[300]).toBeLessThan(7);
  });

  it('is silent in a tunnel and has no speed where it has none', () => {
    const { inputs, truth, startMs } = run({}, { deadM: [{ fromM: 2000, toM: 2400 }], speedSdMps: null });
    const inside = inputs.filter((i) => {
      const m = truth.distanceAtM((i.atMs - startMs) / 1000 - 0.2);
      return i.type === 'fix' && m > 2010 && m < 2390;
    });
    expect(inside).toEqual([]);
    expect(inputs.every((i) => i.type !== 'fix' || i.fix.speedMps === null)).toBe(true);
  });

  it('delivers late fixes late: out of order of their stamps, in order of arrival', () => {
    const { inputs } = run({}, { lateShare: 0.2 });
    const stamps = inputs.flatMap((i) => (i.type === 'fix' ? [i.fix.timestampMs] : []));
    expect(stamps.some((t, i) => t < (stamps[i - 1] ?? 0))).toBe(true);
    expect(inputs.every((i, k) => i.atMs >= (inputs[k - 1]?.atMs ?? 0))).toBe(true);
  });
});

describe('simulate', () => {
  it('is the same run for the same seed, another for another', () => {
    const of = (seed: number): string => JSON.stringify(run(STEADY, TOWN, PLAN, seed).inputs);
    expect(of(5)).toBe(of(5));
    expect(of(5)).not.toBe(of(6));
  });

  it('presses at boards within a human’s second, and forgets some', () => {
    const boards = { atM: [1000, 2000, 3000, 4000], sdS: 0.8, missedShare: 0.25 };
    const pressed = Array.from({ length: 30 }, (_, seed) =>
      run({}, {}, PLAN, seed, { boards, others: [] }).inputs.filter((i) => i.type === 'event'),
    );
    const { truth, startMs } = run();
    for (const press of pressed.flat()) {
      const at = (press.atMs - startMs) / 1000;
      expect(Math.min(...boards.atM.map((m) => Math.abs(at - (truth.crossingS(m) ?? 0))))).toBeLessThan(4);
    }
    expect(pressed.flat().length).toBeGreaterThan(70);
    expect(pressed.flat().length).toBeLessThan(110);
  });
});

describe('roadOf', () => {
  it('is as long on the ground as it says', () => {
    for (const [m, seed] of [
      [400, 1],
      [5000, 2],
      [42_195, 3],
    ] as const) {
      const road = roadOf(m, seed);
      const legs = Array.from(road.eastM.subarray(1), (e, i) =>
        Math.hypot(e - (road.eastM[i] ?? 0), (road.northM[i + 1] ?? 0) - (road.northM[i] ?? 0)),
      );
      // The flat plane stretches what is far north of its origin: 0.1 % after some kilometres.
      expect(legs.reduce((a, b) => a + b, 0) / m).toBeCloseTo(1, 2);
      expect(road.officialM).toBe(m);
    }
  });
});
