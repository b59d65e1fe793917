import { type CourseLine, type LinePoint, measureLine } from '../core/course/line.ts';
import { planeAt, pointOn } from '../core/geo/ruler.ts';
import { START_HEADING_DEG, START_HEIGHT_M, STREETS, type Stretch } from './streets.ts';

export const DEMO_DISTANCE_M = 21_097.5;

/** In the middle of the North Sea: nobody's town. */
const HARBOUR = { latitudeDeg: 55.31, longitudeDeg: 5.02 };
/** Longest straight piece of a bend, metres; a real course file is about as fine. */
const PIECE_M = 20;
const RAD = Math.PI / 180;

/** Walks the stretches; one point every PIECE_M, corners and ends exactly. */
const walk = (stretches: readonly Stretch[], scale: number): LinePoint[] => {
  const plane = planeAt(HARBOUR);
  let east = 0;
  let north = 0;
  let heading = START_HEADING_DEG;
  let height = START_HEIGHT_M;
  const points: LinePoint[] = [{ ...HARBOUR, elevationM: height }];
  for (const s of stretches) {
    heading += s.cornerDeg;
    const pieces = Math.ceil(s.lengthM / PIECE_M);
    const pieceM = (s.lengthM * scale) / pieces;
    const fromHeight = height;
    for (let i = 0; i < pieces; i++) {
      // Half the bend before the piece and half after it: the way back is then the same line.
      heading += s.bendDeg / pieces / 2;
      east += pieceM * Math.sin(heading * RAD);
      north += pieceM * Math.cos(heading * RAD);
      heading += s.bendDeg / pieces / 2;
      // Slopes begin and end softly.
      const k = (1 - Math.cos((Math.PI * (i + 1)) / pieces)) / 2;
      height = fromHeight + k * (s.toHeightM - fromHeight);
      points.push({ ...pointOn(plane, east, north), elevationM: height });
    }
  }
  return points;
};

const lengthM = STREETS.reduce((sum, s) => sum + s.lengthM, 0);

/** The demo course as a line, true to scale: its stretches add up to the official distance. */
export const demoCourse = (): CourseLine => {
  const line = measureLine(walk(STREETS, DEMO_DISTANCE_M / lengthM), DEMO_DISTANCE_M);
  if (!line) throw new Error('the demo course has no length');
  return line;
};

/** Where a stretch begins and ends, metres along the course; the first of that name. */
export const stretchM = (name: string): { readonly fromM: number; readonly toM: number } => {
  let m = 0;
  for (const s of STREETS) {
    const toM = m + (s.lengthM * DEMO_DISTANCE_M) / lengthM;
    if (s.name === name) return { fromM: m, toM };
    m = toM;
  }
  throw new Error(`no stretch ${name}`);
};
