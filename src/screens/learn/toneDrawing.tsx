import type { Tone } from '../../core/cues/voicePort.ts';
import { t } from '../../languages/text.ts';
import type { LearnModel } from '../../session/ear/learnModel.ts';
import { TONE_TEXTS } from './toneTexts.ts';

const WIDTH = 240;
const HEIGHT = 72;
const EDGE = 6;
/** The pitches lie above, the pulses in a strip below. */
const PITCH = { top: 8, bottom: 44 };
const PULSE = { top: 56, height: 10 };

const x = (share: number): number => EDGE + share * (WIDTH - 2 * EDGE);
const y = (height: number): number => PITCH.bottom - height * (PITCH.bottom - PITCH.top);

/** When and how high a tone sounds; below, when it is felt. Told by shape alone, no colour needed. */
export const ToneDrawing = ({ tone, model }: { tone: Tone; model: LearnModel }) => {
  const { notes, pulses } = model.shapeOf(tone);
  return (
    <svg
      class="tone-drawing"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={t(TONE_TEXTS[tone].looks)}
    >
      <path class="tone-ground" d={`M0 ${PULSE.top - 6}H${WIDTH}`} />
      {notes.map((note) => (
        <path
          key={note.from}
          class="tone-note"
          d={`M${x(note.from)} ${y(note.low)}L${x(note.to)} ${y(note.high)}`}
        />
      ))}
      {pulses.map(({ from, to }) => (
        <rect
          key={from}
          class="tone-pulse"
          x={x(from)}
          y={PULSE.top}
          width={x(to) - x(from)}
          height={PULSE.height}
        />
      ))}
    </svg>
  );
};
