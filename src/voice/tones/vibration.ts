import type { Tone } from '../../core/cues/voicePort.ts';
import { NOTES } from './family.ts';

/** Shorter pulses than this are hardly felt on a wrist in motion (common practice, no source). */
const SHORTEST_PULSE_MS = 60;
/** How much slower than the ear the skin is given the same rhythm, so that pulses stay apart. */
const STRETCH = 1.6;

/**
 * A tone's rhythm as the W3C Vibration API takes it: milliseconds on, off, on … The countdown keeps its own time, since
 * its beats are seconds; the others are slowed.
 */
export const vibrationOf = (tone: Tone): readonly number[] => {
  const stretch = tone === 'countdown' ? 1 : STRETCH;
  const notes = NOTES[tone];
  return notes.flatMap((note, i) => {
    const next = notes[i + 1];
    const pulseMs = Math.max(SHORTEST_PULSE_MS, Math.round(note.lengthS * stretch * 1000));
    return next === undefined
      ? [pulseMs]
      : [pulseMs, Math.max(1, Math.round((next.beginS - note.beginS) * stretch * 1000) - pulseMs)];
  });
};
