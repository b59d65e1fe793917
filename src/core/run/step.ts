import { answerBeforeStart, answerCue } from '../cues/rules/answer.ts';
import { isByClock } from '../cues/rules/due.ts';
import { finishAtStop } from '../cues/rules/finish.ts';
import { noticeCue } from '../cues/rules/notice.ts';
import { pacerCue } from '../cues/rules/pacer.ts';
import { noBoardCue } from '../cues/rules/press.ts';
import { startCue } from '../cues/rules/start.ts';
import { beginDeparture } from '../drift/departure.ts';
import { keepingOf } from '../drift/ownManner.ts';
import { absorb, progressAt } from '../estimate/estimator.ts';
import type { Input } from '../estimate/input.ts';
import { type Draft, letSpeak, momentOf, offerTo } from './draft.ts';
import { finish, look, lookAtMarks, lookAtPressByClock } from './look.ts';
import type { Run, Step } from './run.ts';
import { type NoticeInput, type RunInput, withSetting } from './settings.ts';
import { beginWatch } from './watch.ts';

/**
 * Time passes on a grid of the engine's clock, so that what is decided does not depend on how often the clock is told.
 */
const GRID_MS = 500;
/** After this long with nothing but the clock a run is over, whatever the runner does. */
const ABANDONED_MS = 3_600_000;
/** How far the clock runs on when a recording ends, so that what is due is still said. */
const TAIL_MS = 10_000;

/** Walks the grid up to and with an instant. */
const passTime = (draft: Draft, toMs: number): void => {
  const fromMs = draft.atMs;
  if (toMs <= fromMs) return;
  draft.atMs = toMs;
  const { startMs, stopMs } = draft.estimate;
  const isOver = (): boolean => startMs === null || stopMs !== null || draft.finishMs !== null;
  const lastMs = Math.min(toMs, draft.lastInputMs + ABANDONED_MS);
  const firstMs = Math.floor(fromMs / GRID_MS) * GRID_MS + GRID_MS;
  for (let nowMs = firstMs; nowMs <= lastMs; nowMs += GRID_MS) {
    if (isOver() && draft.speech.waiting.length === 0) return;
    look(draft, startMs, nowMs, GRID_MS / 1000);
  }
};

/** The start was found, or moved: what was noticed since a false one is forgotten. */
const begin = (draft: Draft, startMs: number, nowMs: number): void => {
  draft.watch = beginWatch;
  draft.keeping = keepingOf(draft.config.runner, draft.config.plan.goalS, draft.config.plan.distanceM);
  draft.departure = beginDeparture;
  draft.speech = { ...draft.speech, waiting: [] };
  offerTo(draft, startCue(momentOf(draft, startMs, nowMs)), nowMs);
};

/** A start that moves by less than this was the same crossing, known better. */
const SAME_START_MS = 5000;

const isNewStart = (beforeMs: number | null, startMs: number): boolean =>
  beforeMs === null || Math.abs(startMs - beforeMs) > SAME_START_MS;

/** What an input brings at once, between two instants of the grid. */
const react = (draft: Draft, input: Input, before: Run): void => {
  const { startMs, stopMs, lastPress } = draft.estimate;
  const nowMs = draft.atMs;
  const asked = input.type === 'event' && input.event === 'ask';
  if (startMs === null) {
    const progress = progressAt(draft.setup, draft.estimate, nowMs);
    if (asked) offerTo(draft, answerBeforeStart(draft.race, nowMs, progress), nowMs);
    letSpeak(draft, null, nowMs);
    return;
  }
  if (isNewStart(before.estimate.startMs, startMs)) begin(draft, startMs, nowMs);
  const moment = momentOf(draft, startMs, nowMs);
  if (asked) offerTo(draft, answerCue(moment), nowMs);
  if (input.type === 'event' && input.event === 'level')
    offerTo(draft, pacerCue(moment, draft.estimate.gunMs), nowMs);
  if (input.type === 'event' && input.event === 'marker' && isByClock(moment))
    lookAtPressByClock(draft, moment);
  else if (lastPress !== null && lastPress !== before.estimate.lastPress) {
    if (lastPress.boardM === null) offerTo(draft, noBoardCue(moment), nowMs);
    else lookAtMarks(draft, moment);
  }
  if (stopMs !== null) {
    draft.speech = { ...draft.speech, waiting: [] };
    const finishMs = finishAtStop(moment);
    if (finishMs !== null) finish(draft, moment, finishMs);
  }
  letSpeak(draft, moment, nowMs);
};

/** A gap longer than this is an outage, not the receiver's habit. */
const GAP_MOST_S = 10;
const GAPS_REMEMBERED = 10;

const arrive = (draft: Draft, nowMs: number): void => {
  const gapS = Math.min(GAP_MOST_S, (nowMs - draft.lastArrivalMs) / 1000);
  if (Number.isFinite(draft.lastArrivalMs)) draft.usualGapS += (gapS - draft.usualGapS) / GAPS_REMEMBERED;
  draft.lastArrivalMs = nowMs;
};

/** What the device has to tell is said at the next instant of the grid that has room for it. */
const notice = (draft: Draft, { what }: NoticeInput): void => {
  const { startMs } = draft.estimate;
  const nowMs = draft.atMs;
  const moment = startMs === null || draft.finishMs !== null ? null : momentOf(draft, startMs, nowMs);
  offerTo(draft, noticeCue(what, moment, nowMs), nowMs);
  letSpeak(draft, moment, nowMs);
};

/**
 * The fold. Takes one input in and says what is to sound because of it and of the time that has passed before it. Pure.
 * Inputs come in the order of `atMs`; one that claims an earlier instant counts as now.
 */
export const step = (run: Run, input: RunInput): Step => {
  const draft: Draft = { ...run, calls: [] };
  passTime(draft, input.atMs);
  if (input.type !== 'clock') {
    const nowMs = draft.atMs;
    draft.lastInputMs = nowMs;
    if (input.type === 'setting') draft.settings = withSetting(draft.settings, input);
    else if (input.type === 'notice') notice(draft, input);
    else {
      draft.estimate = absorb(draft.setup, draft.estimate, { ...input, atMs: nowMs });
      // A receiver that is stuck goes on sending, and is silent all the same.
      if (input.type === 'fix' && !draft.estimate.arrivals.stuck) arrive(draft, nowMs);
      const isOver = draft.finishMs !== null || run.estimate.stopMs !== null;
      const isNews = input.type === 'event' || draft.estimate.startMs !== run.estimate.startMs;
      if (isNews && !isOver) react(draft, input, run);
    }
  }
  // The draft is the next run: a copy without its calls would be an object of no fixed shape, and cost a tenth of a fix.
  return { run: draft, calls: draft.calls };
};

/** The end of a recording: lets the clock run on a little, so that what is due comes out. */
export const flush = (run: Run): Step => step(run, { type: 'clock', atMs: run.atMs + TAIL_MS });
