import { roughDurationText } from '../../core/prepare/format.ts';
import type { Prediction } from '../../core/prepare/goal/predict.ts';
import { t } from '../../languages/text.ts';
import { span } from '../format.ts';
import { useWidth } from '../parts/width.ts';
import { TableBehind } from '../review/details.tsx';

const HEIGHT = 118;
const SIDE = 44;
const MIDDLE_Y = 58;

/** The range as depth below a line: the longer the mark, the likelier; the goal hangs on it. */
const RangeMarks = ({ prediction, goalS }: { prediction: Prediction; goalS: number }) => {
  const [ref, width] = useWidth<HTMLElement>();
  const { wide, likely, middleS } = prediction;
  const from = Math.min(wide.quickS, goalS);
  const to = Math.max(wide.slowS, goalS);
  const room = (to - from) * 0.04 || 1;
  const x = (s: number): number => SIDE + ((s - from + room) / (to - from + 2 * room)) * (width - 2 * SIDE);
  const labels = [
    [likely.quickS, 'quick'],
    [likely.slowS, 'slow'],
  ] as const;
  return (
    <figure class="chart" ref={ref}>
      <figcaption>
        {t(
          'The inner bar holds half of runners with such results, the whole bar four in five. Quicker is left.',
        )}
      </figcaption>
      <svg
        width={width}
        height={HEIGHT}
        role="img"
        aria-label={t('Likely {quick} to {slow}, middle {middle}; goal {goal}', {
          quick: roughDurationText(likely.quickS),
          slow: roughDurationText(likely.slowS),
          middle: roughDurationText(middleS),
          goal: span(goalS),
        })}
      >
        <rect
          class="range-wide"
          x={x(wide.quickS)}
          y={MIDDLE_Y - 12}
          width={x(wide.slowS) - x(wide.quickS)}
          height="24"
        />
        <rect
          class="range-likely"
          x={x(likely.quickS)}
          y={MIDDLE_Y - 12}
          width={x(likely.slowS) - x(likely.quickS)}
          height="24"
        />
        <path class="range-middle" d={`M${x(middleS)} ${MIDDLE_Y - 12}v24`} />
        {labels.map(([s, name]) => (
          <text key={name} class="tick" x={x(s)} y={MIDDLE_Y + 30} text-anchor="middle">
            {roughDurationText(s)}
          </text>
        ))}
        <text class="tick" x={x(middleS)} y={MIDDLE_Y + 48} text-anchor="middle">
          {t('middle {time}', { time: roughDurationText(middleS) })}
        </text>
        <path class="range-goal" d={`M${x(goalS)} ${MIDDLE_Y - 11}l-6-10h12z`} />
        <text class="tick tick-down" x={x(goalS)} y={MIDDLE_Y - 34} text-anchor="middle">
          {t('goal {time}', { time: span(goalS) })}
        </text>
      </svg>
    </figure>
  );
};

/** The range as a drawing, and the same as a table. */
export const RangeChart = (props: { prediction: Prediction; goalS: number }) => {
  const { wide, likely, middleS } = props.prediction;
  return (
    <>
      <RangeMarks {...props} />
      <TableBehind
        title={t('The range as a table')}
        head={[t('what||of the range'), t('from||a time'), t('to||a time')]}
        rows={[
          [t('half of runners'), roughDurationText(likely.quickS), roughDurationText(likely.slowS)],
          [t('four in five'), roughDurationText(wide.quickS), roughDurationText(wide.slowS)],
          [t('middle'), roughDurationText(middleS), '–'],
          [t('goal'), span(props.goalS), '–'],
        ]}
      />
    </>
  );
};
