import { decimal } from '../../core/units/message.ts';
import { shownNumber } from '../../languages/text.ts';

/** A number as the page keeps it, whatever the language: 21.0975. */
const KEPT = /^\s*[+-]?\d+\.\d+\s*$/;

/** The text of an input with the decimal sign of the screens' language; what is no plain number stays as it is. */
export const writtenNumber = (text: string): string =>
  KEPT.test(text) ? text.replace('.', shownNumber(decimal(0.5, 1)).charAt(1)) : text;
