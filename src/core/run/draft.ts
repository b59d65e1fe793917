import { again } from '../cues/again.ts';
import { allowanceMs } from '../cues/allowance.ts';
import type { Call } from '../cues/call.ts';
import { crossingSdS } from '../cues/crossing.ts';
import { type Cue, IMPORTANCE } from '../cues/cue.ts';
import { isReckoned, type Moment } from '../cues/moment.ts';
import { nextCheckpointMs } from '../cues/rules/checkpoint.ts';
import { nextFinishMs } from '../cues/rules/finish.ts';
import { SILENT_MS } from '../cues/rules/pace.ts';
import { nextPushMs } from '../cues/rules/push.ts';
import { nextSettleMs } from '../cues/rules/settle.ts';
import { offer, type Reservation, speak } from '../cues/scheduler.ts';
import { isSaid, type Topic } from '../cues/talk.ts';
import { wordless } from '../cues/voicePort.ts';
import { aheadAt, clocksAt, driftAt } from '../drift/drift.ts';
import { progressAt } from '../estimate/estimator.ts';
import type { Run } from './run.ts';

/** A run while one input is being taken in, and the calls that came of it so far. Not seen outside this folder. */
export type Draft = { -readonly [K in keyof Run]: Run[K] } & { readonly calls: Call[] };

/** The race at an instant after the start. */
export const momentOf = (draft: Draft, startMs: number, nowMs: number): Moment => {
  const { race, setup, estimate, keeping, departure } = draft;
  const { plan, schedule } = race;
  const { gunMs, lastPress } = estimate;
  const progress = progressAt(setup, estimate, nowMs);
  const clocks = clocksAt(plan, startMs, gunMs, nowMs);
  const press = lastPress?.boardM != null ? { atMs: lastPress.atMs, boardM: lastPress.boardM } : null;
  return {
    race,
    nowMs,
    startMs,
    goalZeroMs: nowMs - clocks.goalS * 1000,
    progress,
    ...aheadAt(schedule, progress, clocks.goalS),
    keeping,
    departure,
    press,
    sinceArrivalS: (nowMs - draft.lastArrivalMs) / 1000,
    usualGapS: draft.usualGapS,
    drift: () => driftAt(schedule, plan, progress, clocks, keeping),
  };
};

/** In a quiet stretch only what the runner asks for, and the end. */
const IN_QUIET: readonly Topic[] = ['answer', 'finish'];

export const isQuiet = ({ settings }: Draft, nowMs: number): boolean =>
  settings.quietUntilMs !== null && nowMs < settings.quietUntilMs;

/** A cue joins those that wait, if the runner wants to hear of such things now. */
export const offerTo = (draft: Draft, cue: Cue | null, nowMs: number): void => {
  if (cue === null || !isSaid(draft.settings.talk, cue.topic)) return;
  if (isQuiet(draft, nowMs) && !IN_QUIET.includes(cue.topic)) return;
  if (cue.topic === 'marker' && nowMs < draft.watch.pace.saidMs + SILENT_MS) return;
  draft.speech = offer(draft.speech, cue);
};

/** A foreseen moment of the next seconds may come this much earlier. */
const EARLY_MS = 800;
const EARLY_MOST_MS = 3000;

const reservedFor = ({ watch }: Draft, moment: Moment): readonly Reservation[] => {
  // By reckoning the moment itself is vague, and without a line a press may bring it at once.
  const vague = isReckoned(moment) || moment.race.byPresses;
  const earlyMs = EARLY_MS + (vague ? Math.min(EARLY_MOST_MS, 1000 * crossingSdS(moment)) : 0);
  return [
    {
      atMs: nextCheckpointMs(watch.checkpoint, moment),
      earlyMs,
      importance: IMPORTANCE.checkpoint,
      quiet: false,
    },
    { atMs: nextFinishMs(moment), earlyMs, importance: IMPORTANCE.finish, quiet: false },
    { atMs: nextSettleMs(watch.settle, moment), earlyMs, importance: IMPORTANCE.settle, quiet: true },
    { atMs: nextPushMs(watch.push, moment), earlyMs, importance: IMPORTANCE.push, quiet: true },
  ];
};

/** What waits is brought up to date; then at most one call is decided. `moment` is null before the start and after the end. */
export const letSpeak = (draft: Draft, moment: Moment | null, nowMs: number): void => {
  if (draft.speech.waiting.length === 0) return;
  if (moment) {
    const waiting = draft.speech.waiting.flatMap((cue) => again(cue, moment, draft.watch.signal) ?? []);
    const dropped = draft.speech.dropped + draft.speech.waiting.length - waiting.length;
    draft.speech = { ...draft.speech, waiting, dropped };
  }
  const { speech, call } = speak(draft.speech, nowMs, {
    voice: draft.settings.talk === 'tones' ? wordless(draft.config.voice) : draft.config.voice,
    reserved: moment && draft.finishMs === null ? reservedFor(draft, moment) : [],
    allowanceMs:
      draft.settings.talk === 'full'
        ? Number.POSITIVE_INFINITY
        : allowanceMs(draft.race, draft.spareMs, moment?.progress.distanceM ?? 0),
  });
  draft.speech = speech;
  if (call === null) return;
  draft.calls.push(call);
  const { kind } = call.saying;
  if (kind === 'ease' || kind === 'quicken' || (kind === 'opening' && call.saying.what === 'tooQuick'))
    draft.watch = { ...draft.watch, pace: { ...draft.watch.pace, saidMs: call.endMs } };
};
