import type { Departure, Evidence } from '../../drift/departure.ts';
import { paceReason } from '../../drift/reason.ts';
import { isSized, type Size, type SpeedNow, sizeOf } from '../../drift/size.ts';
import type { Message } from '../../units/message.ts';
import { M_PER_KM, metresPer } from '../../units/units.ts';
import { crossingMs } from '../crossing.ts';
import { type Cue, IMPORTANCE } from '../cue.ts';
import { isReckoned, isSeen, type Moment } from '../moment.ts';
import { aheadFor, byFor } from '../rounding.ts';
import type { Saying } from '../saying.ts';

/**
 * Ease and quicken. What: too quick or too slow, by how much, and where that has led. Why now: the departure is real (a
 * sequential test, core/drift/departure.ts) and can still be mended cheaply. Important: the one cue that asks for an act
 * at once. True for as long as the departure lasts. Short: without the drift.
 *
 * Then silence about pace for SILENT_MS unless it gets worse, and no word again until it changes; but who simply goes on is
 * told once more when that has put them DEAR_S behind (or, too quick, ahead) that were not there before: four minutes after
 * the first word at the earliest, then eight. Then nothing: a coach by the road says it again when it has begun to cost,
 * not each lap, and not to somebody who has heard it three times. It adds a word in a race of 10 km in our mixed field,
 * where nobody ever answers (`npm run bench -- pacing`). Not where it is too little to mind (LEAST_S_PER_KM), nor where a slowing
 * has its own reason: at a station, in the crowd behind the start, walking or standing. Hills are in the schedule.
 * In the opening, too quick is said as such. Whoever is late may be quicker, and whoever has time in hand slower, by
 * what that is worth over the rest; the size is what goes beyond that.
 */
export interface PaceWatch {
  /** When an ease or quicken was last said. */
  readonly saidMs: number;
  /** Evidence counts from here: behind a change of target the runner needs a moment to find it. */
  readonly fromMs: number;
}

/** How long a runner takes to find a new pace, and the estimate to see it. */
const NEW_TARGET_MS = 20_000;
export const SILENT_MS = 30_000;
const SHELF_LIFE_MS = 25_000;
/** Behind the start everybody runs as they can, and the estimate is finding its feet. */
const FREE_M = 150;
const FREE_S = 60;
/** In the field that spreads out, slow is the crowd's doing for longer. */
const CROWD_M = 400;
/**
 * Without a line a speed errs for longer at a time than its deviation tells: in 10 races of 10 km a truly even runner was
 * called 1.2 times each at 1, 0.8 times at 1.05 and 0.5 times at 1.1; a change of 6 s/km in town took 64, 104 and 116 s.
 */
const FREE_DOUBT = 1.05;
/** Where the plan has no opening, the first part in which most are too quick. */
const FIRST_M = 1500;
/** Tables slow everybody: from before the first to behind the last. */
const STATION_BEFORE_M = 30;
const STATION_BEHIND_M = 100;
/** So near the line nobody eases, and nobody needs to be told to quicken. */
const NO_EASE_M = 1000;
const NO_QUICKEN_M = 300;
/** Below this share of the planned speed the runner walks or stands, and knows it. */
const WALKING = 0.5;
/** A slowing larger than this is no lapse of pace: a word would only nag. */
const TIRED = 0.2;
/** A change of target this near makes the word pointless. */
const SOON_MS = 15_000;
/** At most this is asked or forgiven for what was lost or won, as a share of the pace. */
const WELCOME_MOST = 0.1;

/** A departure that goes on is worth one more word when it has cost this since the last: 11 s of a half in 1:44. */
const DEAR_S = 6;
const DEAR_SHARE = 0.0018;

/** Below this the best guess at its size is no more than anybody's wavering, and a word for nothing one time in three. */
const LEAST_S_PER_KM = 4.5;

export const beginPace: PaceWatch = {
  saidMs: Number.NEGATIVE_INFINITY,
  fromMs: Number.NEGATIVE_INFINITY,
};

const nearStation = ({ race, progress }: Moment): boolean =>
  race.stations.some(
    ({ atM }) => progress.distanceM > atM - STATION_BEFORE_M && progress.distanceM < atM + STATION_BEHIND_M,
  );

/** The runner's speed now as a share of the plan's, and what is welcome of it. */
const speedNow = ({ race, progress, aheadS, aheadSdS }: Moment): SpeedNow => {
  const paceSPerKm = race.schedule.paceAtSPerKm(progress.distanceM);
  const restS = Math.max(1, race.totalS - race.schedule.timeAtS(progress.distanceM));
  const surely = Math.min(WELCOME_MOST, Math.max(0, Math.abs(aheadS) - 2 * aheadSdS) / restS);
  return {
    rate: (paceSPerKm / M_PER_KM) * progress.speedMps,
    speedSdMps: progress.speedSdMps * (race.byPresses ? FREE_DOUBT : 1),
    paceSPerKm,
    quickIsFine: aheadS < 0 ? surely : 0,
    slowIsFine: aheadS > 0 ? surely : 0,
  };
};

/**
 * What this stretch of running tells about pace; null where it tells nothing.
 * @param slowIsFine share of the pace that the runner is let off (a push that was not offered)
 */
