import { type Message, message } from '../../units/message.ts';
import { PRACTICE, type Source } from '../source.ts';

/** What to wear between the warm-up and the gun, and take off in the pen. */
export interface Layers {
  readonly text: Message;
  readonly source: Source;
}

/** Air temperatures, degrees Celsius (common practice, no source). */
const COLD_C = 8;
const COOL_C = 15;
const WARM_C = 21;

const textFor = (temperatureC: number | null): Message => {
  if (temperatureC === null)
    return message(
      'Take an old top, or a bin bag with holes for head and arms; take it off just before the gun.',
    );
  if (temperatureC < COLD_C)
    return message(
      'An old warm top, a bin bag with holes for head and arms over it, and gloves; take them off just before the gun.',
    );
  if (temperatureC < COOL_C)
    return message('An old top, or a bin bag with holes for head and arms; take it off just before the gun.');
  if (temperatureC < WARM_C)
    return message('Nothing over the race kit, unless it rains or blows: then a bin bag with holes.');
  return message('Nothing over the race kit. Stand in the shade, and wet your head if there is water.');
};

/** Layers to throw away, by temperature; null where it is not known. */
export const layersFor = (temperatureC: number | null): Layers => ({
  text: textFor(temperatureC),
  source: PRACTICE,
});
