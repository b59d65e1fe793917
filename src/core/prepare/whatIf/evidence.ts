import { type Message, message } from '../../units/message.ts';
import { PRACTICE, read, type Source } from '../source.ts';

/** What the simulation rests on and what it does not know, for the lines beneath its answer. */
export const WHAT_IF_EVIDENCE: readonly Source[] = [
  read(message('Abbiss and Laursen 2008: over two minutes and more an even pace tends to serve best')),
  read(
    message(
      'Nikolaidis et al. 2019, 7258 half marathoners: each stretch slower than the one before, about 4 % in all',
    ),
  ),
  read(
    message(
      'Hanley 2015, world half-marathon championships: most start fast and slow after 5 km; the best are more even',
    ),
  ),
  read(
    message(
      'Smyth 2018, 1.7 million marathons: fast starts go with slower finishes. Seen, not tried: quick starters also differ in ability',
    ),
  ),
  {
    ...PRACTICE,
    text: message(
      "That tiredness adds up along Riegel's curve, how late a runner notices, wander and seconds at stations are our own assumptions",
    ),
  },
];

export const WHAT_IF_LIMITS: readonly Message[] = [
  message(
    'A model, not a forecast. It takes your result as given, and everybody in it runs by the plan until the legs say no.',
  ),
  message('It knows no heat, wind, crowd, cramp or stomach, and nobody who gives up.'),
  message(
    'No trial has tested a quick opening in the half marathon. Take differences of a few seconds as none.',
  ),
];
