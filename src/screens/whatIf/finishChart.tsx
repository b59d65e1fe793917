import { finishText } from '../../core/prepare/whatIf/text.ts';
import type { Tally } from '../../core/prepare/whatIf/whatIf.ts';
import { t } from '../../languages/text.ts';
import { span } from '../format.ts';
import { useWidth } from '../parts/width.ts';
import { TableBehind } from '../review/details.tsx';

const HEIGHT = 100;
const SIDE = 44;
const MIDDLE_Y = 52;

/** Four in five finishes as a bar, the middle one as a stroke, the goal hanging over it. */
const FinishMarks = ({ tally, goalS }: { tally: Tally; goalS: number }) => {
  const [ref, width] = useWidth<HTMLElement>();
  const { quick, middle, slow } = tally.finishS;
  const from = Math.min(quick, goalS);
  const to = Math.max(slow, goalS);
  const room = (to - from) * 0.05 || 1;
  const x = (s: number): number => SIDE + ((s - from + room) / (to - from + 2 * room)) * (width - 2 * SIDE);
  return (
    <figure class="chart" ref={ref}>
      <figcaption>{t('Four in five finishes; the stroke is the middle one')}</figcaption>
      <svg
        width={width}
        height={HEIGHT}
        role="img"
        aria-label={t('Finishes from {quick} to {slow}, middle {middle}', {
          quick: finishText(quick),
          slow: finishText(slow),
          middle: finishText(middle),
        })}
      >
        <rect class="range-likely" x={x(quick)} y={MIDDLE_Y - 11} width={x(slow) - x(quick)} height="22" />
        <path class="range-middle" d={`M${x(middle)} ${MIDDLE_Y - 11}v22`} />
        <text class="tick" x={x(quick)} y={MIDDLE_Y + 30} text-anchor="middle">
          {finishText(quick)}
        </text>
        <text class="tick" x={x(slow)} y={MIDDLE_Y + 30} text-anchor="middle">
          {finishText(slow)}
        </text>
        <path class="range-goal" d={`M${x(goalS)} ${MIDDLE_Y - 11}l-6-10h12z`} />
        <text class="tick tick-down" x={x(goalS)} y={MIDDLE_Y - 28} text-anchor="middle">
          {t('goal {time}', { time: span(goalS) })}
        </text>
      </svg>
    </figure>
  );
};

/** The finishes as a drawing, and the same as a table. */
export const FinishChart = (props: { tally: Tally; goalS: number }) => {
  const { quick, middle, slow } = props.tally.finishS;
  return (
    <>
      <FinishMarks {...props} />
      <TableBehind
        title={t('The finishes as a table')}
        head={[t('what||of the finishes'), t('time')]}
        rows={[
          [t('one in ten is quicker than'), finishText(quick)],
          [t('middle'), finishText(middle)],
          [t('one in ten is slower than'), finishText(slow)],
          [t('goal'), span(props.goalS)],
        ]}
      />
    </>
  );
};
