import type { RacePlan } from '../../core/plan/racePlan.ts';
import { t } from '../../languages/text.ts';
import type { CourseView } from '../../session/course/courseView.ts';
import { distance, unitName } from '../format.ts';
import { rich } from '../parts/rich.tsx';
import { WayAxis, WayMarks } from '../parts/wayAxis.tsx';
import { useWidth } from '../parts/width.ts';

interface Props {
  readonly view: CourseView;
  readonly plan: RacePlan;
  readonly pickedM: number;
  readonly onPick: (atM: number) => void;
}

const HEIGHT = 150;
const MARGIN = { top: 20, right: 12, bottom: 28, left: 40 };
/** A flat course must not look like a mountain: the drawing is at least this high. */
const LEAST_RANGE_M = 40;

/** Heights along the course, with what is on the way; a touch picks a place. */
export const CourseProfile = ({ view, plan, pickedM, onPick }: Props) => {
  const [ref, width] = useWidth<HTMLElement>();
  const inner = { width: width - MARGIN.left - MARGIN.right, height: HEIGHT - MARGIN.top - MARGIN.bottom };
  const bedY = HEIGHT - MARGIN.bottom;
  const heights = view.heights.map((h) => h.heightM);
  const lowest = heights.length > 0 ? Math.min(...heights) : 0;
  const highest = heights.length > 0 ? Math.max(...heights) : 0;
  const range = Math.max(LEAST_RANGE_M, highest - lowest);
  const x = (m: number): number => MARGIN.left + (m / plan.distanceM) * inner.width;
  const y = (h: number): number => bedY - 2 - ((h - lowest) / range) * (inner.height - 2);
  return (
    <>
      <figure class="chart" ref={ref}>
        <figcaption>
          {view.heights.length > 0
            ? t('Height, {lowest} to {highest} m', {
                lowest: String(Math.round(lowest)).replace('-', '−'),
                highest: String(Math.round(highest)).replace('-', '−'),
              })
            : t('The way as a strip; the file holds no heights')}
        </figcaption>
        {/* biome-ignore lint/a11y/useKeyWithClickEvents: the slider below picks the same places by keyboard. */}
        <svg
          width={width}
          height={HEIGHT}
          role="img"
          aria-label={t('Profile of the course')}
          onClick={(event) => {
            const box = event.currentTarget.getBoundingClientRect();
            onPick(((event.clientX - box.left - MARGIN.left) / inner.width) * plan.distanceM);
          }}
        >
          <rect class="strip" x={MARGIN.left} y={MARGIN.top} width={inner.width} height={inner.height} />
          {plan.tunnels?.map((t) => (
            <rect
              key={t.fromM}
              class="strip-tunnel"
              x={x(t.fromM)}
              y={MARGIN.top}
              width={Math.max(2, x(t.toM) - x(t.fromM))}
              height={inner.height}
            />
          ))}
          {view.heights.length > 0 && (
            <path
              class="profile"
              d={`M${view.heights.map((h) => `${x(h.atM).toFixed(1)} ${y(h.heightM).toFixed(1)}`).join('L')}L${x(plan.distanceM)} ${bedY}L${MARGIN.left} ${bedY}Z`}
            />
          )}
          <WayMarks plan={plan} x={x} y={MARGIN.top - 9} />
          <WayAxis distanceM={plan.distanceM} unit={plan.unit} x={x} height={HEIGHT} />
          <path class="strip-picked" d={`M${x(pickedM)} ${MARGIN.top}V${bedY}`} />
        </svg>
      </figure>
      <label class="slide">
        <span>
          {rich('Place: {place} {unit}', {
            place: <span class="figure">{distance(pickedM, plan.unit, 2)}</span>,
            unit: unitName(plan.unit),
          })}
        </span>
        <input
          type="range"
          min="0"
          max={plan.distanceM}
          step="10"
          value={pickedM}
          onInput={(event) => onPick(Number(event.currentTarget.value))}
        />
      </label>
    </>
  );
};
