import { describe, expect, test } from 'vitest';
import { type CourseLine, measureLine } from '../../../src/core/course/line.ts';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { beginRun } from '../../../src/core/run/run.ts';
import { flush, step } from '../../../src/core/run/step.ts';
import { spoken } from '../../../src/languages/en/spoken.ts';
import { NO_PRESSES, simulate } from '../../../src/sensors/simulated.ts';
import { OPEN_SKY } from '../../../src/sensors/simulatedReceiver.ts';
import { STEADY } from '../../../src/sensors/simulatedRunner.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

/** Six kilometres over three hills of 16 m: 2.5 % at their steepest. */
const DISTANCE_M = 6000;
const HILL_M = 2000;
const HEIGHT_M = 8;
const courseOf = (heightM: number): CourseLine => {
  const plane = planeAt({ latitudeDeg: 54.1, longitudeDeg: 7.3 });
  const points = Array.from({ length: 301 }, (_, i) => {
    const m = (DISTANCE_M * i) / 300;
    return {
      ...pointOn(plane, m, 300 * Math.sin(m / 900)),
      elevationM: heightM * (1 - Math.cos((2 * Math.PI * m) / HILL_M)),
    };
  });
  const line = measureLine(points, DISTANCE_M);
  if (line === null) throw new Error('no line');
  return line;
};

const planOf = (pacing: 'effort' | 'pace') => {
  const plan = readRacePlan({
    version: 1,
    kind: 'race',
    name: 'hills',
    distanceM: DISTANCE_M,
    goalS: 1680,
    checkpointsM: [3000],
    pacing,
  });
  if (!plan.ok) throw new Error(plan.error.expected);
  return plan.value;
};

/** Words about pace in a race run at even effort, judged by a plan of even effort or of even pace. */
const paceWords = (judgedBy: 'effort' | 'pace', heightM: number, seed: number): number => {
  const course = courseOf(heightM);
  const { inputs } = simulate({
    plan: planOf('effort'),
    line: course,
    runner: { ...STEADY, waverShare: 0.005 },
    receiver: OPEN_SKY,
    presses: NO_PRESSES,
    penS: 60,
    seed,
  });
  let run = beginRun({ plan: planOf(judgedBy), course, voice: voiceOf(spoken.pack, spoken.words) });
  const calls = inputs.flatMap((input) => {
    const next = step(run, input);
    run = next.run;
    return next.calls;
  });
  return [...calls, ...flush(run).calls].filter(
    ({ saying }) => saying.kind === 'ease' || saying.kind === 'quicken',
  ).length;
};

const SEEDS = [1, 2, 3, 4];
const total = (judgedBy: 'effort' | 'pace', heightM: number): number =>
  SEEDS.reduce((sum, seed) => sum + paceWords(judgedBy, heightM, seed), 0);

describe('hills', () => {
  test('who runs them at even effort is told hardly more than on the flat, where the plan spends effort evenly', () => {
    expect(total('effort', HEIGHT_M)).toBeLessThanOrEqual(total('effort', 0) + SEEDS.length);
  });

  test('where the plan asks for even pace, they are told', () => {
    expect(total('pace', HEIGHT_M)).toBeGreaterThanOrEqual(SEEDS.length);
  });
});
