import type { Pacer, RacePlan } from './racePlan.ts';
import { levelTimeS, type Schedule } from './schedule.ts';

/** The press: level with the pacer now. */
export interface LevelWithPacer {
  /** The runner's own clock at the press, seconds. */
  readonly ownS: number;
  /** How long after the gun the runner crossed the line, seconds, 0 or more; null where the gun was not heard. */
  readonly lineAfterGunS: number | null;
  readonly distanceM: number;
  readonly distanceSdM: number;
}

/** What is known of the race and of the pacer's start. */
export interface PacerRace {
  /**
   * Share of an even-effort time that lies before a place, above 0, to 1 at the finish: of a schedule without opening and
   * push, so that hills count.
   */
  readonly shareAt: (distanceM: number) => number;
  /** How long before the runner the pacer crossed the line, seconds; 0 if side by side; null where nobody saw. */
  readonly pacerLeadS: number | null;
}

/** A time with its standard deviation, seconds. */
export interface Estimated {
  readonly s: number;
  readonly sdS: number;
}

/** Where the pacer is heading. */
export interface PacerHeading {
  /** Finish by the gun. */
  readonly gun: Estimated;
  /** Finish by the runner's own clock if the two stay level to the line. */
  readonly runnerOwn: Estimated;
  /** Against the flag by the clock that the pacer runs by: above 0 is slower than the flag. */
  readonly offFlag: Estimated;
}

/** A press is late or early by about a second, and level means within a few metres. */
const PRESS_SD_S = 1;
/** Who runs by a clock still strays from it: the rest of the race is only this sure, as a part of its time (judgement). */
const REST_SD_PART = 0.005;
/** The gun not heard: the runner's crossing after it lies evenly within this, seconds (judgement: a mid-sized race). */
const UNKNOWN_LINE_MOST_S = 180;

/** Means, variances and covariance of the two things that may not be known: line after gun, and the pacer's lead. */
const startOf = (lineAfterGunS: number | null, pacerLeadS: number | null) => {
  // Of an even spread from 0 to m: mean m/2, mean square m^2/3.
  const line = lineAfterGunS ?? UNKNOWN_LINE_MOST_S / 2;
  const lineSquare = lineAfterGunS === null ? UNKNOWN_LINE_MOST_S ** 2 / 3 : line * line;
  // Pacers stand in front: a lead that nobody saw is an even part of the runner's own way to the line.
  const lead = pacerLeadS ?? line / 2;
  const leadSquare = pacerLeadS === null ? lineSquare / 3 : lead * lead;
  const product = pacerLeadS === null ? lineSquare / 2 : line * lead;
  return {
    line,
    lead,
    lineVar: lineSquare - line * line,
    leadVar: leadSquare - lead * lead,
    cov: product - line * lead,
  };
};

/**
 * A pacer who goes on as they have begun. With own = the runner's clock at the press, q = the pacer's lead over the line,
 * l = the runner's line after the gun and p = the share of the course behind them:
 *
 *   pacer's own finish = (own + q) / p;   gun finish = l - q + (own + q) / p;   runner's own = gun finish - l
 *
 * Errors by first-order propagation: each unknown's slope times its standard deviation.
 */
export const pacerHeading = (press: LevelWithPacer, race: PacerRace, pacer: Pacer): PacerHeading => {
  const { line, lead, lineVar, leadVar, cov } = startOf(press.lineAfterGunS, race.pacerLeadS);
  const p = race.shareAt(press.distanceM);
  const pacerOwnS = (press.ownS + lead) / p;
  const gunS = line - lead + pacerOwnS;
  const placeSdS = (press.distanceSdM * pacerOwnS) / press.distanceM;
  const roadVar = placeSdS ** 2 + (PRESS_SD_S / p) ** 2 + (REST_SD_PART * pacerOwnS * (1 - p)) ** 2;
  const leadSlope = 1 / p - 1;
  const gunSdS = Math.sqrt(roadVar + lineVar + leadSlope ** 2 * leadVar + 2 * leadSlope * cov);
  const pacerOwnSdS = Math.sqrt(roadVar + leadVar / p ** 2);
  return {
    gun: { s: gunS, sdS: gunSdS },
    runnerOwn: { s: gunS - line, sdS: Math.sqrt(roadVar + leadSlope ** 2 * leadVar) },
    offFlag:
      pacer.by === 'gun'
        ? { s: gunS - pacer.flagS, sdS: gunSdS }
        : { s: pacerOwnS - pacer.flagS, sdS: pacerOwnSdS },
  };
};

/** Share of an even-effort time that lies before a place: the plan's schedule with its opening and push taken out. */
export const evenShareAt =
  (plan: RacePlan, schedule: Schedule) =>
  (distanceM: number): number => {
    const evenPaceS = plan.goalS / plan.distanceM;
    const evenS = (m: number): number => schedule.timeAtS(m) + evenPaceS * m - levelTimeS(plan, m);
    return evenS(distanceM) / evenS(plan.distanceM);
  };
