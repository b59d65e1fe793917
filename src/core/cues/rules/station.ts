import { message } from '../../units/message.ts';
import { type Cue, type Found, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import { atHandMs, inMetres, isAtHand } from './ahead.ts';

/**
 * Station ahead. What: what it offers and how far. Why now: a minute before, to move over and slow for it knowingly.
 * Less important than fuel, which is the runner's own plan. True until the tables are in sight. Short: 'water station soon'.
 */
export interface StationWatch {
  readonly next: number;
}

export const beginStations: StationWatch = { next: 0 };

const cueAt = (
  moment: Moment,
  atM: number,
  offers: Moment['race']['stations'][number]['offers'],
  inM: number,
): Cue => ({
  topic: 'station',
  saying: { kind: 'station', offers, inM: Math.round(inM) },
  importance: IMPORTANCE.station,
  manner: 'routine',
  dueMs: moment.nowMs,
  expiresMs: atHandMs(moment, atM),
  onlyShort: false,
  spare: true,
  atM,
  aheadS: null,
  aheadSdS: null,
  distanceM: moment.progress.distanceM,
  why: message('station in {distance} m', { distance: Math.round(inM) }),
});

export const lookForStation = (watch: StationWatch, moment: Moment): Found<StationWatch> | null => {
  const station = moment.race.stations[watch.next];
  if (station === undefined) return null;
  const inM = inMetres(moment, station.atM);
  if (inM === null) return null;
  return {
    watch: { next: watch.next + 1 },
    cue: isAtHand(inM) ? null : cueAt(moment, station.atM, station.offers, inM),
  };
};

/** The same cue some seconds later: the station has come nearer. */
export const stationAgain = (cue: Cue, moment: Moment): Cue | null => {
  if (cue.saying.kind !== 'station' || cue.atM === null) return null;
  const inM = cue.atM - moment.progress.distanceM;
  return isAtHand(inM) ? null : cueAt(moment, cue.atM, cue.saying.offers, inM);
};
