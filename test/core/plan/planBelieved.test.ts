import { describe, expect, test } from 'vitest';
import { footPodOf, type PlanPod, withFootPod } from '../../../src/core/plan/planPod.ts';
import { type PlanReceiver, receiverOf, withReceiver } from '../../../src/core/plan/planReceiver.ts';
import { type PlanRunner, runnerOf, withRunner } from '../../../src/core/plan/planRunner.ts';

const PLAN = '{"distanceM": 5000, "goalS": 1500, "name": "Pier"}\n';

const receiver: PlanReceiver = { slowSdM: 2.6, lagS: 0.5, lagSdS: 0.4 };
const runner: PlanRunner = { fadeMore: 0.01, wanderSd: 0.02, races: 3 };
const pod: PlanPod = { factor: 0.97, slope: -0.04, factorVar: 4e-5, slopeVar: 1e-4, covar: 1e-5 };

describe('what is believed of receiver, runner and pod', () => {
  test('stands in the plan file beside the plan, and comes back', () => {
    const file = withFootPod(withRunner(withReceiver(PLAN, receiver), runner), pod);
    expect([receiverOf(file), runnerOf(file), footPodOf(file)]).toEqual([receiver, runner, pod]);
    expect(JSON.parse(file)).toMatchObject(JSON.parse(PLAN));
  });

  test('is nothing where nothing is known, and leaves a file alone that is no plan', () => {
    expect(withReceiver(withRunner(withFootPod(PLAN, null), null), null)).toBe(PLAN);
    expect([receiverOf(PLAN), runnerOf(PLAN), footPodOf(PLAN)]).toEqual([null, null, null]);
    for (const text of ['', '[]', 'goal: 90', 'null']) {
      expect(withReceiver(text, receiver)).toBe(text);
      expect(receiverOf(text)).toBeNull();
    }
  });

  /** A receiver that errs by a kilometre, a pod that is double: an engine that starts from it says nonsense. */
  test.each<[string, string, PlanReceiver | PlanRunner | PlanPod, (file: string) => unknown, object[]]>([
    [
      'receiver',
      'receiver',
      receiver,
      receiverOf,
      [{ slowSdM: 0.4 }, { slowSdM: 21 }, { lagS: -0.1 }, { lagS: 5.1 }, { lagSdS: 0.04 }, { lagSdS: 6 }],
    ],
    [
      'runner',
      'runner',
      runner,
      runnerOf,
      [
        { fadeMore: 0.21 },
        { fadeMore: -0.21 },
        { wanderSd: 0 },
        { wanderSd: 0.21 },
        { races: 0 },
        { races: 1.5 },
      ],
    ],
    [
      'pod',
      'footPod',
      pod,
      footPodOf,
      [
        ...[{ factor: 0.69 }, { factor: 1.41 }, { slope: 0.51 }, { slope: -0.51 }, { factorVar: 0 }],
        ...[{ factorVar: 0.11 }, { slopeVar: 0 }, { covar: 0.11 }],
        // Two uncertainties cannot share more than they have.
        { covar: 7e-5 },
      ],
    ],
  ])('of a %s is taken only where each figure makes sense', (_what, field, good, read, wrongs) => {
    const fileOf = (value: object): string => JSON.stringify({ ...JSON.parse(PLAN), [field]: value });
    expect(read(fileOf(good))).toEqual(good);
    for (const wrong of [...wrongs, ...Object.keys(good).map((key) => ({ [key]: 'x' }))])
      expect([wrong, read(fileOf({ ...good, ...wrong }))]).toEqual([wrong, null]);
  });
});
