import type { Race } from '../cues/race.ts';
import { hasWater } from '../cues/rules/fuel.ts';
import type { Saying } from '../cues/saying.ts';
import { IMPORTANCE, type Wish } from './wish.ts';

/** As in a live run: a minute ahead, but near enough to be seen soon. */
const WARNING_S = 60;
const NEAREST_M = 200;
const FARTHEST_M = 300;
/** Nearer than this the place announces itself. */
const AT_HAND_M = 60;
/** Earlier than this it would be forgotten again. */
const EARLIEST_M = 600;

/** A call ahead of a place, at the plan's time for it. */
const ahead = (
  { schedule }: Race,
  atM: number,
  importance: number,
  sayingAt: (inM: number) => Saying,
): Wish | null => {
  const latestM = atM - AT_HAND_M;
  if (latestM <= 0) return null;
  const speedMps = 1000 / schedule.paceAtSPerKm(atM);
  const bestM = Math.max(0, atM - Math.min(FARTHEST_M, Math.max(NEAREST_M, WARNING_S * speedMps)));
  return {
    atS: schedule.timeAtS(bestM),
    fromS: schedule.timeAtS(Math.max(0, atM - EARLIEST_M)),
    untilS: schedule.timeAtS(latestM),
    saying: (atS) => sayingAt(Math.round(atM - schedule.distanceAtM(atS))),
    longest: 'long',
    importance,
    atM,
  };
};

/** What the runner carries, and the tables, each a minute ahead by the schedule. */
export const suppliesAhead = (race: Race): Wish[] => [
  ...race.fuel.flatMap(
    ({ atM, item }) =>
      ahead(race, atM, IMPORTANCE.fuel, (inM) => ({
        kind: 'fuel',
        item,
        inM,
        withWater: hasWater(race, atM),
      })) ?? [],
  ),
  ...race.stations.flatMap(
    ({ atM, offers }) =>
      ahead(race, atM, IMPORTANCE.station, (inM) => ({ kind: 'station', offers, inM })) ?? [],
  ),
];
