/**
 * The course of an invented half marathon in an invented coast town, as a runner would tell the way: each stretch begins
 * with a corner, bends evenly along its length, and ends at a height above the sea.
 */
export interface Stretch {
  readonly name: string;
  readonly lengthM: number;
  /** Degrees turned on the spot before it: right positive. */
  readonly cornerDeg: number;
  /** Degrees bent along it: right positive. */
  readonly bendDeg: number;
  /** Height at its end, metres. */
  readonly toHeightM: number;
}

const stretch = (
  name: string,
  lengthM: number,
  cornerDeg: number,
  bendDeg: number,
  toHeightM: number,
): Stretch => ({
  name,
  lengthM,
  cornerDeg,
  bendDeg,
  toHeightM,
});

/** The same way back: last stretch first, bends the other way, heights as they come. */
const back = (out: readonly Stretch[], startHeightM: number): Stretch[] =>
  out.toReversed().map((s, i, all) => {
    const before = all[i - 1];
    const toHeightM = out[out.length - 2 - i]?.toHeightM ?? startHeightM;
    return { ...s, cornerDeg: before ? -before.cornerDeg : 180, bendDeg: -s.bendDeg, toHeightM };
  });

export const START_HEADING_DEG = 345;
export const START_HEIGHT_M = 4;

const TOWN: readonly Stretch[] = [
  stretch('Customs House Street', 430, 0, 6, 7),
  stretch('Ropewalk', 390, 88, 4, 8),
  stretch('Fish Steps Road', 480, 92, -6, 4),
];

const SEA_FRONT: readonly Stretch[] = [
  stretch('West Parade', 1150, -88, -14, 4),
  stretch('Bandstand', 620, 0, 22, 6),
  stretch('Long Wall', 1500, 0, -18, 4),
  stretch('Lifeboat Road', 900, 14, 24, 9),
];

const HILL: readonly Stretch[] = [
  stretch('Old Quay', 760, 4, 8, 4),
  stretch('Lantern Lane', 520, 74, 10, 18),
  stretch('Lantern Bends', 380, -20, -118, 31),
  stretch('Beacon Road', 640, 0, 36, 51),
  stretch('Beacon Top', 560, 0, -44, 49),
  stretch('Chapel Drop', 620, -70, -20, 26),
  stretch('Drovers’ Turn', 330, 0, -96, 15),
  stretch('Mill Lane', 460, 20, 10, 6),
];

const HEADLAND: readonly Stretch[] = [
  stretch('West Sands', 560, 0, 20, 5),
  stretch('Headland Tunnel', 340, 0, 12, 7),
  stretch('Inner Harbour', 1000, 0, 10, 4),
];

const RIVER: readonly Stretch[] = [
  stretch('Ferry Road', 1900, -86, 18, 9),
  stretch('Upper Bridge', 150, 86, 6, 11),
  stretch('Meadow Bank', 1840, 84, -14, 5),
];

const HOME: readonly Stretch[] = [
  stretch('Shipyard Road', 560, 76, 10, 4),
  stretch('Harbour Mile', 760, 20, 16, 6),
];

/** The course from the start in Customs House Street to the finish on the Harbour Mile. */
export const STREETS: readonly Stretch[] = [
  ...TOWN,
  ...SEA_FRONT,
  ...back(SEA_FRONT, 4),
  ...HILL,
  ...HEADLAND,
  ...RIVER,
  ...HOME,
];
