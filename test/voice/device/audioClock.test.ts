import { expect, test } from 'vitest';
import { audioClockOf } from '../../../src/voice/device/audioClock.ts';
import { createClockLine } from '../../../src/voice/device/clockLine.ts';

const contextAt = (currentTime: number, outputLatency: number, baseLatency: number): AudioContext =>
  ({ currentTime, outputLatency, baseLatency }) as AudioContext;

test.each([
  ['what the device says', 0.18, 0.01, 0, 0.18],
  ['the buffer alone, where the device says nothing', 0, 0.01, 0, 0.01],
  ['what was found by ear, besides', 0.02, 0.01, 230, 0.25],
])('a sound starts earlier by %s', (_what, outputLatency, baseLatency, unknownMs, earlierS) => {
  const clock = audioClockOf(
    contextAt(5, outputLatency, baseLatency),
    () => 1000,
    createClockLine(),
    unknownMs,
  );
  expect(clock.contextTimeS(3000)).toBeCloseTo(7 - earlierS, 9);
  expect(clock.plainTimeS(3000)).toBeCloseTo(7, 9);
  expect(clock.nowS()).toBe(5);
});

test('a clock that goes in blocks of 20 ms is told to within a millisecond or two', () => {
  const line = createClockLine();
  // Looked at every half second and a bit, so that the looks fall anywhere in a block.
  for (let ms = 0; ms < 30_000; ms += 503.7) {
    line.see(Math.floor(ms / 20) * 0.02, ms);
    if (ms > 10_000) expect(Math.abs(line.audioS(ms + 700) - (ms + 700) / 1000)).toBeLessThan(0.003);
  }
});

test('a clock that stood is taken as it is from then on', () => {
  const line = createClockLine();
  line.see(1, 1000);
  line.see(1.5, 6500);
  expect(line.audioS(7500)).toBeCloseTo(2.5, 9);
});
