import type { Leg } from '../../core/plan/practicePlan.ts';
import { type DistanceUnit, metresPer } from '../../core/units/units.ts';
import { pace, span, unitName } from '../format.ts';

/** How long a leg is, as it reads. */
export const extentText = ({ extent }: Leg, unit: DistanceUnit): string => {
  if (extent.by === 'press') return 'until you press';
  if (extent.by === 'time') return span(extent.timeS);
  return extent.distanceM < 1000 || unit === 'km'
    ? `${extent.distanceM} m`
    : `${(extent.distanceM / metresPer(unit)).toFixed(2)} mi`;
};

/** What it asks. */
export const targetText = ({ target }: Leg, unit: DistanceUnit): string => {
  if (target.by === 'free') return 'as you like';
  return target.by === 'effort' ? target.effort : `${pace(target.paceSPerKm, unit)} /${unitName(unit)}`;
};
