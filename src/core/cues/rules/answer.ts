import type { Progress } from '../../estimate/progress.ts';
import { message } from '../../units/message.ts';
import { answer, type Cue } from '../cue.ts';
import { isReckoned, type Moment } from '../moment.ts';
import type { Race } from '../race.ts';
import { aheadFor, forecastFor } from '../rounding.ts';

/**
 * Answer to `ask`. What: how far, ahead or behind, and where that leads. Why now: the runner asked. Important: it comes
 * at once after the call that sounds; only a checkpoint or the finish that falls into it goes before. True for the few
 * seconds in which a question is still open. Short: the drift alone.
 */
const SHELF_LIFE_MS = 15_000;
/** A projected finish vaguer than this is no answer. */
const MOST_FINISH_SD_S = 150;

/** Before the start there is nothing to be ahead of. */
export const answerBeforeStart = (race: Race, nowMs: number, progress: Progress): Cue =>
  answer(
    { nowMs, progress },
    { kind: 'answer', distanceM: progress.distanceM, unit: race.plan.unit, ahead: null, finishS: null },
    SHELF_LIFE_MS,
    message('asked||why something was said'),
  );

export const answerCue = (moment: Moment): Cue => {
  const { race, nowMs, progress } = moment;
  const drift = moment.drift();
  const finish =
    drift.projectedFinishS !== null && drift.projectedFinishSdS <= MOST_FINISH_SD_S
      ? drift.projectedFinishS
      : null;
  const cue = answerBeforeStart(race, nowMs, progress);
  return {
    ...cue,
    saying: {
      kind: 'answer',
      distanceM: Math.round(progress.distanceM),
      unit: race.plan.unit,
      ahead: aheadFor(drift.aheadS, drift.aheadSdS, isReckoned(moment)),
      finishS: finish === null ? null : forecastFor(finish, drift.projectedFinishSdS),
    },
    aheadS: drift.aheadS,
    aheadSdS: drift.aheadSdS,
  };
};
