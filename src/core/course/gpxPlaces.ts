import { eastM, type LatLon, northM } from '../geo/ruler.ts';
import type { CourseLine } from './line.ts';

/** A pass of the line by a point aside of it. */
export interface Pass {
  readonly alongM: number;
  /** How far aside the point lies, metres. */
  readonly asideM: number;
}

/** Two passes nearer along the line than this are one. */
const APART_M = 150;
/** A pass this much farther aside than the nearest is another street. */
const MUCH_FARTHER_M = 40;

/** The nearest place on each leg, then the best of each stretch. */
const passesAt = (line: CourseLine, east: number, north: number): Pass[] => {
  const passes: Pass[] = [];
  for (let i = 0; i + 1 < line.alongM.length; i++) {
    const [e0, n0] = [line.eastM[i] as number, line.northM[i] as number];
    const de = (line.eastM[i + 1] as number) - e0;
    const dn = (line.northM[i + 1] as number) - n0;
    const lengthM2 = de * de + dn * dn;
    const part =
      lengthM2 > 0 ? Math.min(1, Math.max(0, ((east - e0) * de + (north - n0) * dn) / lengthM2)) : 0;
    const from = line.alongM[i] as number;
    passes.push({
      alongM: from + part * ((line.alongM[i + 1] as number) - from),
      asideM: Math.hypot(east - e0 - part * de, north - n0 - part * dn),
    });
  }
  return passes.sort((a, b) => a.asideM - b.asideM || a.alongM - b.alongM);
};

/**
 * Where a line passes a place, nearest first: a course that comes by twice gives two. East and north in metres on the
 * line's own plane.
 */
export const passesOf = (line: CourseLine, east: number, north: number): readonly Pass[] => {
  const all = passesAt(line, east, north);
  const nearestM = all[0]?.asideM ?? 0;
  const kept: Pass[] = [];
  for (const pass of all) {
    if (pass.asideM > nearestM + MUCH_FARTHER_M) break;
    if (kept.every((k) => Math.abs(k.alongM - pass.alongM) > APART_M)) kept.push(pass);
  }
  return kept;
};

/** The passes of a point on the ground. */
export const passesOfPoint = (line: CourseLine, at: LatLon): readonly Pass[] =>
  passesOf(line, eastM(line.plane, at), northM(line.plane, at));
