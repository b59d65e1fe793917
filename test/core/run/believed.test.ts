import { expect, test } from 'vitest';
import { footPodOf } from '../../../src/core/plan/planPod.ts';
import { runnerOf, withRunner } from '../../../src/core/plan/planRunner.ts';
import { ownRunnerOf } from '../../../src/core/review/trend.ts';
import { withBelieved } from '../../../src/core/review/withBelieved.ts';
import { believedIn } from '../../../src/core/run/believed.ts';

const FILE = '{"version":1,"kind":"race","distanceM":21097.5,"goalS":7200}';

test('a plan file that no run has touched leaves everything as usual', () => {
  expect(believedIn(FILE)).toEqual({});
  expect(believedIn('no JSON')).toEqual({});
  expect(withBelieved(FILE, null, 7200, null)).toBe(FILE);
});

test('what is believed of phone, pod and runner goes through the file', () => {
  const own = { ...ownRunnerOf([], 0), fadeMore: 0.01, wanderSd: 0.02, races: 3 };
  const pod = { factor: 0.97, slope: -0.02, factorVar: 1e-5, slopeVar: 1e-4, covar: 0 };
  const file = withBelieved(FILE, own, 7200, pod);
  const back = believedIn(file);
  expect(back.runner).toEqual({ fadeMore: 0.01, wanderSd: 0.02, races: 3 });
  expect(back.footPod).toEqual(pod);
  expect(back.receiver?.slowSdM).toBe(own.receiver.slowSdM);
  expect(footPodOf(file)).toEqual(pod);
});

test('who has run no race is believed to run as others do', () => {
  expect(believedIn(withBelieved(FILE, ownRunnerOf([], 0), 7200, null)).runner).toBeUndefined();
});

test('what makes no sense is nothing', () => {
  expect(runnerOf('{"runner":{"fadeMore":3,"wanderSd":0.02,"races":2}}')).toBeNull();
  expect(runnerOf('{"runner":{"fadeMore":0,"wanderSd":0.02,"races":0}}')).toBeNull();
  expect(withRunner('{}', null)).toBe('{}');
});
