import type { Call } from '../cues/call.ts';
import type { Cue, Found } from '../cues/cue.ts';
import { IMPORTANCE } from '../cues/cue.ts';
import type { Moment } from '../cues/moment.ts';
import { answerBeforeStart, answerCue } from '../cues/rules/answer.ts';
import { lookForCheckpoint, nextCheckpointMs } from '../cues/rules/checkpoint.ts';
import { finishAtStop, finishCue, lookForFinish, nextFinishMs } from '../cues/rules/finish.ts';
import { lookForMarker } from '../cues/rules/marker.ts';
import { startCue } from '../cues/rules/start.ts';
import { offer, silence, speak } from '../cues/scheduler.ts';
import { clocksAt, driftAt } from '../drift/drift.ts';
import { keepOn, rateNow } from '../drift/keeping.ts';
import { absorb, progressAt } from '../estimate/estimator.ts';
import type { Input } from '../estimate/input.ts';
import type { Run, Step } from './run.ts';

/**
 * Time passes on a grid of the engine's clock, so that what is decided does not depend on how often the clock is told.
 */
const GRID_MS = 500;
/** After this long with nothing but the clock a run is over, whatever the runner does. */
const ABANDONED_MS = 3_600_000;
/** How far the clock runs on when a recording ends, so that what is due is still said. */
const TAIL_MS = 10_000;

/** A run while one input is being taken in; nobody outside this file sees it. */
type Draft = { -readonly [K in keyof Run]: Run[K] };

const momentOf = (run: Run, startMs: number, nowMs: number): Moment => {
  const { race, setup, estimate, keeping } = run;
  const progress = progressAt(setup, estimate, nowMs);
  const goalZeroMs = race.plan.goalBy === 'gun' && estimate.gunMs !== null ? estimate.gunMs : startMs;
  return {
    race,
    nowMs,
    startMs,
    goalZeroMs,
    progress,
    drift: () =>
      driftAt(
        race.schedule,
        race.plan,
        progress,
        clocksAt(race.plan, startMs, estimate.gunMs, nowMs),
        keeping,
      ),
  };
};

const offerTo = (draft: Draft, cue: Cue | null): void => {
  if (cue) draft.speech = offer(draft.speech, cue);
};

/** Keeps what a rule found; its cue, if any, joins those that wait. */
const keep = <W>(draft: Draft, found: Found<W> | null, put: (watch: W) => void): void => {
  if (!found) return;
  put(found.watch);
  offerTo(draft, found.cue);
};

const letSpeak = (draft: Draft, moment: Moment | null, nowMs: number, calls: Call[]): void => {
  if (draft.speech.waiting.length === 0) return;
  const reserved =
    moment && draft.finishMs === null
      ? [
          { atMs: nextCheckpointMs(draft.watch.checkpoint, moment), importance: IMPORTANCE.checkpoint },
          { atMs: nextFinishMs(moment), importance: IMPORTANCE.finish },
        ]
      : [];
  const { speech, call } = speak(draft.speech, nowMs, reserved, draft.config.voice);
  draft.speech = speech;
  if (call) calls.push(call);
};

/** The run is over: nothing but the finish is left to say. */
const finish = (draft: Draft, moment: Moment, atMs: number): void => {
  draft.finishMs = atMs;
  draft.speech = {
    ...draft.speech,
    waiting: draft.speech.waiting.filter((c) => c.saying.kind === 'checkpoint'),
  };
  offerTo(draft, finishCue(moment, atMs));
};

/** One instant of the grid. */
const look = (draft: Draft, startMs: number | null, nowMs: number, calls: Call[]): void => {
  if (startMs === null || draft.finishMs !== null) {
    letSpeak(draft, null, nowMs, calls);
    return;
  }
  const moment = momentOf(draft, startMs, nowMs);
  draft.keeping = keepOn(draft.keeping, rateNow(draft.race.schedule, moment.progress), GRID_MS / 1000);
  const watch = { ...draft.watch };
  draft.watch = watch;
  keep(draft, lookForCheckpoint(watch.checkpoint, moment), (w) => {
    watch.checkpoint = w;
  });
  keep(draft, lookForMarker(watch.marker, moment), (w) => {
    watch.marker = w;
  });
  const finishMs = lookForFinish(moment);
  if (finishMs !== null) finish(draft, moment, finishMs);
  letSpeak(draft, moment, nowMs, calls);
};

/** Walks the grid up to and with an instant. */
const passTime = (draft: Draft, toMs: number, calls: Call[]): void => {
  const { startMs, stopMs } = draft.estimate;
  const fromMs = draft.atMs;
  if (toMs <= fromMs) return;
  draft.atMs = toMs;
  const lastMs = Math.min(toMs, draft.lastInputMs + ABANDONED_MS);
  const firstMs = Math.floor(fromMs / GRID_MS) * GRID_MS + GRID_MS;
  const isOver = (): boolean => startMs === null || stopMs !== null || draft.finishMs !== null;
  for (let nowMs = firstMs; nowMs <= lastMs; nowMs += GRID_MS) {
    if (isOver() && draft.speech.waiting.length === 0) return;
    look(draft, startMs, nowMs, calls);
  }
};

/** What an input brings at once, between two instants of the grid. */
const react = (draft: Draft, input: Input, before: Run, calls: Call[]): void => {
  const { startMs, stopMs } = draft.estimate;
  const nowMs = draft.atMs;
  const asked = input.type === 'event' && input.event === 'ask';
  if (draft.finishMs !== null || before.estimate.stopMs !== null) return;
  if (startMs === null) {
    if (asked)
      offerTo(draft, answerBeforeStart(draft.race, nowMs, progressAt(draft.setup, draft.estimate, nowMs)));
    letSpeak(draft, null, nowMs, calls);
    return;
  }
  const moment = momentOf(draft, startMs, nowMs);
  if (before.estimate.startMs === null) offerTo(draft, startCue(moment));
  if (asked) offerTo(draft, answerCue(moment));
  if (stopMs !== null) {
    draft.speech = { ...draft.speech, waiting: silence.waiting };
    const finishMs = finishAtStop(moment);
    if (finishMs !== null) finish(draft, moment, finishMs);
  }
  letSpeak(draft, moment, nowMs, calls);
};

/**
 * The fold. Takes one input in and says what is to sound because of it and of the time that has passed before it. Pure.
 * Inputs come in the order of `atMs`; one that claims an earlier instant counts as now.
 */
export const step = (run: Run, input: Input): Step => {
  const draft: Draft = { ...run };
  const calls: Call[] = [];
  passTime(draft, input.atMs, calls);
  if (input.type === 'clock') return { run: draft, calls };
  const nowMs = Math.max(input.atMs, draft.atMs);
  draft.atMs = nowMs;
  draft.lastInputMs = nowMs;
  draft.estimate = absorb(draft.setup, draft.estimate, { ...input, atMs: nowMs });
  const reacts = input.type === 'event' || draft.estimate.startMs !== run.estimate.startMs;
  if (reacts) react(draft, input, run, calls);
  return { run: draft, calls };
};

/** The end of a recording: lets the clock run on a little, so that what is due comes out. */
export const flush = (run: Run): Step => step(run, { type: 'clock', atMs: run.atMs + TAIL_MS });
