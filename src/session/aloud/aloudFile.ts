import type { Aloud } from '../../core/aloud/aloud.ts';
import type { Tone, Utterance } from '../../core/cues/voicePort.ts';
import { type Message, message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import { layStrip, type SourceOf, type Strip, type Timed } from '../../voice/file/strip.ts';
import type { VttCue } from '../../voice/file/webVtt.ts';
import { toneDurationS } from '../../voice/tones/family.ts';

/** One line of what the file says: seconds from the start of the race or session. */
export interface AloudLine {
  readonly atS: number;
  readonly utterance: Utterance;
  /** What a reader sees for it; for a tone what it means. */
  readonly text: string;
  readonly atM: number | null;
}

const TONE_TEXTS: Partial<Record<Tone, Message>> = {
  marker: message('One knock: it plays'),
  countdown: message('Countdown: three notes, the long fourth is the start'),
  finish: message('Five notes: the end'),
};
const toneText = (tone: Tone): string => t(TONE_TEXTS[tone] ?? tone);

const toneAlone = (tone: Tone): Utterance => ({
  text: '',
  parts: [{ sound: { tone }, offsetS: 0 }],
  durationS: toneDurationS(tone),
});

/** Everything that sounds, in the order of time. */
export const linesOf = ({ calls, tones }: Aloud): readonly AloudLine[] =>
  [
    ...calls.map(({ atS, utterance, atM }) => ({ atS, utterance, text: utterance.text, atM })),
    ...tones.map(({ atS, tone }) => ({
      atS,
      utterance: toneAlone(tone),
      text: toneText(tone),
      atM: null,
    })),
  ].sort((a, b) => a.atS - b.atS);

/** The lines on the grid of frames; the file begins `leadS` before the start. */
export const stripOf = (
  lines: readonly AloudLine[],
  totalS: number,
  leadS: number,
  sourceOf: SourceOf,
): Strip => {
  const timed: readonly Timed[] = lines.map(({ atS, utterance }) => ({ atS: leadS + atS, utterance }));
  return layStrip(timed, sourceOf, leadS + totalS);
};

/** The same calls as text, at the times that they have in the file. */
export const cuesOf = (lines: readonly AloudLine[], { beginsS }: Strip): readonly VttCue[] =>
  lines.map(({ utterance, text }, i) => {
    const fromS = beginsS[i] ?? 0;
    return { fromS, toS: fromS + utterance.durationS, text };
  });
