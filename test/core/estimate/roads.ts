import { type CourseLine, type LinePoint, linePoints, measureLine } from '../../../src/core/course/line.ts';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';

type Place = readonly [eastM: number, northM: number];

const AT_SEA = { latitudeDeg: 53.9, longitudeDeg: 5.4 };

/** A line through corners, with a point every few metres, official distance as on the ground. */
const roadThrough = (corners: readonly Place[], everyM = 12): CourseLine => {
  const plane = planeAt(AT_SEA);
  const points: LinePoint[] = [];
  let lengthM = 0;
  corners.slice(1).forEach(([e, n], i) => {
    const [e0, n0] = corners[i] as Place;
    const legM = Math.hypot(e - e0, n - n0);
    const pieces = Math.ceil(legM / everyM);
    for (let k = i === 0 ? 0 : 1; k <= pieces; k++)
      points.push({
        ...pointOn(plane, e0 + ((e - e0) * k) / pieces, n0 + ((n - n0) * k) / pieces),
        elevationM: null,
      });
    lengthM += legM;
  });
  return measured(points, lengthM);
};

export const measured = (points: readonly LinePoint[], officialM: number): CourseLine => {
  const line = measureLine(points, officialM);
  if (!line) throw new Error('a road without length');
  return line;
};

/** The same road, with its points changed. */
export const redrawn = (road: CourseLine, how: (points: LinePoint[]) => readonly LinePoint[]): CourseLine =>
  measured(how(linePoints(road)), road.officialM);

/** Moves a point by metres east and north. */
export const moved = (p: LinePoint, east: number, north: number): LinePoint => ({
  ...pointOn(planeAt(p), east, north),
  elevationM: p.elevationM,
});

/** Blocks of a town: right angles both ways, 6.3 km. */
export const town = roadThrough([
  [0, 0],
  [420, 0],
  [420, 350],
  [900, 350],
  [900, -200],
  [1500, -200],
  [1500, 700],
  [1100, 700],
  [1100, 1250],
  [1900, 1250],
  [1900, 500],
  [2500, 500],
  [2500, 1000],
]);
/** 3 km out along a bent road, round a cone, and the same road back. */
const bent: Place[] = [
  [0, 0],
  [900, 150],
  [1600, -200],
  [2300, 100],
  [3000, 0],
];
export const outAndBack = roadThrough([...bent, ...bent.slice(0, -1).reverse()]);
/** 1.6 km round a park. */
const round: Place[] = Array.from({ length: 41 }, (_, i) => {
  const phi = (2 * Math.PI * i) / 40;
  return [320 * Math.cos(phi) * (1 + 0.2 * Math.sin(2 * phi)), 220 * Math.sin(phi)];
});
export const oneLap = roadThrough(round);
export const fourLaps = roadThrough([0, 1, 2, 3].flatMap((lap) => (lap === 0 ? round : round.slice(1))));
/** Crosses itself twice a lap. */
const eight: Place[] = Array.from({ length: 61 }, (_, i) => {
  const phi = (2 * Math.PI * i) / 60;
  return [500 * Math.sin(phi), 350 * Math.sin(phi) * Math.cos(phi)];
});
export const figureOfEight = roadThrough([...eight, ...eight.slice(1)]);
/** Up one street and down the next, 15 m apart, five times. */
export const parallel = roadThrough(
  Array.from({ length: 10 }, (_, i): Place[] => {
    const east = 15 * i;
    return i % 2 === 0
      ? [
          [east, 0],
          [east, 500],
        ]
      : [
          [east, 500],
          [east, 0],
        ];
  }).flat(),
);

export const pointsOf = (road: CourseLine): LinePoint[] => linePoints(road);

/** 2 km of road to a loop of 2.5 km, and back: the stick is run both ways. */
const stick: Place[] = [
  [0, 0],
  [700, 120],
  [1400, -150],
  [2000, 0],
];
const loop: Place[] = Array.from({ length: 41 }, (_, i) => {
  const phi = (2 * Math.PI * i) / 40;
  return [2000 + 400 * (1 - Math.cos(phi)), 400 * Math.sin(phi)];
});
export const lollipop = roadThrough([...stick, ...loop.slice(1), ...stick.slice(0, -1).reverse()]);
/** The track of a stadium, 400 m a lap, and 5 km on it: begun half a lap before the line that is painted for 10 km. */
const ring: Place[] = [
  ...Array.from({ length: 22 }, (_, i): Place => [4 * i, 0]),
  ...Array.from({ length: 40 }, (_, i): Place => {
    const phi = -Math.PI / 2 + (Math.PI * i) / 39;
    return [84.39 + 36.8 * Math.cos(phi), 36.8 + 36.8 * Math.sin(phi)];
  }),
  ...Array.from({ length: 22 }, (_, i): Place => [84 - 4 * i, 73.6]),
  ...Array.from({ length: 40 }, (_, i): Place => {
    const phi = Math.PI / 2 + (Math.PI * i) / 39;
    return [36.8 * Math.cos(phi), 36.8 + 36.8 * Math.sin(phi)];
  }),
];
export const trackLap = roadThrough(ring, 5);
const half = ring.slice(62);
export const track5k = roadThrough(
  [...half, ...Array.from({ length: 12 }, () => ring).flat()].filter(
    (p, i, all) => i === 0 || Math.hypot(p[0] - (all[i - 1]?.[0] ?? 0), p[1] - (all[i - 1]?.[1] ?? 0)) > 0.01,
  ),
  5,
);
