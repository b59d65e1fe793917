import { type Signal, signal } from '@preact/signals';
import type { Keep } from '../phone/pageKeep.ts';

const KEY = 'soundline.earDelay';
/** No earphone is later: radio ones take 40 to 300 ms (common practice, no source). */
const MOST_MS = 500;
/**
 * Less than this is the finger and the touch screen, which are no better than that (common practice, no source), and no
 * runner hears it.
 */
const LEAST_MS = 60;

/** Milliseconds by which calls are to begin earlier, out of what was measured; 0 where that is too little to trust. */
export const delayFrom = (measuredMs: number): number =>
  measuredMs < LEAST_MS ? 0 : Math.min(MOST_MS, Math.round(measuredMs));

/** What the browser does not know of the earphones' delay, ms, found by the runner's ear; kept between visits. */
export const createEarDelay = (keep: Keep): Signal<number> => {
  const delayMs = signal(delayFrom(Number(keep.getItem(KEY) ?? 0) || 0));
  delayMs.subscribe((ms) => {
    try {
      keep.setItem(KEY, String(ms));
    } catch {
      // For this visit only.
    }
  });
  return delayMs;
};
