import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { PageTime } from '../../voice/device/pageTime.ts';
import type { Speaker } from '../../voice/device/speaker.ts';
import { delayFrom } from '../ear/earDelay.ts';

/** How late the earphones are, by the runner's own finger. */
export interface TapTest {
  readonly running: ReadonlySignal<boolean>;
  /** Delay of the earphones by the taps, ms, beside what the browser knows; null before there were enough. */
  readonly lateMs: ReadonlySignal<number | null>;
  /** How much earlier calls begin for it, ms; kept for the next time. */
  readonly earlierMs: ReadonlySignal<number>;
  /** Calls begin no earlier any more: other earphones. */
  readonly forget: () => void;
  /** Plays the beats; to be called in a touch. */
  readonly start: () => void;
  readonly tap: () => void;
}

const BEATS = 8;
const APART_MS = 800;
const LEAD_MS = 500;
/** The first beats are for finding the rhythm. */
const SETTLE = 2;
const ENOUGH = 4;
const BEAT = { text: '', parts: [{ sound: { tone: 'marker' as const }, offsetS: 0 }], durationS: 0.15 };

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** Delay of each tap behind the beat that it belongs to, of a rhythm so slow that a radio's delay is less than half of it. */
export const lateOf = (tapsMs: readonly number[], firstMs: number): number | null => {
  const late = tapsMs
    .filter((ms) => ms > firstMs + (SETTLE - 0.5) * APART_MS)
    .map((ms) => {
      const off = (ms - firstMs) % APART_MS;
      return off > 0.75 * APART_MS ? off - APART_MS : off;
    });
  return late.length < ENOUGH ? null : Math.round(median(late));
};

/** @param earlierMs  by how much the speaker begins earlier; the beats too */
export const createTapTest = (
  speaker: Pick<Speaker, 'say'>,
  time: PageTime,
  earlierMs: Signal<number>,
): TapTest => {
  const running = signal(false);
  const lateMs = signal<number | null>(null);
  let tapsMs: number[] = [];
  let firstMs = 0;
  return {
    running,
    lateMs,
    earlierMs,
    forget: () => {
      earlierMs.value = 0;
      lateMs.value = null;
    },
    start: () => {
      if (running.value) return;
      tapsMs = [];
      lateMs.value = null;
      firstMs = time.nowMs() + LEAD_MS;
      running.value = true;
      for (let i = 0; i < BEATS; i++) speaker.say(BEAT, firstMs + i * APART_MS, firstMs + (i + 1) * APART_MS);
      const stop = time.every((BEATS + 1) * APART_MS + LEAD_MS, () => {
        stop();
        running.value = false;
        // Against beats that are made up for nothing.
        lateMs.value = lateOf(tapsMs, firstMs - earlierMs.value);
        if (lateMs.value !== null) earlierMs.value = delayFrom(lateMs.value);
      });
    },
    tap: () => {
      if (running.value) tapsMs = [...tapsMs, time.nowMs()];
    },
  };
};
