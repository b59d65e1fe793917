import { expect, test } from 'vitest';
import { audioClockOf } from '../../../src/voice/device/audioClock.ts';

const contextAt = (currentTime: number, outputLatency: number, baseLatency: number): AudioContext =>
  ({ currentTime, outputLatency, baseLatency }) as AudioContext;

test.each([
  ['what the device says', 0.18, 0.01, 0, 0.18],
  ['the buffer alone, where the device says nothing', 0, 0.01, 0, 0.01],
  ['what was found by ear, besides', 0.02, 0.01, 230, 0.25],
])('a sound starts earlier by %s', (_what, outputLatency, baseLatency, unknownMs, earlierS) => {
  const clock = audioClockOf(contextAt(5, outputLatency, baseLatency), () => 1000, unknownMs);
  expect(clock.contextTimeS(3000)).toBeCloseTo(7 - earlierS, 9);
  expect(clock.plainTimeS(3000)).toBeCloseTo(7, 9);
  expect(clock.nowS()).toBe(5);
});
