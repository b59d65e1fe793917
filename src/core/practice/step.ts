import type { Call } from '../cues/call.ts';
import { absorb } from '../estimate/estimator.ts';
import type { Input } from '../estimate/input.ts';
import { type RunInput, withSetting } from '../run/settings.ts';
import { doneCue } from './cues.ts';
import { type Draft, letSpeak, offerTo } from './draft.ts';
import { aheadFrom, wayFrom } from './going.ts';
import { hearHeart } from './heart.ts';
import { endsByPress, resultOf } from './legNow.ts';
import { announce, begin, change, look } from './look.ts';
import { NO_PEN, penWaits } from './notices.ts';
import { hearPod } from './pod.ts';
import { goingOf, type Practice } from './practice.ts';
import { answerCue } from './remaining.ts';
import { followWay } from './way/follow.ts';

/** Time passes on a grid of the engine's clock, as in a run. */
const GRID_MS = 500;
/** After this long with nothing but the clock a session is over, whatever the runner does: longer than any leg. */
const ABANDONED_MS = 6 * 3_600_000;
/** How far the clock runs on when a recording ends. */
const TAIL_MS = 30_000;

const passTime = (draft: Draft, toMs: number): void => {
  const fromMs = draft.atMs;
  if (toMs <= fromMs) return;
  const lastMs = Math.min(toMs, draft.lastInputMs + ABANDONED_MS);
  const firstMs = Math.floor(fromMs / GRID_MS) * GRID_MS + GRID_MS;
  for (let nowMs = firstMs; nowMs <= lastMs; nowMs += GRID_MS) {
    if (draft.leg === null && draft.speech.waiting.length === 0 && !penWaits(draft, nowMs)) break;
    draft.atMs = nowMs;
    look(draft, nowMs, GRID_MS / 1000);
  }
  draft.atMs = toMs;
};

/** The runner's one hand: ends a leg that waits for it, else asks. */
const press = (draft: Draft, nowMs: number): void => {
  const now = draft.leg;
  if (now === null) return;
  const going = goingOf(draft, nowMs);
  if (now.changeMs === null && endsByPress(now, going)) {
    announce(draft, now, nowMs, false);
    change(draft, now, nowMs, nowMs);
  } else ask(draft, nowMs);
};

const ask = (draft: Draft, nowMs: number): void => {
  const now = draft.leg;
  if (now === null) return;
  const going = goingOf(draft, nowMs);
  const ahead = aheadFrom(now.leg, now.paced, going, nowMs);
  offerTo(draft, answerCue(now, going, nowMs, draft.config.plan.unit, ahead), nowMs);
};

const stop = (draft: Draft, nowMs: number): void => {
  const now = draft.leg;
  if (now === null) return;
  const going = goingOf(draft, nowMs);
  draft.results = [...draft.results, resultOf(now, going, nowMs)];
  draft.leg = null;
  draft.endMs = nowMs;
  draft.penNext = NO_PEN;
  draft.speech = { ...draft.speech, waiting: [] };
  const way = wayFrom({ atMs: 0, going: draft.startGoing }, going);
  const timeS = (nowMs - (draft.startMs ?? nowMs)) / 1000;
  offerTo(draft, doneCue(draft.config.plan.unit, nowMs, false, timeS, way?.distanceM ?? null), nowMs);
};

/** A press that ends a leg is no board; and what has begun does not begin again. */
const isOfTheSession = ({ startMs }: Draft, input: Input): boolean =>
  input.type === 'event' && (input.event === 'marker' || (input.event === 'start' && startMs !== null));

const sense = (draft: Draft, input: Input): void => {
  const isRoad = draft.config.plan.place === 'road';
  if (input.type === 'heart') draft.heart = hearHeart(draft.heart, input);
  else if (input.type === 'footPod' && !isRoad) draft.pod = hearPod(draft.pod, input);
  else if (isRoad && !isOfTheSession(draft, input)) {
    draft.estimate = absorb(draft.setup, draft.estimate, input);
    draft.way = draft.way && followWay(draft.way, draft.setup, draft.estimate, input);
  }
};

const react = (draft: Draft, input: Input, nowMs: number): void => {
  const event = input.type === 'event' ? input.event : null;
  if (draft.startMs === null) {
    // On the road a start is also found; indoors it is pressed.
    const startMs = event === 'start' ? nowMs : draft.estimate.startMs;
    if (startMs !== null) begin(draft, startMs, nowMs);
  } else if (event === 'marker') press(draft, nowMs);
  else if (event === 'ask') ask(draft, nowMs);
  else if (event === 'stop') stop(draft, nowMs);
  else return;
  letSpeak(draft, nowMs);
};

/** The next session, and the calls decided on the way, in the order in which they sound. */
export interface PracticeStep {
  readonly practice: Practice;
  readonly calls: readonly Call[];
}

/** The fold of a session: one input in, the next state and the calls that are due. Pure; as `step` of a run. */
export const practiceStep = (practice: Practice, input: RunInput): PracticeStep => {
  const draft: Draft = { ...practice, calls: [] };
  passTime(draft, input.atMs);
  if (input.type !== 'clock') {
    const nowMs = Math.max(draft.atMs, input.atMs);
    draft.atMs = nowMs;
    draft.lastInputMs = nowMs;
    if (input.type === 'fix') draft.lastArrivalMs = nowMs;
    if (input.type === 'setting') draft.settings = withSetting(draft.settings, input);
    else if (input.type !== 'notice') {
      const now: Input = { ...input, atMs: nowMs };
      sense(draft, now);
      react(draft, now, nowMs);
    }
  }
  const { calls, ...next } = draft;
  return { practice: next, calls };
};

/** The end of a recording: lets the clock run on a little, so that what is due comes out. */
export const practiceFlush = (practice: Practice): PracticeStep =>
  practiceStep(practice, { type: 'clock', atMs: practice.atMs + TAIL_MS });
