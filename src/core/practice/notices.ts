import type { Cue } from '../cues/cue.ts';
import { LOST_AFTER_S } from '../cues/rules/signal.ts';
import { message } from '../units/message.ts';
import { cueOf, IMPORTANCE } from './cues.ts';
import { type Draft, offerTo } from './draft.ts';
import type { Going } from './going.ts';

const SHELF_LIFE_MS = 20_000;
/** Fixes that are used again for this long are back. */
const FRESH_S = 3;

/** Above the ceiling on heart rate. */
export const heartCue = (bpm: number, mostBpm: number, nowMs: number): Cue =>
  cueOf({
    topic: 'heart',
    saying: {
      kind: 'heart',
      bpm: Math.min(250, Math.max(60, Math.round(bpm))),
      mostBpm: Math.round(mostBpm),
    },
    importance: IMPORTANCE.heart,
    manner: 'routine',
    dueMs: nowMs,
    lastsMs: SHELF_LIFE_MS,
    why: message('heart rate {bpm} above {most}', { bpm: Math.round(bpm), most: Math.round(mostBpm) }),
  });

/** On the road: fixes have stopped, or are back. Whoever runs by time alone needs none. */
export const lookAtSignal = (draft: Draft, going: Going | null, nowMs: number): void => {
  if (going === null || going.by === 'pod' || draft.startMs === null) return;
  const silentS = Math.min(going.sinceS, (nowMs - draft.startMs) / 1000);
  const isLost = draft.lost ? going.sinceS > FRESH_S : silentS >= LOST_AFTER_S;
  if (isLost === draft.lost) return;
  draft.lost = isLost;
  const cue = cueOf({
    topic: isLost ? 'signal' : 'signalBack',
    saying: { kind: 'signal', what: isLost ? 'lost' : 'back', ahead: null },
    importance: IMPORTANCE.signal,
    manner: 'routine',
    dueMs: nowMs,
    lastsMs: SHELF_LIFE_MS,
    onlyShort: !Number.isFinite(going.sinceS),
    why: isLost ? message('no usable fix for {s} s', { s: Math.round(silentS) }) : message('fixes again'),
  });
  offerTo(draft, cue, nowMs);
};

/** Minutes before the pen closes at which the warm-up is told of it; at the last one, to go. */
const GO_MIN = 2;
const PEN_MIN = [15, 10, 5, GO_MIN] as const;
/** Nothing more is said of the pen: the runner has ended the session. */
export const NO_PEN = PEN_MIN.length;

/** When a warm-up must be over: when it is time to go. Null without a pen, or where that time has passed already. */
export const mustEndMs = (penClosesMs: number | null, startMs: number): number | null => {
  if (penClosesMs === null) return null;
  const goMs = penClosesMs - 60_000 * GO_MIN;
  return goMs > startMs ? goMs : null;
};

/** Whether something about the pen is still to be said. */
export const penWaits = (
  { config, startMs, penNext }: Pick<Draft, 'config' | 'startMs' | 'penNext'>,
  nowMs: number,
): boolean =>
  startMs !== null &&
  config.plan.penClosesMs !== null &&
  penNext < PEN_MIN.length &&
  nowMs < config.plan.penClosesMs;

export const lookAtPen = (draft: Draft, nowMs: number): void => {
  const { penClosesMs } = draft.config.plan;
  const atMin = PEN_MIN[draft.penNext];
  if (penClosesMs === null || atMin === undefined || nowMs < penClosesMs - 60_000 * atMin) return;
  draft.penNext++;
  // What has passed before the session began is left out; that it is time to go is not, while the pen is open.
  const isLast = draft.penNext === PEN_MIN.length;
  const lateMs = nowMs - (penClosesMs - 60_000 * atMin);
  if (lateMs > (isLast ? 60_000 * GO_MIN : 30_000)) return;
  const cue = cueOf({
    topic: 'pen',
    saying: { kind: 'pen', inMin: isLast ? 0 : atMin },
    importance: IMPORTANCE.pen,
    manner: 'routine',
    dueMs: nowMs,
    lastsMs: 30_000,
    why: message('pen closes in {min} min', { min: atMin }),
  });
  offerTo(draft, cue, nowMs);
};
