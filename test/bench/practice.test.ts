import { expect, test } from 'vitest';
import { SESSION_STEADY } from '../../src/sensors/simulatedPractice.ts';
import { OPEN_SKY, TOWN } from '../../src/sensors/simulatedReceiver.ts';
import { changeErrorsS, doSession, falseAlarms, legErrorsS, THOUSANDS, TWO_BY_15 } from './practice.ts';
import { mean, quantile } from './stats.ts';

const SEEDS = [1, 2, 3, 4];

test('2 x 15 min: legs by the clock change within 0.3 s; false alarms at most one in 30 min on average', () => {
  const done = SEEDS.map((seed) => doSession(TWO_BY_15, OPEN_SKY, SESSION_STEADY, seed));
  for (const d of done)
    for (const error of changeErrorsS(TWO_BY_15, d, 'time')) expect(Math.abs(error)).toBeLessThan(0.3);
  expect(mean(done.map((d) => falseAlarms(TWO_BY_15, d)))).toBeLessThanOrEqual(1);
}, 60_000);

test('5 x 1000 m without a line under open sky: nine in ten legs by distance end within 1.5 s of the truth', () => {
  const done = SEEDS.map((seed) => doSession(THOUSANDS, OPEN_SKY, SESSION_STEADY, seed));
  const errors = done.flatMap((d) => legErrorsS(THOUSANDS, d)).map(Math.abs);
  expect(quantile(errors, 0.9)).toBeLessThan(1.5);
}, 60_000);

test('5 x 1000 m in town on a loop that the runner knows: nine in ten legs by distance end within 1.5 s of the truth', () => {
  const done = SEEDS.map((seed) => doSession(THOUSANDS, TOWN, SESSION_STEADY, seed, null, true));
  const errors = done.flatMap((d) => legErrorsS(THOUSANDS, d)).map(Math.abs);
  expect(quantile(errors, 0.9)).toBeLessThan(1.5);
}, 60_000);
