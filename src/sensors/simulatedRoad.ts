import { type CourseLine, type LinePoint, measureLine } from '../core/course/line.ts';
import { planeAt, pointOn } from '../core/geo/ruler.ts';
import { chanceOf } from '../core/units/chance.ts';

/** In the middle of the North Sea. */
const BEGIN = { latitudeDeg: 55.6, longitudeDeg: 4.2 };
const MIN_LEG_M = 80;
const MORE_LEG_M = 420;
/** A point every so often, as a recording of the road would have. */
const PIECE_M = 10;
/** Of the joints of two streets: how many are corners, and how sharp. */
const CORNERS = 0.45;
const CORNER_RAD = 1.2;
const CORNER_MORE_RAD = 0.7;
const BEND_RAD = 0.25;

/** A road of any length for a plan that has no course: straight streets, some corners, flat. True to scale. */
export const roadOf = (distanceM: number, seed: number): CourseLine => {
  const chance = chanceOf(seed);
  const plane = planeAt(BEGIN);
  const points: LinePoint[] = [{ ...BEGIN, elevationM: null }];
  let east = 0;
  let north = 0;
  let heading = chance.uniform() * 2 * Math.PI;
  for (let m = 0; m < distanceM; ) {
    const legM = Math.min(MIN_LEG_M + MORE_LEG_M * chance.uniform(), distanceM - m);
    const pieces = Math.ceil(legM / PIECE_M);
    for (let i = 0; i < pieces; i++) {
      east += (legM / pieces) * Math.sin(heading);
      north += (legM / pieces) * Math.cos(heading);
      points.push({ ...pointOn(plane, east, north), elevationM: null });
    }
    m += legM;
    const corner = (chance.uniform() < 0.5 ? 1 : -1) * (CORNER_RAD + CORNER_MORE_RAD * chance.uniform());
    heading += chance.uniform() < CORNERS ? corner : BEND_RAD * chance.normal();
  }
  const line = measureLine(points, distanceM);
  if (!line) throw new Error(`no road of ${distanceM} m`);
  return line;
};
