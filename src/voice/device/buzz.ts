import type { Call } from '../../core/cues/call.ts';
import { vibrationOf } from '../tones/vibration.ts';

/** Does nothing and says nothing where there is no vibration: touch is never the only channel. */
export const createBuzz =
  (nowMs: () => number, nav: Pick<Navigator, 'vibrate'> = navigator) =>
  (call: Call, atPageMs: number): void => {
    const tone = call.utterance.parts.find((part) => 'tone' in part.sound)?.sound;
    if (tone === undefined || !('tone' in tone) || typeof nav.vibrate !== 'function') return;
    const rhythm = [...vibrationOf(tone.tone)];
    setTimeout(() => nav.vibrate(rhythm), Math.max(0, atPageMs - nowMs()));
  };