export const paceEvidence = (
  watch: PaceWatch,
  moment: Moment,
  dtS: number,
  slowIsFine: number,
): Evidence | null => {
  const { race, progress } = moment;
  if (moment.nowMs < Math.max(watch.fromMs, moment.startMs + FREE_S * 1000)) return null;
  const now = speedNow(moment);
  if (progress.distanceM < FREE_M || !isSeen(moment) || now.rate < WALKING || nearStation(moment))
    return null;
  return {
    ...now,
    dtS,
    slowIsFine: now.slowIsFine + slowIsFine,
    stake: { aheadS: moment.aheadS, dearS: Math.max(DEAR_S, DEAR_SHARE * race.plan.goalS) },
    quickIsLikely: !race.byPresses && progress.distanceM < (race.plan.opening?.untilM ?? FIRST_M),
  };
};

/** A new target begins: nothing counts until the runner has had time to find it. */
export const findNewTarget = (watch: PaceWatch, nowMs: number): PaceWatch => ({
  ...watch,
  fromMs: nowMs + NEW_TARGET_MS,
});

/** The side on which a departure is found that may be spoken of now. */
export const departedSide = (watch: PaceWatch, moment: Moment): 'quick' | 'slow' | null => {
  const { departure, nowMs, progress, race } = moment;
  const { quick, slow, told } = departure;
  const side = quick.found ? 'quick' : slow.found ? 'slow' : null;
  if (side === null) return null;
  const now = speedNow(moment);
  if (!isSized(now, (nowMs - moment.startMs) / 1000, !race.byPresses)) return null;
  if (sizeOf(side, now).sPerKm < LEAST_S_PER_KM) return null;
  const isWorse = side === 'quick' ? told > 0 : told < 0;
  if (nowMs < watch.saidMs + SILENT_MS && !isWorse) return null;
  const restM = race.plan.distanceM - progress.distanceM;
  if (restM < (side === 'quick' ? NO_EASE_M : NO_QUICKEN_M)) return null;
  const { opening, push } = race.plan;
  // Who pushes from behind is not held back.
  if (side === 'quick' && push !== null && progress.distanceM >= push.fromM && moment.aheadS < 0) return null;
  if (side === 'slow' && (progress.distanceM < CROWD_M || slow.mean > TIRED)) return null;
  for (const placeM of [opening?.untilM, push?.fromM])
    if (placeM !== undefined && placeM > progress.distanceM && crossingMs(moment, placeM) < nowMs + SOON_MS)
      return null;
  return side;
};

const sayingOf = (moment: Moment, side: 'quick' | 'slow', byS: number): Saying => {
  const { race, progress, aheadS, aheadSdS } = moment;
  const { opening, unit } = race.plan;
  if (side === 'quick' && opening !== null && progress.distanceM < opening.untilM)
    return { kind: 'opening', what: 'tooQuick', byS, unit };
  return {
    kind: side === 'quick' ? 'ease' : 'quicken',
    byS,
    unit,
    ahead: aheadFor(aheadS, aheadSdS, isReckoned(moment)),
  };
};

const cueOf = (moment: Moment, saying: Saying, why: Message): Cue => ({
  topic: saying.kind === 'opening' ? 'tooQuick' : saying.kind === 'ease' ? 'ease' : 'quicken',
  saying,
  importance: IMPORTANCE.pace,
  manner: 'routine',
  dueMs: moment.nowMs,
  expiresMs: moment.nowMs + SHELF_LIFE_MS,
  onlyShort: false,
  spare: false,
  atM: null,
  aheadS: moment.aheadS,
  aheadSdS: moment.aheadSdS,
  distanceM: moment.progress.distanceM,
  why,
});

/** What is said of a size in the plan's unit. */
const byOf = ({ race }: Moment, { sPerKm, sdSPerKm }: Size): number => {
  const perUnit = metresPer(race.plan.unit) / M_PER_KM;
  return byFor(sPerKm * perUnit, sdSPerKm * perUnit);
};

export const paceCue = (moment: Moment, side: 'quick' | 'slow'): Cue => {
  const { departure } = moment;
  const now = speedNow(moment);
  const size = sizeOf(side, now);
  const why = paceReason(side, { forS: departure[side].forS, mean: size.sPerKm / now.paceSPerKm });
  return cueOf(moment, sayingOf(moment, side, byOf(moment, size)), why);
};

/** The same cue some seconds later; null where the runner has come back meanwhile. */
export const paceAgain = (cue: Cue, moment: Moment, departure: Departure): Cue | null => {
  if (departure.told === 0) return null;
  const { saying } = cue;
  if (!('byS' in saying)) return cue;
  const side = saying.kind === 'quicken' ? 'slow' : 'quick';
  const now = speedNow(moment);
  const size = isSeen(moment) ? sizeOf(side, now) : null;
  if (size !== null && size.seenSPerKm < 0) return null;
  const again = { ...saying, ...(size && { byS: byOf(moment, size) }) };
  const ahead = aheadFor(moment.aheadS, moment.aheadSdS, isReckoned(moment));
  return {
    ...cueOf(moment, again.kind === 'opening' ? again : { ...again, ahead }, cue.why),
    expiresMs: cue.expiresMs,
  };
};
