import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { afterPaint } from '../../../src/session/phone/afterPaint.ts';

let frames: (() => void)[] = [];
beforeEach(() => {
  vi.useFakeTimers();
  frames = [];
  vi.stubGlobal('requestAnimationFrame', (frame: () => void) => frames.push(frame));
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

test('waits for the frame and comes after it, once', () => {
  const run = vi.fn();
  afterPaint(run);
  vi.advanceTimersByTime(100);
  expect(run).not.toHaveBeenCalled();
  frames[0]?.();
  expect(run).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(run).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(10_000);
  expect(run).toHaveBeenCalledTimes(1);
});

test('a page that is never painted, as one opened out of sight, is not left waiting', () => {
  const run = vi.fn();
  afterPaint(run);
  vi.advanceTimersByTime(1000);
  expect(run).toHaveBeenCalledTimes(1);
});
