import type { Leg } from '../../core/plan/practicePlan.ts';
import { EFFORT_NAMES } from '../../core/practice/names.ts';
import { decimal } from '../../core/units/message.ts';
import { type DistanceUnit, metresPer } from '../../core/units/units.ts';
import { shownNumber, t } from '../../languages/text.ts';
import { pace, span, unitName } from '../format.ts';

/** How long a leg is, as it reads. */
export const extentText = ({ extent }: Leg, unit: DistanceUnit): string => {
  if (extent.by === 'press') return t('until you press');
  if (extent.by === 'time') return span(extent.timeS);
  return extent.distanceM < 1000 || unit === 'km'
    ? `${extent.distanceM} m`
    : `${shownNumber(decimal(extent.distanceM / metresPer(unit), 2))} mi`;
};

/** What it asks. */
export const targetText = ({ target }: Leg, unit: DistanceUnit): string => {
  if (target.by === 'free') return t('as you like');
  return target.by === 'effort'
    ? t(EFFORT_NAMES[target.effort])
    : `${pace(target.paceSPerKm, unit)} /${unitName(unit)}`;
};
