import { effect, type ReadonlySignal } from '@preact/signals';
import type { NoticeName } from '../../core/cues/notice.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import type { SpeakerState } from '../../voice/device/speaker.ts';

/** A shorter silence loses a word or two, not a call. */
const GAP_MS = 5000;
/** Older than this nobody remembers that the page was closed. */
const RESUMED_MS = 120_000;

/**
 * Tells the runner that the sound was gone, once it is back: after a phone call, and after the page was closed. Where they
 * stand is said; what was missed only where it is still true (sayAfter.ts).
 * @param resumed  the run was taken up again, and the runner has not been told
 * @param onChange  told each time that the sound goes or comes, before the runner is
 * @returns what ends the watch
 */
export const watchSound = (
  state: ReadonlySignal<SpeakerState>,
  time: PageTime,
  resumed: boolean,
  notice: (what: NoticeName) => void,
  onChange: (isThere: boolean) => void = () => {},
): (() => void) => {
  const beganMs = time.nowMs();
  let untold = resumed;
  let goneMs: number | null = null;
  return effect(() => {
    const now = state.value;
    if (now !== 'ready') {
      if (goneMs === null) queueMicrotask(() => onChange(false));
      goneMs ??= time.nowMs();
      return;
    }
    if (goneMs !== null) queueMicrotask(() => onChange(true));
    const gapMs = goneMs === null ? 0 : time.nowMs() - goneMs;
    goneMs = null;
    const what =
      untold && time.nowMs() - beganMs < RESUMED_MS ? 'resumed' : gapMs > GAP_MS ? 'soundBack' : null;
    untold = false;
    // Not inside the effect, which would then depend on all that the run reads.
    if (what !== null) queueMicrotask(() => notice(what));
  });
};
