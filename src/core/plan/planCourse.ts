import type { LinePoint } from '../course/line.ts';
import { ok } from '../units/result.ts';
import { fields, listOf, numberThat, orElse, type Read, refuse } from './shape.ts';

/** A course of 42 km with a point every 3 m. */
const MAX_POINTS = 15_000;

const latitude = numberThat('degrees of latitude, -90 to 90', (n) => Math.abs(n) <= 90);
const longitude = numberThat('degrees of longitude, -180 to 180', (n) => Math.abs(n) <= 180);
const elevation = orElse(
  numberThat('metres of height, -500 to 9000', (n) => n >= -500 && n <= 9000),
  null,
);

/** `[latitude, longitude]` or `[latitude, longitude, height]`. */
const point: Read<LinePoint> = (found, place) => {
  if (!Array.isArray(found) || found.length < 2)
    return refuse(place, '[latitude, longitude, height?]', found);
  const lat = latitude(found[0], `${place}[0]`);
  if (!lat.ok) return lat;
  const lon = longitude(found[1], `${place}[1]`);
  if (!lon.ok) return lon;
  const ele = elevation(found[2], `${place}[2]`);
  return ele.ok ? ok({ latitudeDeg: lat.value, longitudeDeg: lon.value, elevationM: ele.value }) : ele;
};

/** The plan's own course, a field of ours: `"course": { "points": [[54.1, 7.3, 12], …] }`, in order of running. */
export const planCourse: Read<readonly LinePoint[] | null> = orElse((found, place) => {
  const got = fields({ points: listOf(point, MAX_POINTS) })(found, place);
  if (!got.ok) return got;
  const { points } = got.value;
  return points.length > 1 ? ok(points) : refuse(`${place}.points`, 'two points or more', points);
}, null);
