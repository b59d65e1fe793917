import { passesOfPoint } from '../../core/course/gpxPlaces.ts';
import type { GpxPoint } from '../../core/course/gpxTypes.ts';
import type { CourseLine } from '../../core/course/line.ts';
import type { Offer } from '../../core/plan/supplies.ts';

export interface FoundStation {
  readonly atM: number;
  readonly offers: readonly Offer[];
}

/** A waypoint farther aside than this is not on the course. */
const ASIDE_MOST_M = 80;

/** Words of organisers, in the languages that files come in; the first that fits decides. */
const OFFERED: readonly (readonly [RegExp, readonly Offer[]])[] = [
  [/sponge|schwamm|éponge|esponja/i, ['sponge']],
  [/gel\b/i, ['gel', 'water']],
  [/food|feed|verpfleg|ravito|avitua|ristoro|aid/i, ['water', 'drink', 'food']],
  [/iso|drink|refresh|boisson/i, ['water', 'drink']],
  [/water|wasser|\beau\b|agua|acqua|vand|vatten|wody/i, ['water']],
];

/** Waypoints that name something to drink or eat, as stations along the line; each pass of the course is one. */
export const stationsOf = (waypoints: readonly GpxPoint[], line: CourseLine): readonly FoundStation[] =>
  waypoints
    .flatMap((point) => {
      const offers = OFFERED.find(([pattern]) => pattern.test(point.name ?? ''))?.[1];
      if (offers === undefined) return [];
      return passesOfPoint(line, point)
        .filter((pass) => pass.asideM <= ASIDE_MOST_M)
        .map((pass) => ({ atM: Math.round(pass.alongM), offers }));
    })
    .sort((a, b) => a.atM - b.atM);
