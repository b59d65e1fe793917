import type { Tone } from '../../core/cues/voicePort.ts';

/** One note of an earcon. */
export interface Note {
  /** Begin, in seconds from the begin of the tone. */
  readonly beginS: number;
  readonly lengthS: number;
  readonly hz: number;
  /** Where the pitch has glided to at the end of the note; the same pitch when absent. */
  readonly toHz?: number;
}

/** Seconds from the begin of the countdown to the moment that it counts to: the begin of its long last note. */
export const COUNTDOWN_LEAD_S = 3;

/**
 * The earcons. Each pair differs in the number of notes, their rhythm and the contour, so that one who hears no pitch, or
 * only feels the rhythm on the wrist, can still tell them apart. Fundamentals lie between 500 and 1600 Hz: above the
 * rumble of wind and steps, below the range that age and noise take first (common practice, no source). 'marker' is
 * the shortest because a word follows that belongs to the moment.
 */
export const NOTES: Readonly<Record<Tone, readonly Note[]>> = {
  // Three ticks a second apart, then the moment itself.
  countdown: [
    { beginS: 0, lengthS: 0.09, hz: 880 },
    { beginS: 1, lengthS: 0.09, hz: 880 },
    { beginS: 2, lengthS: 0.09, hz: 880 },
    { beginS: COUNTDOWN_LEAD_S, lengthS: 0.4, hz: 1319 },
  ],
  // Short, short, long and higher: a door opens.
  leg: [
    { beginS: 0, lengthS: 0.08, hz: 784 },
    { beginS: 0.14, lengthS: 0.08, hz: 784 },
    { beginS: 0.28, lengthS: 0.3, hz: 1175 },
  ],
  // Two slow notes, both sinking.
  ease: [
    { beginS: 0, lengthS: 0.24, hz: 1047, toHz: 880 },
    { beginS: 0.3, lengthS: 0.34, hz: 784, toHz: 523 },
  ],
  // Four quick notes that climb.
  quicken: [
    { beginS: 0, lengthS: 0.06, hz: 784 },
    { beginS: 0.1, lengthS: 0.06, hz: 988 },
    { beginS: 0.2, lengthS: 0.06, hz: 1245 },
    { beginS: 0.3, lengthS: 0.12, hz: 1568 },
  ],
  // One knock.
  marker: [{ beginS: 0, lengthS: 0.1, hz: 1047 }],
  // Three steps down, each longer and later than the one before: it runs out.
  lost: [
    { beginS: 0, lengthS: 0.08, hz: 932 },
    { beginS: 0.16, lengthS: 0.14, hz: 740 },
    { beginS: 0.44, lengthS: 0.34, hz: 554 },
  ],
  // A long note, then three quick ones on the step above: it is caught.
  back: [
    { beginS: 0, lengthS: 0.28, hz: 622 },
    { beginS: 0.36, lengthS: 0.07, hz: 932 },
    { beginS: 0.48, lengthS: 0.07, hz: 932 },
    { beginS: 0.6, lengthS: 0.07, hz: 932 },
  ],
  // Long, short, short, long, long: up, down, up, up.
  finish: [
    { beginS: 0, lengthS: 0.2, hz: 659 },
    { beginS: 0.24, lengthS: 0.07, hz: 880 },
    { beginS: 0.36, lengthS: 0.07, hz: 659 },
    { beginS: 0.48, lengthS: 0.2, hz: 880 },
    { beginS: 0.72, lengthS: 0.5, hz: 1319 },
  ],
};

/** Length of a tone in seconds, to the end of its last note. */
export const toneDurationS = (tone: Tone): number =>
  Math.max(...NOTES[tone].map((note) => note.beginS + note.lengthS));
