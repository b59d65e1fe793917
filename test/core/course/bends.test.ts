import { describe, expect, it } from 'vitest';
import { bendDoubts } from '../../../src/core/course/bends.ts';
import { type LinePoint, measureLine } from '../../../src/core/course/line.ts';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';

type Place = readonly [eastM: number, northM: number];
const PLANE = planeAt({ latitudeDeg: 53.9, longitudeDeg: 5.4 });

/** The way along places, and the doubt per metre of the bends at each of them. */
const doubtsOf = (places: readonly Place[]): number[] => {
  let sum = 0;
  const sumM = Float64Array.from(places, ([e, n], i) => {
    const [e0, n0] = places[i - 1] ?? [e, n];
    sum += Math.hypot(e - e0, n - n0);
    return sum;
  });
  const east = Float64Array.from(places, (p) => p[0]);
  const north = Float64Array.from(places, (p) => p[1]);
  return [...bendDoubts(east, north, sumM)];
};
const street = (metres: number): Place[] => Array.from({ length: metres / 10 + 1 }, (_, i) => [10 * i, 0]);
/** From a place eastwards, round to the left. */
const bend = (radiusM: number, rad: number, [e, n]: Place): Place[] =>
  Array.from({ length: Math.round((radiusM * rad) / 5) }, (_, i): Place => {
    const phi = ((i + 1) * 5) / radiusM;
    return [e + radiusM * Math.sin(phi), n + radiusM * (1 - Math.cos(phi))];
  });

describe('bends', () => {
  it('make the length doubtful, tight ones more; a street does not, nor does a corner', () => {
    expect(Math.max(...doubtsOf(street(500)))).toBe(0);
    const corner: Place[] = [
      ...street(300),
      ...street(300)
        .map(([m]): Place => [300, m])
        .slice(1),
    ];
    expect(Math.max(...doubtsOf(corner))).toBe(0);
    const most = (radiusM: number): number => Math.max(...doubtsOf(bend(radiusM, Math.PI, [0, 0])));
    expect(most(40)).toBeGreaterThan(4 * most(100));
    expect(most(100)).toBeGreaterThan(4 * most(300));
  });

  it('take what a shaken line lost or won in a stadium, so that the street before it keeps its metres', () => {
    const STREET_M = 3000;
    const S = 84.39;
    const R = 36.8;
    let lap: Place[] = [[STREET_M, 0]];
    for (let k = 0; k < 2; k++) {
      const straightTo = lap.at(-1) as Place;
      lap = [
        ...lap,
        ...Array.from(
          { length: 16 },
          (_, i): Place => [straightTo[0] + (5 * (i + 1) * S) / 80, straightTo[1]],
        ),
      ];
      lap = [...lap, ...bend(R, 2 * Math.PI, lap.at(-1) as Place)];
    }
    const road: Place[] = [...street(STREET_M), ...lap.slice(1)];
    const officialM = STREET_M + 2 * S + 2 * 2 * Math.PI * R;
    for (const seed of [1, 2, 3, 4]) {
      const chance = chanceOf(seed);
      const points: LinePoint[] = road.map(([e, n]) => ({
        ...pointOn(PLANE, e + chance.normal(), n + chance.normal()),
        elevationM: null,
      }));
      const line = measureLine(points, officialM, PLANE);
      if (!line) throw new Error('no line');
      const end = line.eastM.findIndex((e) => e > STREET_M - 30);
      const offM = (line.alongM[end] ?? 0) - (line.eastM[end] ?? 0);
      expect(Math.abs(offM)).toBeLessThan(4);
    }
  });
});
