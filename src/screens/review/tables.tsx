import { t } from '../../languages/text.ts';
import { distance, pace, unitName } from '../format.ts';
import type { RaceShown } from './charts.tsx';
import { TableBehind } from './details.tsx';

const whole = (x: number): string => String(Math.round(x));

/** The figures behind the drawing of pace: from board to board. */
export const PaceTable = ({ plan, review }: RaceShown) => (
  <TableBehind
    title={t('Pace from board to board, as a table')}
    head={[t('to {unit}', { unit: unitName(plan.unit) }), t('run||as it was run'), t('planned||pace')]}
    rows={review.stretches.map((s) => [
      distance(s.toM, plan.unit, s.toM === plan.distanceM ? 2 : 0),
      pace(s.ranSPerKm, plan.unit),
      pace(s.plannedSPerKm, plan.unit),
    ])}
  />
);

/** Behind the drawing of the heart rate. */
export const HeartTable = ({ plan, review }: RaceShown) => (
  <TableBehind
    title={t('Heart rate from board to board, as a table')}
    head={[t('to {unit}', { unit: unitName(plan.unit) }), t('beats a minute')]}
    rows={review.stretches.map((s) => [
      distance(s.toM, plan.unit, s.toM === plan.distanceM ? 2 : 0),
      s.heartBpm === null ? '–' : whole(s.heartBpm),
    ])}
  />
);

/** Behind the drawing of the course's heights. */
export const HeightTable = ({ plan, review }: RaceShown) => (
  <TableBehind
    title={t('Height at each board, as a table')}
    head={[unitName(plan.unit), t('metres')]}
    rows={review.stretches.map((s) => [
      distance(s.toM, plan.unit, s.toM === plan.distanceM ? 2 : 0),
      s.heightM === null ? '–' : whole(s.heightM),
    ])}
  />
);
