import { type Message, message } from '../units/message.ts';

/** The middle half of a normal distribution lies within this many standard deviations (quartiles). */
export const Z_HALF = 0.674489750196082;
/** The middle four fifths (10th to 90th percentile). */
export const Z_FOUR_FIFTHS = 1.2815515655446;

/** A chance in words that claim no more than the number knows. */
export const chanceText = (chance: number): Message => {
  if (chance < 0.05) return message('less than 1 in 20');
  if (chance > 0.95) return message('more than 19 in 20');
  const tenths = Math.min(9, Math.max(1, Math.round(chance * 10)));
  return tenths === 5 ? message('about even') : message('about {n} in 10', { n: tenths });
};
