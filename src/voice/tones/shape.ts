import type { Tone } from '../../core/cues/voicePort.ts';
import { NOTES, toneDurationS } from './family.ts';
import { vibrationOf } from './vibration.ts';

/** One stroke of a drawing: from left to right in shares of the whole length, heights in shares of the family's range. */
export interface Stroke {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

/** A tone as a drawing: when and how high it sounds, and when it is felt. */
export interface ToneShape {
  /** `low` is the height at the begin of the note, `high` at its end: the same unless it glides. */
  readonly notes: readonly Stroke[];
  /** Begin and end of each pulse. */
  readonly pulses: readonly { readonly from: number; readonly to: number }[];
}

const ALL_HZ = Object.values(NOTES).flatMap((notes) => notes.flatMap(({ hz, toHz }) => [hz, toHz ?? hz]));
const LOWEST = Math.log2(Math.min(...ALL_HZ));
const HIGHEST = Math.log2(Math.max(...ALL_HZ));

/** Height by the ear's measure: the same step for each octave. */
const heightOf = (hz: number): number => (Math.log2(hz) - LOWEST) / (HIGHEST - LOWEST);

/** Drawings of tones shorter than this are not stretched, so that a knock looks like one; seconds. */
const LEAST_SPAN_S = 1.4;

export const shapeOf = (tone: Tone): ToneShape => {
  const spanS = Math.max(LEAST_SPAN_S, toneDurationS(tone));
  const pattern = vibrationOf(tone);
  const feltS = Math.max(spanS, pattern.reduce((sum, ms) => sum + ms, 0) / 1000);
  let atMs = 0;
  const pulses = pattern.flatMap((ms, i) => {
    const from = atMs / 1000 / feltS;
    atMs += ms;
    return i % 2 === 0 ? [{ from, to: atMs / 1000 / feltS }] : [];
  });
  return {
    notes: NOTES[tone].map(({ beginS, lengthS, hz, toHz }) => ({
      from: beginS / feltS,
      to: (beginS + lengthS) / feltS,
      low: heightOf(hz),
      high: heightOf(toHz ?? hz),
    })),
    pulses,
  };
};
