import type { Call } from '../../core/cues/call.ts';
import type { Utterance } from '../../core/cues/voicePort.ts';
import type { Ear, Heard } from '../../voice/device/ear.ts';

/** Calls as they sound, and after a silence those that nobody heard but that are still true. */
export interface SayAfter {
  /** What became of each call, by its id. */
  readonly heard: ReadonlyMap<number, Heard>;
  readonly say: (call: Call) => void;
  /** The sound has been taken away: by a phone call, another program, a lock. */
  readonly lost: () => void;
  /** It is there again: what is still worth saying is said, the rest is dropped for good. */
  readonly back: () => void;
}

export interface SayAfterParts {
  readonly ear: Ear;
  /** Engine milliseconds now, and what they are on the page's clock. */
  readonly clock: { readonly nowMs: () => number; readonly pageMs: (engineMs: number) => number };
  /** What of a call can be said after its moment; null: nothing. Absent: all of it. */
  readonly afterwards?: (call: Call) => Utterance | null;
}

/** A silence is found within this: the audio clock is looked at twice a second, and must stand still for a look. */
const FOUND_WITHIN_MS = 1000;
/** A breath between the return of the sound and the first word. */
const LEAD_MS = 300;

export const createSayAfter = ({ ear, clock, afterwards }: SayAfterParts): SayAfter => {
  const heard = new Map<number, Heard>();
  /** Calls that may yet be cut off, or that nobody heard. */
  let open: readonly { readonly call: Call; readonly endMs: number }[] = [];
  let unheard: readonly Call[] = [];

  return {
    heard,
    say: (call) => {
      const nowMs = clock.nowMs();
      const became = ear.say(call.utterance, clock.pageMs(call.startMs), clock.pageMs(call.expiresMs));
      heard.set(call.id, became);
      open = [...open.filter(({ endMs }) => endMs > nowMs - FOUND_WITHIN_MS), { call, endMs: call.endMs }];
      if (became === 'silent') unheard = [...unheard.filter((other) => other.expiresMs > nowMs), call];
    },
    lost: () => {
      const fromMs = clock.nowMs() - FOUND_WITHIN_MS;
      const cut = open
        .filter(({ call, endMs }) => endMs > fromMs && !unheard.includes(call))
        .map(({ call }) => call);
      for (const call of cut) heard.set(call.id, 'silent');
      unheard = [...cut, ...unheard];
      open = [];
    },
    back: () => {
      const atMs = clock.nowMs() + LEAD_MS;
      const due = unheard.filter((call) => call.expiresMs >= atMs);
      unheard = [];
      // One after the other: the ear never speaks two at once, and lets go of what would be stale by its turn.
      let endMs = atMs;
      for (const call of due) {
        const utterance = afterwards === undefined ? call.utterance : afterwards(call);
        if (utterance === null) continue;
        heard.set(call.id, ear.say(utterance, clock.pageMs(atMs), clock.pageMs(call.expiresMs)));
        endMs += 1000 * utterance.durationS;
        open = [...open, { call, endMs }];
      }
    },
  };
};
