import { afterPaint } from './afterPaint.ts';

/**
 * After its first picture a page counts as ready for hands when it does nothing long for this long (the quiet window of
 * ‘time to interactive’; memory). What is long and can wait comes after it.
 */
const UNTOUCHED_MS = 5000;
/** Signs of a hand: what comes before a click, a tap, a key, a scroll. */
const SIGNS = ['pointermove', 'pointerdown', 'touchstart', 'keydown', 'wheel'] as const;

/**
 * Does something once, after the first picture: at the first sign of a hand, or when the page was left alone for a while.
 * For what takes the page's one thread for long, and is wanted only after a touch.
 */
export const afterTouch = (
  run: () => void,
  win: Pick<Window, 'addEventListener' | 'removeEventListener'> = window,
): void => {
  let begun = false;
  const once = (): void => {
    if (begun) return;
    begun = true;
    for (const sign of SIGNS) win.removeEventListener(sign, once, true);
    afterPaint(run);
  };
  afterPaint(() => setTimeout(once, UNTOUCHED_MS));
  for (const sign of SIGNS) win.addEventListener(sign, once, { capture: true, passive: true });
};
