import { describe, expect, test } from 'vitest';
import { createWallWatch, originAfter, runClockOf } from '../../../src/session/run/runClock.ts';
import { pretendTime } from '../pretend.ts';

const HOUR_MS = 3_600_000;

describe('the clock of a run', () => {
  test('a new page goes on where the old one would be now', () => {
    const time = pretendTime();
    const last = { engineMs: 5_000_000, wallMs: 5_000_300 };
    const clock = runClockOf(time, originAfter(last, 5_020_300, time.nowMs()));
    expect(clock.nowMs()).toBe(5_020_000);
    time.pass(1000);
    expect(clock.nowMs()).toBe(5_021_000);
    expect(clock.pageMs(5_021_000)).toBe(time.nowMs());
  });

  test('a clock set back while the page was closed does not turn the run back', () => {
    const time = pretendTime();
    const last = { engineMs: 5_000_000, wallMs: 5_000_000 };
    const clock = runClockOf(time, originAfter(last, 5_000_000 - HOUR_MS, time.nowMs()));
    expect(clock.nowMs()).toBe(5_000_000);
  });
});

describe('the phone clock under watch', () => {
  const first = { engineMs: 1000, wallMs: 1000 };

  test.each([HOUR_MS, -HOUR_MS])('by %i ms in view was set, and is told once', (byMs) => {
    const look = createWallWatch(first);
    expect(look({ engineMs: 2000, wallMs: 2000 + byMs }, false)).toEqual({ what: 'set', byMs });
    expect(look({ engineMs: 3000, wallMs: 3000 + byMs }, false)).toEqual({ what: 'same' });
  });

  test('forward out of view is sleep, which counts', () => {
    const look = createWallWatch(first);
    const slept = look({ engineMs: 31_000, wallMs: 601_000 }, true);
    expect(slept).toEqual({ what: 'slept', byMs: 570_000 });
    expect(look({ engineMs: 602_000, wallMs: 602_000 }, false)).toEqual({ what: 'same' });
  });

  test('backward out of view was set', () => {
    const look = createWallWatch(first);
    expect(look({ engineMs: 31_000, wallMs: 31_000 - HOUR_MS }, true).what).toBe('set');
  });

  test('trimming by less than two seconds is nothing', () => {
    const look = createWallWatch(first);
    expect(look({ engineMs: 2000, wallMs: 3900 }, false).what).toBe('same');
  });
});
