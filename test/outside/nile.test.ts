import { describe, expect, test } from 'vitest';
import { type Gaussian, independent, predict, update } from '../../src/core/estimate/kalman.ts';

/**
 * Annual flow of the Nile at Aswan, 1871-1970, in 10⁸ m³, under a local level model: the standing worked example of
 * Durbin & Koopman, Time Series Analysis by State Space Methods. Data and values read in LAMPSPUC/StateSpaceModels.jl
 * (datasets/nile.csv, test/models/locallevel.jl, 9acf509a), which quotes the book and the R package KFAS.
 */
const FLOW = [
  1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960, 1180, 799, 958,
  1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694, 940, 833, 701, 916, 692, 1020,
  1050, 969, 831, 726, 456, 824, 702, 1120, 1100, 832, 764, 821, 768, 845, 864, 862, 698, 845, 744, 796, 1040,
  759, 781, 865, 845, 944, 984, 897, 822, 1010, 771, 676, 649, 846, 812, 742, 801, 1040, 860, 874, 848, 890,
  744, 749, 838, 1050, 918, 986, 797, 923, 975, 815, 1020, 906, 901, 1170, 912, 746, 919, 718, 714, 740,
];
const OBSERVATION_VARIANCE = 15099;
const LEVEL_VARIANCE = 1469.1;
const FIRST_VARIANCE = 1e7;

interface Year {
  readonly level: number;
  readonly variance: number;
  readonly logDensity: number;
}

const filterYears = (): Year[] => {
  const level: Gaussian = independent([0], [Math.sqrt(FIRST_VARIANCE)]);
  return FLOW.map((flow, i) => {
    if (i > 0) predict(level, Float64Array.of(1), [], Float64Array.of(LEVEL_VARIANCE));
    const innovation = flow - (level.x[0] as number);
    const variance = update(level, { at: [0], by: [1] }, innovation, OBSERVATION_VARIANCE);
    const logDensity = -0.5 * (Math.log(2 * Math.PI * variance) + innovation ** 2 / variance);
    return { level: level.x[0] as number, variance: level.P[0] as number, logDensity };
  });
};

describe('Durbin & Koopman, the Nile', () => {
  const years = filterYears();
  const logLikelihood = years.reduce((sum, year) => sum + year.logDensity, 0);

  test('log-likelihood -641.5856 [seen: KFAS, quoted]', () => {
    expect(logLikelihood).toBeCloseTo(-641.5856, 4);
  });
  test('exact diffuse log-likelihood -632.5456: the first year adds nothing [seen: KFAS, quoted]', () => {
    // Diffuse in the limit; with a first variance of 10⁷ the other 99 years come within 0.01 of it.
    expect(Math.abs(logLikelihood - (years[0]?.logDensity ?? 0) - -632.5456)).toBeLessThan(0.01);
  });
  test('level in 1970: 798.4 [seen: the book’s table, quoted]', () => {
    expect(years[99]?.level).toBeCloseTo(798.4, 1);
  });

  /** Computed from the published data and variances, confirmed by a batch Gaussian solution to 4e-10. */
  test.each([
    [1, 1118.3114615242446, 15076.236390674236],
    [2, 1140.1084391635106, 7894.557530882937],
    [10, 1162.8548238174476, 4051.2659142054326],
    [28, 1133.126114563495, 4032.158206697516],
    [50, 849.0705660142463, 4032.1579418087827],
    [100, 798.3702926083641, 4032.157941808477],
  ])('year %i: filtered %f with variance %f', (year, level, variance) => {
    expect(years[year - 1]?.level).toBeCloseTo(level, 6);
    // The variance of year 1 is a difference of numbers near 10⁷: relative, not absolute.
    expect((years[year - 1]?.variance ?? 0) / variance).toBeCloseTo(1, 9);
  });
  test('steady gain 0.26704801257 [closed form]', () => {
    expect((years[99]?.variance ?? 0) / OBSERVATION_VARIANCE).toBeCloseTo(0.26704801257093025, 11);
  });
});
