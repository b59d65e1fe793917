import { describe, expect, test } from 'vitest';
import {
  danielsGilbertS,
  oxygenCost,
  runningIndex,
  sustainableShare,
  timeAtIndexS,
} from '../../src/core/prepare/goal/danielsGilbert.ts';
import { FALL_OFF_SD } from '../../src/core/prepare/goal/error.ts';
import { cameronS, RIEGEL_EXPONENT, riegelS } from '../../src/core/prepare/goal/formulas.ts';
import { predict } from '../../src/core/prepare/goal/predict.ts';
import { EXTRA_BEYOND_HALF } from '../../src/core/prepare/goal/weeklyDistance.ts';
import { M_PER_MILE } from '../../src/core/units/units.ts';

const HALF_M = 21_097.5;
const MARATHON_M = 42_195;

/** From, time, to; then what the formulas give, worked out apart from this code from the published formulas. */
const rows: readonly (readonly [
  fromM: number,
  fromS: number,
  toM: number,
  riegel: number,
  cameron: number,
])[] = [
  [5000, 1200, 10_000, 2501.9178260186914, 2499.6613726484356],
  [5000, 1200, HALF_M, 5520.239199907903, 5511.220542541848],
  [5000, 1200, MARATHON_M, 11509.32071511395, 11711.468168598376],
  [10_000, 2400, HALF_M, 5295.367394564456, 5291.48845792911],
  [10_000, 2700, HALF_M, 5957.288318885013, 5952.924515170251],
  [10_000, 3600, HALF_M, 7943.051091846684, 7937.232686893665],
  [10_000, 3000, MARATHON_M, 13800.597999769758, 14055.665655452203],
  [HALF_M, 5400, MARATHON_M, 11258.630217084112, 11475.122002877282],
  [HALF_M, 6300, 10_000, 2855.325961994676, 2857.4190646382694],
];

describe('Riegel 1977, 1981: T2 = T1 (D2/D1)^1.06 (formula read in two secondary sources; values computed)', () => {
  test.each(rows)('%d m in %d s, to %d m', (fromM, fromS, toM, riegel) => {
    expect(Math.abs(riegelS(fromM, fromS, toM) - riegel)).toBeLessThan(0.001);
  });

  test('ratio for a doubled distance', () => {
    expect(riegelS(1, 1, 2)).toBeCloseTo(2.084931521682243, 12);
  });
});

describe('Cameron 1998 (mile form read in a secondary source; values computed with the metre form)', () => {
  // The two published forms of the coefficients, miles and metres, differ by up to 0.011 s here.
  test.each(rows)('%d m in %d s, to %d m', (fromM, fromS, toM, _riegel, cameron) => {
    expect(Math.abs(cameronS(fromM, fromS, toM) - cameron)).toBeLessThan(0.02);
  });
});

describe('Daniels and Gilbert 1979', () => {
  test('published worked example: 10 km in 40:00 (a stored mathematics page)', () => {
    expect(oxygenCost(250)).toBeCloseTo(47.4645, 10);
    expect(sustainableShare(40)).toBeCloseTo(0.9137614442697204, 10);
    expect(runningIndex(10_000, 2400)).toBeCloseTo(51.9440826680247, 10);
  });

  // Computed from the published coefficients, apart from this code.
  test.each([
    [5000, 1200, 49.806233428066335],
    [10_000, 3000, 40.01205049340948],
    [HALF_M, 5400, 50.97690626805135],
    [HALF_M, 6300, 42.63531584253041],
    [MARATHON_M, 10_800, 53.52826876260377],
    [MARATHON_M, 14_400, 37.904316180851566],
    [15_000, 4068, 46.39652413925438],
  ])('index of %d m in %d s', (distanceM, timeS, index) => {
    expect(runningIndex(distanceM, timeS)).toBeCloseTo(index, 9);
  });

  // A third party's table of 2007 for 15 km in 1:07:48 (index 46.4). Residual of this code beside each row, s.
  test.each([
    ['1500 m', 1500, 346.1], // -0.03
    ['mile', M_PER_MILE, 374.0], // -0.02
    ['3000 m', 3000, 739.9], // -0.15
    ['5 km', 5000, 1275.1], // -0.17
    ['8 km', 8000, 2089.4], // -0.30
    ['10 km', 10_000, 2643.9], // -0.43
    ['10 miles', 10 * M_PER_MILE, 4384.9], // +0.64
    ['20 km', 20_000, 5531.9], // +0.81
    ['half marathon', HALF_M, 5856.7], // +1.13
    ['30 km', 30_000, 8518.5], // +1.11
    ['marathon', MARATHON_M, 12_178.7], // +2.08
  ])('published table, 15 km in 1:07:48: %s', (_name, toM, publishedS) => {
    expect(Math.abs(danielsGilbertS(15_000, 4068, toM) - publishedS)).toBeLessThan(2.5);
  });

  // The book's tables as recalled (from memory, not checked), rounded by the book; index 30 lies furthest off.
  test.each([
    [30, 35, [1840, 3826, 8464, 17_357]],
    [40, 10, [1448, 3003, 6659, 13_785]],
    [50, 10, [1197, 2481, 5495, 11_449]],
    [60, 10, [1023, 2122, 4689, 9805]],
  ])('book table from memory, index %d within %d s', (index, toleranceS, times) => {
    for (const [i, distanceM] of [5000, 10_000, HALF_M, MARATHON_M].entries())
      expect(Math.abs(timeAtIndexS(distanceM, index) - (times[i] ?? 0))).toBeLessThan(toleranceS);
  });
});

describe('Vickers and Vertosick 2016 (abstract): what is known of the error', () => {
  const marathon = predict([{ distanceM: HALF_M, timeS: 6900, daysAgo: 30 }], MARATHON_M, null);

  test('half of recreational marathoners are at least 10 min slower than Riegel', () => {
    expect(marathon.middleS - riegelS(HALF_M, 6900, MARATHON_M)).toBeGreaterThan(600);
    expect(RIEGEL_EXPONENT + EXTRA_BEYOND_HALF).toBeCloseTo(1.12, 10);
  });

  test('spread of a marathon from a half between the better models (MSE 208) and Riegel (MSE 381)', () => {
    expect(FALL_OFF_SD).toBeGreaterThan(0);
    const sdMin = (marathon.middleS * marathon.sdLog) / 60;
    expect(sdMin).toBeGreaterThan(Math.sqrt(208) * 0.95);
    expect(sdMin).toBeLessThan(Math.sqrt(381));
  });
});
