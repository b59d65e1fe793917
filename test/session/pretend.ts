import type { Utterance } from '../../src/core/cues/voicePort.ts';
import type { Ear } from '../../src/voice/device/ear.ts';
import type { PageTime } from '../../src/voice/device/pageTime.ts';

/** A page's clock that runs when it is told to. */
export interface PretendTime extends PageTime {
  /** Lets time pass, with the timers on their way. */
  readonly pass: (ms: number) => void;
  /** Lets time pass while the page is frozen: no timer runs, and those that were due run late. */
  readonly freeze: (ms: number) => void;
}

export const pretendTime = (): PretendTime => {
  let nowMs = 1000;
  const timers = new Set<{ dueMs: number; readonly everyMs: number; readonly run: () => void }>();
  return {
    nowMs: () => nowMs,
    every: (everyMs, run) => {
      const timer = { dueMs: nowMs + everyMs, everyMs, run };
      timers.add(timer);
      return () => timers.delete(timer);
    },
    freeze: (ms) => {
      nowMs += ms;
      for (const timer of timers) timer.dueMs = Math.max(timer.dueMs, nowMs);
    },
    pass: (ms) => {
      const untilMs = nowMs + ms;
      for (;;) {
        const next = [...timers].sort((a, b) => a.dueMs - b.dueMs)[0];
        if (next === undefined || next.dueMs > untilMs) break;
        nowMs = next.dueMs;
        next.dueMs += next.everyMs;
        next.run();
      }
      nowMs = untilMs;
    },
  };
};

export interface Said {
  readonly text: string;
  readonly atMs: number;
  readonly endMs: number;
}

/** An ear that keeps what it was given. */
export interface PretendEar extends Ear {
  readonly said: () => readonly Said[];
}

export const pretendEar = (time: PageTime): PretendEar => {
  let said: Said[] = [];
  return {
    said: () => said,
    say: (utterance: Utterance, atPageMs: number) => {
      said.push({ text: utterance.text, atMs: atPageMs, endMs: atPageMs + 1000 * utterance.durationS });
      return 'scheduled';
    },
    takeBack: () => {
      said = said.filter((s) => s.atMs <= time.nowMs());
    },
    hush: () => {
      said = said.filter((s) => s.atMs <= time.nowMs());
    },
  };
};
