import { describe, expect, test } from 'vitest';
import { type Gaussian, independent, predict, update } from '../../src/core/estimate/kalman.ts';

/**
 * Place and speed, seen through a noisy place: the tracking filter that textbooks solve in closed form. Our `predict`
 * takes independent noises, so the noise that place and speed share is a third state, drawn afresh each step and then
 * fed into both. In the steady state the gain must be [α, β/T].
 */
const PLACE = { at: [0], by: [1] };
const KEEP_BUT_SHARED = Float64Array.of(1, 1, 0);
const KEEP = Float64Array.of(1, 1, 1);

interface Motion {
  readonly stepS: number;
  /** Variance of the shared noise in one step, and how much of it goes into place (into speed: `intoSpeed`). */
  readonly sharedVariance: number;
  readonly intoPlace: number;
  readonly intoSpeed: number;
  /** Variance of what goes into place alone. */
  readonly placeVariance: number;
}

const move = (state: Gaussian, motion: Motion): void => {
  predict(state, KEEP_BUT_SHARED, [], Float64Array.of(0, 0, motion.sharedVariance));
  const couplings = [
    { row: 0, col: 1, value: motion.stepS },
    { row: 0, col: 2, value: motion.intoPlace },
    { row: 1, col: 2, value: motion.intoSpeed },
  ];
  predict(state, KEEP, couplings, Float64Array.of(motion.placeVariance, 0, 0));
};

const look = (state: Gaussian, place: number, variance: number): void => {
  update(state, PLACE, place - (state.x[0] as number), variance);
};

const covariance = (state: Gaussian): number[] => [0, 1, 3, 4].map((i) => state.P[i] as number);

describe('The step itself', () => {
  test('piecewise constant acceleration, T = 1, variance 1: Q = [[¼, ½], [½, 1]] [seen: rlabbe/filterpy test_discretization.py]', () => {
    const state = independent([0, 0, 0], [0, 0, 0]);
    move(state, { stepS: 1, sharedVariance: 1, intoPlace: 0.5, intoSpeed: 1, placeVariance: 0 });
    expect(covariance(state)).toEqual([0.25, 0.5, 0.5, 1]);
  });
});

describe('Kalata 1984, IEEE Trans. AES-20: the tracking index gives the steady gains', () => {
  /**
   * r = (4 + Λ - √(8Λ + Λ²))/4, α = 1 - r², β = 2(2 - α) - 4√(1 - α) [form seen at luli100.github.io, which misprints
   * α = 1 - Λ²; corrected by iterating the Riccati equation to 1e-14].
   */
  test.each([
    [0.01, 0.13185099127330124, 0.009317451415095768],
    [0.1, 0.36, 0.08],
    [0.5, 0.6283734572049671, 0.30480589839889616],
    [1, 0.75, 0.5],
    [2, 0.8541019662496846, 0.7639320225002102],
    [10, 0.9787137637477918, 1.458980337503155],
  ])('Λ = %f: α = %f, β = %f', (index, alpha, beta) => {
    const stepS = 2;
    const noiseVariance = 9;
    // Λ = σ_w T² / σ_v
    const shared = (index * Math.sqrt(noiseVariance)) / stepS ** 2;
    const state = independent([0, 0, 0], [100, 100, 0]);
    for (let i = 0; i < 2000; i++) {
      move(state, {
        stepS,
        sharedVariance: shared ** 2,
        intoPlace: stepS ** 2 / 2,
        intoSpeed: stepS,
        placeVariance: 0,
      });
      look(state, 0, noiseVariance);
    }
    // The gain is the posterior covariance with the place over the noise of the look.
    expect((state.P[0] as number) / noiseVariance).toBeCloseTo(alpha, 9);
    expect(((state.P[3] as number) / noiseVariance) * stepS).toBeCloseTo(beta, 9);
  });
});

describe('Five steps of constant velocity [constructed; agrees with a batch least-squares solution to 5e-15]', () => {
  // T = 1, R = 1, Q = 0.1 [[⅓, ½], [½, 1]]: half of the speed's noise goes into place, and 1/12 comes on top.
  const motion = { stepS: 1, sharedVariance: 0.1, intoPlace: 0.5, intoSpeed: 1, placeVariance: 0.1 / 12 };
  const steps = [
    {
      seen: 1,
      mean: [0.995025700547173, 0.49767866025534735],
      cov: [0.9950257005471635, 0.49767866025534435, 50.30725004145249],
    },
    {
      seen: 2.2,
      mean: [2.186737618179509, 1.1721361421512684],
      cov: [0.9812491678366072, 0.953572232767024, 1.9134021321570884],
    },
    {
      seen: 2.8,
      mean: [2.8957774456849394, 0.892755788350388],
      cov: [0.8286241858478872, 0.4998988566497111, 0.5552099822550072],
    },
    {
      seen: 4.1,
      mean: [4.0088469602729715, 0.9934898182457599],
      cov: [0.7073426455477206, 0.32341822917568497, 0.2977976385300457],
    },
    {
      seen: 5.2,
      mean: [5.126390913561391, 1.0428974050706772],
      cov: [0.6276035274190601, 0.24995842147396885, 0.2300215797700409],
    },
  ];

  test('place, speed and their covariance after each', () => {
    const state = independent([0, 0, 0], [10, 10, 0]);
    for (const { seen, mean, cov } of steps) {
      move(state, motion);
      look(state, seen, 1);
      for (const [i, value] of mean.entries()) expect(state.x[i]).toBeCloseTo(value, 11);
      for (const [k, i] of [0, 1, 4].entries()) expect(state.P[i]).toBeCloseTo(cov[k] as number, 11);
    }
  });
});
