import type { Speak, Speech } from './flite.ts';
import type { Sound } from './wav.ts';

/** The words that stand before and after a clip when it is spoken, and are cut away. */
export interface Carrier {
  readonly before: string;
  readonly after: string;
}

const PAUSE = 'pau';

const phonesOf = ({ segments }: Speech): readonly string[] =>
  segments.map(({ phone }) => phone).filter((phone) => phone !== PAUSE);

/**
 * A clip as it sounds in the middle of a sentence: said inside its carrier and cut out at the borders of the speech
 * sounds. Said alone, 'ahead by' would fall and drag as at the end of a sentence.
 */
export const speakInCarrier = async (
  speak: Speak,
  text: string,
  { before, after }: Carrier,
  stretch: number,
): Promise<Sound> => {
  const whole = await speak([before, text, after].filter(Boolean).join(' '), stretch);
  const skip = before === '' ? 0 : phonesOf(await speak(before, stretch)).length;
  const keep = after === '' ? phonesOf(whole).length - skip : phonesOf(await speak(text, stretch)).length;
  const spoken = whole.segments.filter(({ phone }) => phone !== PAUSE);
  const { samples, rateHz } = whole.sound;
  const startS = skip === 0 ? 0 : (spoken[skip - 1]?.endS ?? 0);
  const endS = after === '' ? samples.length / rateHz : (spoken[skip + keep - 1]?.endS ?? 0);
  return { samples: samples.slice(Math.round(startS * rateHz), Math.round(endS * rateHz)), rateHz };
};
