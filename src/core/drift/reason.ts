import { decimal, type Message, message } from '../units/message.ts';
import type { Sum } from './departure.ts';

/** Why a departure from the plan was spoken of. */
export const paceReason = (side: 'quick' | 'slow', { mean, forS }: Pick<Sum, 'mean' | 'forS'>): Message => {
  const values = { percent: decimal(100 * mean, 1), s: Math.round(forS) };
  return side === 'quick'
    ? message('{percent} % too quick for {s} s', values)
    : message('{percent} % too slow for {s} s', values);
};
