import { type DoorError, err, ok, type Result } from '../../units/result.ts';

/** A recent result that the runner raced, not jogged. */
export interface RaceResult {
  readonly distanceM: number;
  readonly timeS: number;
  /** Days since that race; null where the runner did not say. */
  readonly daysAgo: number | null;
}

/** Distances that the formulas were made for, with some room: 1 km to 100 km. */
const DISTANCE_M = { least: 1000, most: 100_000 };
/** Average speeds that a runner's result can have: a brisk walk to a little over the 1500 m record (7.28 m/s). */
const SPEED_MPS = { least: 1, most: 7.5 };
const OLDEST_DAYS = 3650;

const refuse = (place: string, expected: string, found: number): Result<never, DoorError> =>
  err({ place, expected, found: String(found) });

/** A result as typed by the runner, made safe for the formulas. `place` names the row in messages: `results[0]`. */
export const parseRaceResult = (
  place: string,
  distanceM: number,
  timeS: number,
  daysAgo: number | null,
): Result<RaceResult, DoorError> => {
  if (!(distanceM >= DISTANCE_M.least && distanceM <= DISTANCE_M.most))
    return refuse(`${place}.distanceM`, 'a race distance between 1 km and 100 km, in metres', distanceM);
  const speedMps = distanceM / timeS;
  if (!(timeS > 0 && speedMps >= SPEED_MPS.least && speedMps <= SPEED_MPS.most))
    return refuse(
      `${place}.timeS`,
      'a time for this distance between 2:14 and 16:40 per km, in seconds',
      timeS,
    );
  if (daysAgo !== null && !(daysAgo >= 0 && daysAgo <= OLDEST_DAYS))
    return refuse(`${place}.daysAgo`, 'days since the race, from 0 to 3650', daysAgo);
  return ok({ distanceM, timeS, daysAgo });
};
