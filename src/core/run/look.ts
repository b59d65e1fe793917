import type { Found } from '../cues/cue.ts';
import { isSeen, type Moment } from '../cues/moment.ts';
import { lookForCheckpoint } from '../cues/rules/checkpoint.ts';
import { lookForDue, lookForPressByClock } from '../cues/rules/due.ts';
import { finishCue, lookForFinish } from '../cues/rules/finish.ts';
import { lookForFuel } from '../cues/rules/fuel.ts';
import { lookForMarker } from '../cues/rules/marker.ts';
import { lookForOpening } from '../cues/rules/opening.ts';
import { departedSide, findNewTarget, paceCue, paceEvidence } from '../cues/rules/pace.ts';
import { letOff, lookForPush } from '../cues/rules/push.ts';
import { rivalCue } from '../cues/rules/rival.ts';
import { lookForSettle } from '../cues/rules/settle.ts';
import { LOST_AFTER_S, lookForSignal } from '../cues/rules/signal.ts';
import { lookForStation } from '../cues/rules/station.ts';
import { follow, newTarget, rest, tell } from '../drift/departure.ts';
import { keepOn, seenRate } from '../drift/keeping.ts';
import { type Draft, isQuiet, letSpeak, momentOf, offerTo } from './draft.ts';
import type { Watch } from './watch.ts';

/** Keeps what a rule found; its cue, if any, joins those that wait. */
const keep = <K extends keyof Watch>(
  draft: Draft,
  name: K,
  found: Found<Watch[K]> | null,
  nowMs: number,
): void => {
  if (found === null) return;
  draft.watch = { ...draft.watch, [name]: found.watch };
  offerTo(draft, found.cue, nowMs);
};

/** The run is over: what stood before the line and the line itself are left to say. */
export const finish = (draft: Draft, moment: Moment, atMs: number): void => {
  draft.finishMs = atMs;
  draft.speech = {
    ...draft.speech,
    waiting: draft.speech.waiting.filter((cue) => cue.topic === 'checkpoint'),
  };
  offerTo(draft, finishCue(moment, atMs), moment.nowMs);
};

/** A press while there is nothing to go by but the clock. */
export const lookAtPressByClock = (draft: Draft, moment: Moment): void =>
  keep(draft, 'due', lookForPressByClock(draft.watch.due, moment), moment.nowMs);

/** Marks on the course that are called as they are crossed. */
export const lookAtMarks = (draft: Draft, moment: Moment): void => {
  const { nowMs } = moment;
  const passed = lookForCheckpoint(draft.watch.checkpoint, moment);
  keep(draft, 'checkpoint', passed, nowMs);
  if (passed?.cue?.atM != null) offerTo(draft, rivalCue(moment, passed.cue.atM), nowMs);
  keep(draft, 'marker', lookForMarker(draft.watch.marker, moment), nowMs);
  const finishMs = lookForFinish(moment);
  if (finishMs !== null) finish(draft, moment, finishMs);
};

/** A new target: what was said about the old one is forgotten, and the runner gets time to find it. */
const turnToNewTarget = (draft: Draft, nowMs: number): void => {
  draft.departure = newTarget(draft.departure);
  draft.watch = { ...draft.watch, pace: findNewTarget(draft.watch.pace, nowMs) };
};

const lookAtLegs = (draft: Draft, moment: Moment): void => {
  const { watch } = draft;
  const { nowMs } = moment;
  keep(draft, 'opening', lookForOpening(watch.opening, moment), nowMs);
  keep(draft, 'settle', lookForSettle(watch.settle, moment), nowMs);
  keep(draft, 'push', lookForPush(watch.push, moment, draft.settings.talk), nowMs);
  const settles = draft.watch.settle !== watch.settle;
  const pushes = draft.watch.push !== watch.push && draft.race.plan.push !== null;
  if (settles || pushes) turnToNewTarget(draft, nowMs);
};

const lookAtPace = (draft: Draft, moment: Moment, dtS: number): void => {
  draft.keeping = keepOn(
    draft.keeping,
    isSeen(moment) ? seenRate(draft.race.schedule, moment.progress) : null,
    dtS,
  );
  if (moment.progress.sinceFixS > LOST_AFTER_S) draft.departure = rest(draft.departure);
  const evidence = paceEvidence(draft.watch.pace, moment, dtS, letOff(draft.watch.push, moment));
  if (evidence === null) return;
  draft.departure = follow(draft.departure, evidence);
  const now: Moment = { ...moment, departure: draft.departure };
  const side = isQuiet(draft, moment.nowMs) ? null : departedSide(draft.watch.pace, now);
  if (side === null) return;
  offerTo(draft, paceCue(now, side), moment.nowMs);
  draft.departure = tell(draft.departure, side);
};

/** One instant of the grid, `dtS` after the one before. */
export const look = (draft: Draft, startMs: number | null, nowMs: number, dtS: number): void => {
  if (startMs === null || draft.finishMs !== null) {
    letSpeak(draft, null, nowMs);
    return;
  }
  const moment = momentOf(draft, startMs, nowMs);
  lookAtPace(draft, moment, dtS);
  lookAtLegs(draft, moment);
  lookAtMarks(draft, moment);
  keep(draft, 'fuel', lookForFuel(draft.watch.fuel, moment), nowMs);
  keep(draft, 'station', lookForStation(draft.watch.station, moment), nowMs);
  keep(draft, 'signal', lookForSignal(draft.watch.signal, moment, draft.estimate.lineReversed), nowMs);
  keep(draft, 'due', lookForDue(draft.watch.due, moment), nowMs);
  letSpeak(draft, { ...moment, departure: draft.departure }, nowMs);
};
