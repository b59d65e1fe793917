import { type CourseLine, type LinePoint, measureLine } from '../../src/core/course/line.ts';
import { planeAt, pointOn } from '../../src/core/geo/ruler.ts';
import type { PracticeCourse } from '../../src/core/plan/practiceCourse.ts';
import { chanceOf } from '../../src/core/units/chance.ts';

type Place = readonly [eastM: number, northM: number];

const NOWHERE = { latitudeDeg: 54.4, longitudeDeg: 6.2 };
const PIECE_M = 10;
/** A round through streets: so many of them, so far from its middle. */
const STREETS = 11;
const RADIUS_M = 480;
/** As in a course file that somebody recorded: see courses.ts. */
const RECORDED_EVERY = 2;
const RECORDED_SD_M = 1.5;

/** Streets with corners between them, back to where they began; a point every ten metres. */
const loopPlaces = (seed: number): Place[] => {
  const chance = chanceOf(seed);
  const corners = Array.from({ length: STREETS }, (_, i): Place => {
    const phi = (2 * Math.PI * (i + 0.5 * chance.uniform())) / STREETS;
    const r = RADIUS_M * (0.65 + 0.7 * chance.uniform());
    return [r * Math.cos(phi), r * Math.sin(phi)];
  });
  return corners.flatMap(([e, n], i) => {
    const [e2, n2] = corners[(i + 1) % STREETS] as Place;
    const pieces = Math.ceil(Math.hypot(e2 - e, n2 - n) / PIECE_M);
    return Array.from(
      { length: pieces },
      (_, k): Place => [e + ((e2 - e) * k) / pieces, n + ((n2 - n) * k) / pieces],
    );
  });
};

const ground = ([e, n]: Place): LinePoint => ({
  ...pointOn(planeAt(NOWHERE), e, n),
  elevationM: null,
});

/** The same round begun at another of its points, and run the other way every second time. */
const turned = <T>(ring: readonly T[], seed: number): T[] => {
  const from = Math.floor(ring.length * chanceOf(seed + 17).uniform());
  const round = [...ring.slice(from), ...ring.slice(0, from)];
  return seed % 2 === 0 ? round : round.reverse();
};

/**
 * A round of some three kilometres that the runner knows: the road as it is, run again and again from somewhere on it,
 * in either direction; and the course as one lap was recorded, with its shake.
 */
export const knownLoop = (
  seed: number,
  leastM: number,
): { readonly road: CourseLine; readonly course: PracticeCourse } => {
  const ring = loopPlaces(seed);
  const lap = turned(ring, seed);
  const lapM = lap.reduce((sum, [e, n], i) => {
    const [e2, n2] = lap[(i + 1) % lap.length] as Place;
    return sum + Math.hypot(e2 - e, n2 - n);
  }, 0);
  const laps = Math.ceil(leastM / lapM);
  const places = Array.from({ length: laps }, () => lap).flat();
  const road = measureLine([...places, lap[0] as Place].map(ground), laps * lapM);
  if (!road) throw new Error('the bench made a loop without length');
  const chance = chanceOf(seed + 0.3e9);
  const points = [...ring, ring[0] as Place]
    .filter((_, i) => i % RECORDED_EVERY === 0 || i === ring.length)
    .map(([e, n]) => ground([e + RECORDED_SD_M * chance.normal(), n + RECORDED_SD_M * chance.normal()]));
  return { road, course: { name: 'Round the harbour', points, lengthM: null } };
};
