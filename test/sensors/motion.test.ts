import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askForMotion, motionLeave, watchSteps } from '../../src/sensors/motion.ts';
import { type Shake, stepRateHz } from '../../src/sensors/stepRate.ts';
import { pretendTime } from '../session/pretend.ts';

interface Gait {
  readonly stepHz: number;
  readonly mps2: number;
  /** How much harder one foot lands than the other. */
  readonly limp: number;
  readonly noise: number;
  readonly rateHz: number;
}
const RUN: Gait = { stepHz: 2.8, mps2: 8, limp: 0.2, noise: 1, rateHz: 60 };

/** A phone in a pocket: a bump at each landing with a smaller one behind it, and noise that repeats with the seed. */
const shaking = (gait: Partial<Gait> = {}, seconds = 6): Shake[] => {
  const { stepHz, mps2, limp, noise, rateHz } = { ...RUN, ...gait };
  let seed = 12345;
  const chance = (): number => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return seed / 2147483648 - 0.5;
  };
  return Array.from({ length: seconds * rateHz }, (_, i) => {
    const t = i / rateHz;
    const phase = t * stepHz;
    const foot = Math.floor(phase) % 2 === 0 ? 1 + limp : 1 - limp;
    const bump = foot * (Math.cos(2 * Math.PI * phase) + 0.4 * Math.cos(4 * Math.PI * phase + 1));
    return { atMs: 1000 * t, mps2: Math.abs(9.81 + mps2 * bump + noise * 2 * chance()) };
  });
};

describe('the step rate', () => {
  test.each([2.4, 2.6, 2.8, 3.0, 3.2, 3.4])(
    'of a runner at %f steps a second is found to 2 percent',
    (stepHz) => {
      const found = stepRateHz(shaking({ stepHz }));
      expect(Math.abs((found ?? 0) / stepHz - 1)).toBeLessThan(0.02);
    },
  );

  test('is never the stride nor the double, whatever the limp and the noise', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2.4, max: 3.3, noNaN: true }),
        fc.double({ min: 0, max: 0.35, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.constantFrom(30, 50, 60, 100),
        (stepHz, limp, noise, rateHz) => {
          const found = stepRateHz(shaking({ stepHz, limp, noise, rateHz }));
          if (found !== null) expect(Math.abs(found / stepHz - 1)).toBeLessThan(0.05);
        },
      ),
    );
  });

  test('is none on a table, at a walk, or in too short a time', () => {
    expect(stepRateHz(shaking({ mps2: 0, noise: 0.1 }))).toBeNull();
    expect(stepRateHz(shaking({ stepHz: 1.8, mps2: 3 }))).toBeNull();
    expect(stepRateHz(shaking({}, 2))).toBeNull();
    expect(stepRateHz([])).toBeNull();
  });
});

describe('the watch for steps', () => {
  test('tells the rate every second, from either kind of acceleration, until it is ended', () => {
    const time = pretendTime();
    const target = new EventTarget();
    const told: (number | null)[] = [];
    const stop = watchSteps({ target, nowMs: time.nowMs, every: time.every, onSteps: (hz) => told.push(hz) });
    const send = (mps2: number, withGravity: boolean): void => {
      const felt = { x: 0, y: mps2, z: 0 };
      const event = Object.assign(new Event('devicemotion'), {
        acceleration: withGravity ? null : felt,
        accelerationIncludingGravity: felt,
      });
      target.dispatchEvent(event);
    };
    for (const [i, { mps2 }] of shaking({ rateHz: 50 }, 12).entries()) {
      send(mps2, i % 2 === 0);
      time.pass(20);
    }
    expect(told.length).toBe(12);
    expect(Math.abs((told.at(-1) ?? 0) - RUN.stepHz)).toBeLessThan(0.06);
    stop();
    time.pass(10_000);
    expect(told.length).toBe(12);
  });

  test('tells nothing where the sensor gives nothing', () => {
    const time = pretendTime();
    const told: unknown[] = [];
    watchSteps({
      target: new EventTarget(),
      nowMs: time.nowMs,
      every: time.every,
      onSteps: (hz) => told.push(hz),
    });
    time.pass(20_000);
    expect(told).toEqual([]);
  });
});

describe('leave to read the accelerometer', () => {
  const windowWith = (event: unknown) =>
    ({ DeviceMotionEvent: event }) as unknown as Window & typeof globalThis;

  test('is given where nobody asks, asked for on iOS, absent without the sensor', async () => {
    expect(motionLeave(windowWith(undefined))).toBe('absent');
    expect(motionLeave(windowWith(class {}))).toBe('given');
    const asking = (answer: () => Promise<string>) =>
      windowWith(Object.assign(class {}, { requestPermission: answer }));
    expect(motionLeave(asking(async () => 'granted'))).toBe('ask');
    expect(await askForMotion(asking(async () => 'granted'))).toBe('given');
    expect(await askForMotion(asking(async () => 'denied'))).toBe('refused');
    expect(await askForMotion(asking(() => Promise.reject(new Error('no touch'))))).toBe('refused');
    expect(await askForMotion(windowWith(undefined))).toBe('absent');
  });
});
