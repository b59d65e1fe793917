import { type CourseLine, type LinePoint, linePoints, measureLine } from '../../src/core/course/line.ts';
import { planeAt, pointOn } from '../../src/core/geo/ruler.ts';
import { type Chance, chanceOf } from '../../src/core/units/chance.ts';

/** Shapes that have fooled estimates: corners, the same lap again, the same road back, a crossing with oneself. */
export const SHAPES = ['city', 'laps', 'out and back', 'figure of eight'] as const;
export type Shape = (typeof SHAPES)[number];

const NOWHERE = { latitudeDeg: 54.4, longitudeDeg: 6.2 };
const PIECE_M = 10;
const LAPS = 4;

type Place = readonly [eastM: number, northM: number];

/** Blocks of 80 to 450 m with a corner at every second of them, the rest bending gently. */
const streets = (lengthM: number, chance: Chance): Place[] => {
  let [east, north] = [0, 0];
  let heading = 2 * Math.PI * chance.uniform();
  const places: Place[] = [[0, 0]];
  let left = lengthM;
  while (left > 0) {
    const blockM = Math.min(left, 80 + 370 * chance.uniform());
    const side = chance.uniform() < 0.5 ? -1 : 1;
    heading += chance.uniform() < 0.5 ? side * (1.1 + 0.8 * chance.uniform()) : 0.3 * chance.normal();
    const pieces = Math.ceil(blockM / PIECE_M);
    for (let i = 0; i < pieces; i++) {
      east += (blockM / pieces) * Math.sin(heading);
      north += (blockM / pieces) * Math.cos(heading);
      places.push([east, north]);
    }
    left -= blockM;
  }
  return places;
};

/** A closed line r(φ), run several times, of about the given length in all. */
const rounds = (lengthM: number, laps: number, at: (phi: number) => Place): Place[] => {
  const pieces = Math.ceil(lengthM / laps / PIECE_M);
  return Array.from({ length: laps * pieces + 1 }, (_, i) => at((2 * Math.PI * i) / pieces));
};

const placesOf = (shape: Shape, lengthM: number, chance: Chance): Place[] => {
  const turn = 2 * Math.PI * chance.uniform();
  switch (shape) {
    case 'city':
      return streets(lengthM, chance);
    case 'out and back': {
      const out = streets(lengthM / 2, chance);
      return [...out, ...out.slice(0, -1).reverse()];
    }
    case 'laps': {
      const radiusM = lengthM / LAPS / (2 * Math.PI);
      return rounds(lengthM, LAPS, (phi) => {
        const r = radiusM * (1 + 0.3 * Math.sin(2 * phi + turn) + 0.15 * Math.sin(5 * phi));
        return [r * Math.cos(phi), r * Math.sin(phi)];
      });
    }
    case 'figure of eight': {
      const sizeM = lengthM / 2 / 6.1;
      return rounds(lengthM, 2, (phi) => [sizeM * Math.sin(phi), sizeM * Math.sin(phi) * Math.cos(phi)]);
    }
  }
};

const measured = (points: readonly LinePoint[], officialM: number): CourseLine => {
  const line = measureLine(points, officialM);
  if (!line) throw new Error('the bench made a course without length');
  return line;
};

/** The road as it is: runners run on this line, and it measures the official distance. */
export const roadOf = (shape: Shape, officialM: number, seed: number): CourseLine => {
  const plane = planeAt(NOWHERE);
  const places = placesOf(shape, officialM, chanceOf(seed));
  // Scaled to the official length on the ground, so that a metre of the road is a metre.
  const lengthM = places.slice(1).reduce((sum, [e, n], i) => {
    const [e0, n0] = places[i] as Place;
    return sum + Math.hypot(e - e0, n - n0);
  }, 0);
  const k = officialM / lengthM;
  const points = places.map(([e, n]) => ({ ...pointOn(plane, k * e, k * n), elevationM: null }));
  return measured(points, officialM);
};

/** Every second point survives, and each lies this far off, as in a course file that somebody recorded. */
const RECORDED_EVERY = 2;
const RECORDED_SD_M = 1.5;

/** Every point that a recorded course file has of the road, and which vertex of the road it stands for. */
export const recordedPoints = (
  road: CourseLine,
  seed: number,
): { readonly points: readonly LinePoint[]; readonly vertex: readonly number[] } => {
  const chance = chanceOf(seed);
  const all = linePoints(road);
  const vertex = [...all.keys()].filter((i) => i % RECORDED_EVERY === 0 || i === all.length - 1);
  const points = vertex.map((i) => {
    const p = all[i] as LinePoint;
    const east = RECORDED_SD_M * chance.normal();
    const north = RECORDED_SD_M * chance.normal();
    return { ...pointOn(planeAt(p), east, north), elevationM: null };
  });
  return { points, vertex };
};

/** The road as a course file has it: what the engine is given. */
export const recordingOf = (road: CourseLine, seed: number): CourseLine =>
  measured(recordedPoints(road, seed).points, road.officialM);
