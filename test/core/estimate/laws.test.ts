import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { absorb, beginEstimate, progressAt } from '../../../src/core/estimate/estimator.ts';
import type { Input } from '../../../src/core/estimate/input.ts';
import { OPEN_SKY, TALL, TOWN } from '../../../src/sensors/simulatedReceiver.ts';
import { follow } from './follow.ts';
import * as meddling from './meddling.ts';
import { figureOfEight, lollipop, oneLap, parallel } from './roads.ts';

const roads = [oneLap, figureOfEight, parallel, lollipop];

/** What a receiver may do on top of its errors. */
const faults: readonly (() => meddling.Meddle)[] = [
  () => (inputs) => inputs,
  () => meddling.bundled(12),
  () => meddling.speeds((mps) => 2.237 * mps),
  () => meddling.speeds((mps, i) => (i % 4 === 0 ? 0 : mps)),
  () =>
    meddling.changeFixes((i, ownS) =>
      ownS < 200 ? i : { ...i, fix: { ...i.fix, timestampMs: i.fix.timestampMs - 3_600_000 } },
    ),
  () => meddling.withoutEvents,
];

const worlds = fc.record({
  road: fc.constantFrom(...roads),
  receiver: fc.constantFrom(OPEN_SKY, TOWN, TALL, { ...TOWN, speedSdMps: null }, { ...OPEN_SKY, everyS: 5 }),
  lined: fc.boolean(),
  seed: fc.integer({ min: 1, max: 1_000_000 }),
  speedMps: fc.double({ min: 2.4, max: 5.8, noNaN: true }),
  darkFromS: fc.integer({ min: 60, max: 300 }),
  darkS: fc.integer({ min: 0, max: 180 }),
  fault: fc.constantFrom(...faults),
});

describe('laws of the estimate', () => {
  test('in 200 worlds: on the course, hardly ever backwards, sd neither zero nor NaN', () => {
    fc.assert(
      fc.property(worlds, ({ road, receiver, lined, seed, speedMps, darkFromS, darkS, fault }) => {
        const followed = follow({
          road,
          given: lined ? road : null,
          receiver,
          seed,
          speedMps,
          meddle: meddling.inTurn(meddling.tunnel(darkFromS, darkFromS + darkS), fault()),
        });
        for (const { errorM, sdM } of followed.samples) {
          expect(Number.isFinite(errorM)).toBe(true);
          expect(sdM).toBeGreaterThan(0);
        }
        if (lined) expect(followed.backwards).toBeLessThanOrEqual(1);
      }),
      { numRuns: 200, seed: 20270509 },
    );
  }, 240_000);

  test('any fixes at all: progress stays on the course and finite, the same log gives the same result', () => {
    const anyFix = fc.record({
      stepMs: fc.integer({ min: -3000, max: 20_000 }),
      latitudeDeg: fc.double({ min: 53.88, max: 53.93, noNaN: true }),
      longitudeDeg: fc.double({ min: 5.38, max: 5.44, noNaN: true }),
      accuracyM: fc.option(fc.double({ min: 0, max: 5000, noNaN: true })),
      speedMps: fc.option(fc.double({ min: 0, max: 60, noNaN: true })),
      event: fc.option(fc.constantFrom('start' as const, 'marker' as const, 'gun' as const, 'ask' as const)),
    });
    fc.assert(
      fc.property(fc.array(anyFix, { maxLength: 60 }), fc.boolean(), (steps, lined) => {
        const setup = { course: lined ? oneLap : null, officialM: oneLap.officialM, boardsM: [1000] };
        const run = () => {
          let state = beginEstimate(setup);
          let atMs = 0;
          let stampMs = 0;
          const seen: number[] = [];
          for (const { stepMs, event, ...rest } of steps) {
            stampMs += stepMs;
            atMs = Math.max(atMs, stampMs);
            const input: Input = event
              ? { type: 'event', atMs, event }
              : { type: 'fix', atMs, fix: { timestampMs: stampMs, altitudeM: null, ...rest } };
            state = absorb(setup, state, input);
            const p = progressAt(setup, state, atMs);
            expect(p.distanceM).toBeGreaterThanOrEqual(0);
            expect(p.distanceM).toBeLessThanOrEqual(oneLap.officialM);
            expect(p.distanceSdM).toBeGreaterThan(0);
            expect(Number.isFinite(p.distanceSdM + p.speedMps + p.speedSdMps)).toBe(true);
            seen.push(p.distanceM);
          }
          return seen;
        };
        expect(run()).toEqual(run());
      }),
      { numRuns: 200 },
    );
  });
});
