import { evenShareAt, pacerHeading } from '../../plan/pacer.ts';
import { adviceFor } from '../../plan/pacerAdvice.ts';
import { message } from '../../units/message.ts';
import { answer, type Cue } from '../cue.ts';
import { isReckoned, type Moment } from '../moment.ts';
import { aheadFor, forecastFor } from '../rounding.ts';

/**
 * Level with the pacer. What: the finish that they are heading for, on the runner's clock and by the gun, how far off
 * their flag, and whether to go with them. Why now: the runner pressed beside them. Important like an answer, for it is
 * one. True for the few seconds in which the question is open. Short: their finish and what to do.
 */
const SHELF_LIFE_MS = 15_000;
/** Before this much of the race nothing can be told. */
const LEAST_M = 500;

/** The answer to 'level with the pacer now'. `gunMs`: when the gun was heard; null where it was not. */
export const pacerCue = (moment: Moment, gunMs: number | null): Cue => {
  const { race, progress, nowMs, startMs } = moment;
  const { plan } = race;
  const { pacer } = plan;
  if (pacer === undefined)
    return answer(moment, { kind: 'noPacer' }, SHELF_LIFE_MS, message('level, but the plan has no pacer'));
  const lineAfterGunS = gunMs === null ? null : Math.max(0, (startMs - gunMs) / 1000);
  const heading = pacerHeading(
    {
      ownS: (nowMs - startMs) / 1000,
      lineAfterGunS,
      distanceM: Math.max(LEAST_M, progress.distanceM),
      distanceSdM: progress.distanceSdM,
    },
    { shareAt: evenShareAt(plan, race.schedule), pacerLeadS: null },
    pacer,
  );
  const advice = progress.distanceM < LEAST_M ? 'unsure' : adviceFor(heading, plan.goalS, plan.goalBy);
  return answer(
    moment,
    {
      kind: 'pacer',
      gunS: gunMs === null ? null : forecastFor(heading.gun.s, heading.gun.sdS),
      ownS: forecastFor(heading.runnerOwn.s, heading.runnerOwn.sdS),
      // Quicker than the flag is up.
      flag: aheadFor(-heading.offFlag.s, heading.offFlag.sdS, isReckoned(moment)),
      advice,
    },
    SHELF_LIFE_MS,
    message('level with the pacer'),
  );
};
