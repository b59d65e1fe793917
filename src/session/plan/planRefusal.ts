import { decimalUpTo } from '../../core/units/message.ts';
import type { DoorError } from '../../core/units/result.ts';
import { type DistanceUnit, metresPer } from '../../core/units/units.ts';
import { expectedOf, foundOf } from '../../languages/refusal.ts';
import { shownNumber, t } from '../../languages/text.ts';

/** What the plan file's door says in metres and seconds, as somebody says it who fills in a form. */
const SENTENCES: Readonly<Record<string, (place: string, inUnit: (metres: unknown) => object) => string>> = {
  'a number of metres from {from} to {to}': () => t('Write a distance above 0, such as 10 or 21.1.'),
  'a number of seconds above 0 and at most {n}': () =>
    t('Write a time as hours, minutes and seconds: 1:44:00.'),
  'a pace that a human can run (slower than {n} m/s)': (place) =>
    /goalS$/.test(place)
      ? t('That is quicker than anybody can run. Write hours, minutes and seconds: 1:44:00.')
      : t('That is quicker than anybody can run.'),
  'a place on the course of {n} m': (_, inUnit) =>
    t('The race ends at {distance} {unit}: this lies beyond it.', { ...inUnit('n') }),
  'a place after the opening, which ends at {n} m': (_, inUnit) =>
    t('The opening ends at {distance} {unit}: this lies before that.', { ...inUnit('n') }),
};

/** Why the form makes no plan, as a whole sentence in the runner's own unit. */
export const planRefusal = (error: DoorError, unit: DistanceUnit): string => {
  const expected = expectedOf(error);
  const said = SENTENCES[expected.text];
  if (said === undefined)
    return t('Expected {expected}; found {found}.', { expected, found: foundOf(error) });
  return said(error.place, (name) => ({
    distance: shownNumber(decimalUpTo(Number(expected.values[String(name)]) / metresPer(unit), 2)),
    unit: unit === 'km' ? 'km' : 'mi',
  }));
};
