/** The base vocabulary. Every quantity that crosses a file carries its unit in its name: `distanceM`, `elapsedS`, `paceSPerKm`. */

export const M_PER_KM = 1000;
/** International yard and pound agreement, 1 July 1959: a mile is 1760 yards of exactly 0.9144 m. */
export const M_PER_MILE = 1609.344;

/** How distances and paces are said and shown; inside, everything is metres and seconds. */
export type DistanceUnit = 'km' | 'mile';

/** Length of one unit in metres. */
export const metresPer = (unit: DistanceUnit): number => (unit === 'km' ? M_PER_KM : M_PER_MILE);

/** Pace in seconds per kilometre, said in the given unit: seconds per kilometre or seconds per mile. */
export const pacePer = (unit: DistanceUnit, paceSPerKm: number): number =>
  (paceSPerKm * metresPer(unit)) / M_PER_KM;
