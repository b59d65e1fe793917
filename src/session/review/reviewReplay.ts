import { type ReadonlySignal, signal } from '@preact/signals';
import { type Voice, wordless } from '../../core/cues/voicePort.ts';
import type { SaidCall } from '../../core/review/digest.ts';
import type { Ear } from '../../voice/device/ear.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import { engineAtMs, pageAtMs, type TapeClock } from '../rehearsal/tapeClock.ts';

/** A stretch of a run heard again: between calls at the chosen rate, the calls themselves at true speed. */
export interface Replay {
  /** Own-clock seconds now; null when it is over. */
  readonly atS: ReadonlySignal<number | null>;
  /** The call that sounds, or sounded last. */
  readonly callId: ReadonlySignal<number | null>;
  readonly end: () => void;
}

const TICK_MS = 100;
const LEAD_MS = 300;
/** Calls are handed to the ear so long before they sound. */
const AHEAD_MS = 2000;

export const startReplay = (
  calls: readonly SaidCall[],
  fromS: number,
  toS: number,
  rate: number,
  parts: { readonly voice: Voice; readonly ear: Ear; readonly time: PageTime },
): Replay => {
  const { voice, ear, time } = parts;
  const stretch = calls.filter((c) => c.endS > fromS && c.startS <= toS);
  const clock: TapeClock = {
    engineMs: 1000 * Math.min(fromS, stretch[0]?.startS ?? fromS),
    pageMs: time.nowMs() + LEAD_MS,
    rate,
    calls: stretch.map((c) => ({ startMs: 1000 * c.startS, endMs: 1000 * c.endS })),
  };
  const atS = signal<number | null>(clock.engineMs / 1000);
  const callId = signal<number | null>(null);
  let next = 0;
  const stop = time.every(TICK_MS, () => {
    const nowMs = time.nowMs();
    for (let call = stretch[next]; call !== undefined; call = stretch[next]) {
      const atPageMs = pageAtMs(clock, 1000 * call.startS);
      if (atPageMs > nowMs + AHEAD_MS) break;
      // What was a tone alone is one again.
      const heard = call.text === '' ? wordless(voice) : voice;
      ear.say(heard.utter(call.saying, call.form), atPageMs, atPageMs);
      next++;
    }
    const engineS = engineAtMs(clock, nowMs) / 1000;
    callId.value = stretch.findLast((c) => c.startS <= engineS)?.id ?? null;
    if (engineS > Math.max(toS, stretch.at(-1)?.endS ?? toS)) finish();
    else atS.value = engineS;
  });
  const finish = (): void => {
    stop();
    atS.value = null;
  };
  return {
    atS,
    callId,
    end: () => {
      ear.hush();
      finish();
    },
  };
};
