import { eastM, legM, northM, planeAt } from '../geo/ruler.ts';
import type { LinePoint } from './line.ts';
import { lengthM } from './runs.ts';
import { straighten } from './straighten.ts';
import { tidy } from './tidy.ts';

/** A lap's ends lie this close together, or within this share of its length. */
const CLOSED_M = 80;
const CLOSED_SHARE = 0.02;
/**
 * The official distance is this near to a whole number of laps, or laps and a half: by so much a recording is off once its
 * shake is taken out.
 */
const WHOLE_SHARE = 0.02;
/** Between those a part of a lap is run as the recording measures it; less than this much more is a line too short. */
const LEAST_LAPS = 1.1;
const MOST_LAPS = 60;
/** A closed line with legs longer than this on average is a sketch: how often it goes round cannot be told from it. */
const SKETCH_LEG_M = 60;

/** What a line measures once spikes and shake are taken out. */
const straightM = (points: readonly LinePoint[], first: LinePoint): number => {
  const plane = planeAt(first);
  const kept = tidy(points);
  return lengthM(
    straighten({
      eastM: Float64Array.from(kept, (p) => eastM(plane, p)),
      northM: Float64Array.from(kept, (p) => northM(plane, p)),
    }),
  );
};

/**
 * How often a race goes round the line of one lap: a whole number, a half more (12.5 laps of a track are 5 km), else any
 * number. 1 where the line is no lap, or the race is one.
 */
export const lapsIn = (points: readonly LinePoint[], recordedM: number, officialM: number): number => {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last || !(recordedM > 0)) return 1;
  const roughly = officialM / recordedM;
  if (roughly < LEAST_LAPS || roughly > MOST_LAPS + 0.5) return 1;
  if (legM(first, last) >= Math.max(CLOSED_M, CLOSED_SHARE * recordedM)) return 1;
  // Shake makes a lap longer by up to a few per cent, in every lap.
  const times = officialM / straightM(points, first);
  const half = Math.round(2 * times) / 2;
  if (half >= 1.5 && Math.abs(times / half - 1) <= WHOLE_SHARE) return half;
  return recordedM / points.length > SKETCH_LEG_M ? 1 : times;
};

/** The first part of a lap: up to a share of its recorded length. */
const partOf = (points: readonly LinePoint[], recordedM: number, share: number): LinePoint[] => {
  const part: LinePoint[] = [];
  let alongM = 0;
  for (const [i, p] of points.entries()) {
    const before = points[i - 1];
    if (!before) {
      part.push(p);
      continue;
    }
    const stepM = legM(before, p);
    const left = share * recordedM - alongM;
    if (stepM < left || stepM === 0) part.push(p);
    else {
      const k = left / stepM;
      const between = (a: number, b: number): number => a + k * (b - a);
      const elevationM =
        before.elevationM === null || p.elevationM === null ? null : between(before.elevationM, p.elevationM);
      // Over the date line a leg is short and the longitudes far apart: the point as it is will do.
      const wraps = Math.abs(p.longitudeDeg - before.longitudeDeg) > 180;
      part.push({
        latitudeDeg: between(before.latitudeDeg, p.latitudeDeg),
        longitudeDeg: wraps ? p.longitudeDeg : between(before.longitudeDeg, p.longitudeDeg),
        elevationM,
      });
      return part;
    }
    alongM += stepM;
  }
  return part;
};

/** The line of one lap, for a race of several: run over again so often. */
export const unrollLaps = (
  points: readonly LinePoint[],
  recordedM: number,
  laps: number,
): readonly LinePoint[] => {
  if (laps === 1) return points;
  const whole = Math.floor(laps);
  const again = points.slice(1);
  return [
    points,
    ...Array.from({ length: whole - 1 }, () => again),
    ...(laps > whole ? [partOf(points, recordedM, laps - whole).slice(1)] : []),
  ].flat();
};
