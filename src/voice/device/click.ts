import { outputNow } from './howlerDevice.ts';

/** That a touch was felt: one click for a press, two for a hold, a low one for a guard that opens or closes. */
export type Click = 'press' | 'hold' | 'guard';

const LENGTH_S = 0.04;
const APART_S = 0.09;
/** Loud enough beside the voice, short enough not to hide a word of it. */
const GAIN = 0.25;
const BEATS: Record<Click, readonly number[]> = { press: [1800], hold: [1800, 1800], guard: [500] };
const BUZZ: Record<Click, readonly number[]> = { press: [30], hold: [30, 60, 30], guard: [80] };

/** Sounds at once, beside whatever is being said, and is felt where the device can. Silent where there is no sound. */
export const createClick =
  (nav: Pick<Navigator, 'vibrate'> = navigator) =>
  (kind: Click): void => {
    if (typeof nav.vibrate === 'function') nav.vibrate([...BUZZ[kind]]);
    const output = outputNow();
    if (output === null || output.context.state !== 'running') return;
    const { context, gain } = output;
    for (const [i, frequency] of BEATS[kind].entries()) {
      const atS = context.currentTime + i * APART_S;
      const envelope = new GainNode(context, { gain: 0 });
      envelope.gain.setValueAtTime(GAIN, atS);
      envelope.gain.exponentialRampToValueAtTime(0.001, atS + LENGTH_S);
      const tone = new OscillatorNode(context, { frequency });
      tone.connect(envelope).connect(gain);
      tone.start(atS);
      tone.stop(atS + LENGTH_S);
    }
  };
