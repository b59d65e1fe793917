import type { Call } from '../cues/call.ts';
import type { Cue } from '../cues/cue.ts';
import { offer, type Reservation, speak } from '../cues/scheduler.ts';
import { isSaid, type Topic } from '../cues/talk.ts';
import { wordless } from '../cues/voicePort.ts';
import { COUNTDOWN_MS, IMPORTANCE } from './cues.ts';
import type { Going } from './going.ts';
import { legEndMs } from './legNow.ts';
import { goingOf, type Practice } from './practice.ts';

/** A session while one input is being taken in, and the calls that came of it so far. Not seen outside this folder. */
export type Draft = { -readonly [K in keyof Practice]: Practice[K] } & { readonly calls: Call[] };

/** In a quiet stretch only what the runner asks for, and what the session is made of. */
const IN_QUIET: readonly Topic[] = ['answer', 'leg', 'done'];

/** A cue joins those that wait, if the runner wants to hear of such things now. */
export const offerTo = (draft: Draft, cue: Cue | null, nowMs: number): void => {
  const { talk, quietUntilMs } = draft.settings;
  if (cue === null || !isSaid(talk, cue.topic)) return;
  if (quietUntilMs !== null && nowMs < quietUntilMs && !IN_QUIET.includes(cue.topic)) return;
  draft.speech = offer(draft.speech, cue);
};

/** A foreseen change may come this much earlier: not at all by the clock, some by distance. */
const EARLY_MS = { time: 300, distance: 800 } as const;
const EARLY_MOST_MS = 3000;

/** The next change of leg, kept free of everything else. */
const reserved = (draft: Draft, going: Going | null, nowMs: number): readonly Reservation[] => {
  const { leg } = draft;
  if (leg === null || leg.changeMs !== null) return [];
  const byTime = leg.leg.extent.by === 'time';
  const doubtMs = byTime || going === null ? 0 : (1000 * going.speedSdMps * 10) / Math.max(1, going.speedMps);
  const earlyMs = byTime ? EARLY_MS.time : Math.min(EARLY_MOST_MS, EARLY_MS.distance + doubtMs);
  const atMs = legEndMs(leg, going, nowMs) - COUNTDOWN_MS;
  return [{ atMs, earlyMs, importance: IMPORTANCE.change, quiet: false }];
};

/** At most one call is decided. */
export const letSpeak = (draft: Draft, nowMs: number): void => {
  if (draft.speech.waiting.length === 0) return;
  const { speech, call } = speak(draft.speech, nowMs, {
    voice: draft.settings.talk === 'tones' ? wordless(draft.config.voice) : draft.config.voice,
    reserved: reserved(draft, goingOf(draft, nowMs), nowMs),
    allowanceMs: Number.POSITIVE_INFINITY,
  });
  draft.speech = speech;
  if (call === null) return;
  draft.calls.push(call);
  if (call.saying.kind === 'ease' || call.saying.kind === 'quicken') draft.paceSaidMs = call.endMs;
};
