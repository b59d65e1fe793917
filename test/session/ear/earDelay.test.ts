import { describe, expect, test } from 'vitest';
import type { Utterance } from '../../../src/core/cues/voicePort.ts';
import { createEarDelay, delayFrom } from '../../../src/session/ear/earDelay.ts';
import { createTapTest } from '../../../src/session/ready/tapTest.ts';
import { pretendTime } from '../pretend.ts';

const keeper = () => {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  };
};

/** Taps of a finger `fingerMs` behind what comes out of earphones that are `lateMs` late. */
const measured = (keep: ReturnType<typeof keeper>, lateMs: number) => {
  const time = pretendTime();
  const earlierMs = createEarDelay(keep);
  const heardMs: number[] = [];
  const taps = createTapTest(
    {
      say: (_beat: Utterance, atPageMs: number) => {
        heardMs.push(atPageMs - earlierMs.value + lateMs);
        return 'scheduled';
      },
    },
    time,
    earlierMs,
  );
  taps.start();
  for (const ms of heardMs) {
    time.pass(ms - time.nowMs());
    taps.tap();
  }
  time.pass(20_000);
  return { taps, earlierMs };
};

describe('the delay of the earphones by the ear', () => {
  test('makes calls begin so much earlier, and is kept for the next time', () => {
    const keep = keeper();
    const { taps, earlierMs } = measured(keep, 220);
    expect(taps.lateMs.value).toBe(220);
    expect(earlierMs.value).toBe(220);
    expect(createEarDelay(keep).value).toBe(220);
  });

  test('measured again with beats that come earlier, is what it was', () => {
    const keep = keeper();
    measured(keep, 220);
    const { taps, earlierMs } = measured(keep, 220);
    expect(taps.lateMs.value).toBe(220);
    expect(earlierMs.value).toBe(220);
  });

  test('of other earphones is found, and forgotten when asked', () => {
    const keep = keeper();
    measured(keep, 220);
    const { taps, earlierMs } = measured(keep, 10);
    expect(earlierMs.value).toBe(0);
    measured(keep, 300).taps.forget();
    expect(createEarDelay(keep).value).toBe(0);
    expect(taps.lateMs.value).toBe(10);
  });

  test('is nothing where it is too little to trust, and never more than earphones can be', () => {
    expect([-80, 0, 59].map(delayFrom)).toEqual([0, 0, 0]);
    expect([60, 499.6, 900].map(delayFrom)).toEqual([60, 500, 500]);
    const keep = keeper();
    keep.setItem('soundline.earDelay', 'late');
    expect(createEarDelay(keep).value).toBe(0);
  });
});
