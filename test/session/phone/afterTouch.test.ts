import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { afterTouch } from '../../../src/session/phone/afterTouch.ts';

let win: EventTarget;
beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('requestAnimationFrame', (frame: () => void) => setTimeout(frame, 16));
  win = new EventTarget();
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});
const begin = (): ReturnType<typeof vi.fn> => {
  const run = vi.fn();
  afterTouch(run, win as unknown as Window);
  return run;
};

test.each(['pointermove', 'pointerdown', 'touchstart', 'keydown', 'wheel'])(
  'a page that is used (%s) need not wait, and it is done once',
  (sign) => {
    const run = begin();
    vi.advanceTimersByTime(1000);
    expect(run).not.toHaveBeenCalled();
    win.dispatchEvent(new Event(sign));
    vi.advanceTimersByTime(50);
    expect(run).toHaveBeenCalledTimes(1);
    win.dispatchEvent(new Event(sign));
    vi.advanceTimersByTime(60_000);
    expect(run).toHaveBeenCalledTimes(1);
  },
);

test('a page that nobody touches gets it all the same', () => {
  const run = begin();
  vi.advanceTimersByTime(4900);
  expect(run).not.toHaveBeenCalled();
  vi.advanceTimersByTime(200);
  expect(run).toHaveBeenCalledTimes(1);
});
