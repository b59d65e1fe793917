import { type Chance, chanceOf } from '../../src/core/units/chance.ts';
import { type RunnerModel, STEADY } from '../../src/sensors/simulatedRunner.ts';

/**
 * People whom the projection was not made for: other wavers, stops, a hill that no file knows of, and a kick far beyond
 * what anybody showed before. An interval that holds for people.ts alone has learned the bench.
 */
export const OTHERS = ['quick waver', 'slow waver', 'stops', 'late hill', 'late kick'] as const;
export type Other = (typeof OTHERS)[number];

const DAY_SD = 0.012;

/** How each differs from STEADY; `day` is by how much the day's speed is off the plan. */
const MODELS: Readonly<
  Record<Other, (day: number, chance: Chance, distanceM: number) => Partial<RunnerModel>>
> = {
  'quick waver': (day, { uniform }, toM) => ({
    waverShare: 0.02 + 0.01 * uniform(),
    waverTauS: 15 + 10 * uniform(),
    stretches: [{ fromM: 0, toM, share: day }],
  }),
  'slow waver': (day, { uniform }, toM) => ({
    waverShare: 0.01 + 0.01 * uniform(),
    waverTauS: 150 + 100 * uniform(),
    stretches: [{ fromM: 0, toM, share: day }],
  }),
  stops: (day, { uniform }, toM) => {
    const times = Math.floor(4 * uniform());
    const stops = [0.35 + 0.2 * uniform(), 0.6 + 0.15 * uniform(), 0.8 + 0.1 * uniform()]
      .slice(0, times)
      .map((share) => ({ atM: share * toM, seconds: 8 + 15 * uniform() }));
    return { stops, stretches: [{ fromM: 0, toM, share: day + 0.004 * times }] };
  },
  'late hill': (day, { uniform }, toM) => {
    const fromM = (0.65 + 0.2 * uniform()) * toM;
    const [topM, downM] = [fromM + 0.06 * toM, fromM + 0.12 * toM];
    const lost = 0.03 + 0.05 * uniform();
    return {
      stretches: [
        { fromM, toM: topM, share: day - lost },
        { fromM: topM, toM: downM, share: day + lost / 2 },
        { fromM: 0, toM, share: day },
      ],
    };
  },
  'late kick': (day, { normal, uniform }, toM) => {
    const fromM = toM - (300 + 500 * uniform());
    return {
      waverShare: 0.008 + 0.008 * uniform(),
      stretches: [
        { fromM, toM, share: day + 0.05 + 0.04 * normal() },
        { fromM: 0, toM, share: day },
      ],
    };
  },
};

export const otherRunnerOf = (other: Other, distanceM: number, seed: number): Partial<RunnerModel> => {
  const chance = chanceOf(seed + 9000);
  return { ...STEADY, ...MODELS[other](DAY_SD * chance.normal(), chance, distanceM) };
};
