import type { RacePlan } from '../../core/plan/racePlan.ts';
import { t } from '../../languages/text.ts';
import type { PlanSheet } from '../../session/plan/planCurve.ts';
import { SecondsAxis, WayAxis, WayMarks } from '../parts/wayAxis.tsx';
import { useWidth } from '../parts/width.ts';

const HEIGHT = 210;
const MARGIN = { top: 26, right: 12, bottom: 30, left: 40 };
/** The ground takes the lower part of the drawing, whatever its height. */
const GROUND_SHARE = 0.35;

/** A round number of seconds above the most that the plan has in hand or owes. */
const topOf = (curve: PlanSheet['curve']): number => {
  const most = Math.max(...curve.map((p) => Math.abs(p.inHandS)));
  return [10, 20, 30, 60, 120, 300, 600, 1800].find((top) => most <= top) ?? 3600;
};

/** The plan as a curve: seconds in hand against the goal's mean pace, over the ground of the course. */
export const PlanCurve = ({ plan, sheet }: { plan: RacePlan; sheet: PlanSheet }) => {
  const [ref, width] = useWidth<HTMLElement>();
  const inner = { width: width - MARGIN.left - MARGIN.right, height: HEIGHT - MARGIN.top - MARGIN.bottom };
  const bedY = HEIGHT - MARGIN.bottom;
  const top = topOf(sheet.curve);
  const owes = Math.min(...sheet.curve.map((p) => p.inHandS)) < -0.5;
  const zero = owes ? 0.5 : 0.92;
  const x = (m: number): number => MARGIN.left + (m / plan.distanceM) * inner.width;
  const y = (s: number): number => MARGIN.top + inner.height * zero * (1 - s / top);
  const highest = Math.max(1, ...sheet.ground.map((g) => g.heightM));
  const groundY = (h: number): number => bedY - (h / highest) * inner.height * GROUND_SHARE;
  const path = (points: readonly string[]): string => `M${points.join('L')}`;
  /** The area between the water line and one side of the curve. */
  const between = (side: (inHandS: number) => number): string =>
    `${path(sheet.curve.map((p) => `${x(p.distanceM).toFixed(1)} ${y(side(p.inHandS)).toFixed(1)}`))}L${x(plan.distanceM)} ${y(0)}L${x(0)} ${y(0)}Z`;
  const last = sheet.curve.at(-1);
  return (
    <figure class="chart" ref={ref}>
      <figcaption>
        {sheet.ground.length > 0
          ? t("Seconds in hand against even pace, over the course's {n} m of height", {
              n: Math.round(highest),
            })
          : t('Seconds in hand against even pace')}
        {(plan.stations.length > 0 || plan.fuel.length > 0) && (
          <span class="map-key">
            {plan.stations.length > 0 && <span data-mark="station">{t('station')}</span>}
            {plan.fuel.length > 0 && <span data-mark="fuel">{t('what you carry||a mark')}</span>}
          </span>
        )}
      </figcaption>
      <svg
        width={width}
        height={HEIGHT}
        role="img"
        aria-label={t('The plan ends {n} seconds ahead of even pace', { n: Math.round(last?.inHandS ?? 0) })}
      >
        {sheet.ground.length > 0 && (
          <path
            class="ground"
            d={`${path(sheet.ground.map((g) => `${x(g.distanceM).toFixed(1)} ${groundY(g.heightM).toFixed(1)}`))}L${x(plan.distanceM)} ${bedY}L${MARGIN.left} ${bedY}Z`}
          />
        )}
        <SecondsAxis
          ticksS={owes ? [top, top / 2, 0, -top / 2, -top] : [top, top / 2, 0]}
          y={y}
          left={MARGIN.left}
          width={inner.width}
        />
        <path class="surface" d={`M${MARGIN.left} ${y(0)}h${inner.width}`} />
        <WayAxis distanceM={plan.distanceM} unit={plan.unit} x={x} height={HEIGHT} />
        {plan.checkpointsM.map((m) => (
          <path key={m} class="grid" d={`M${x(m)} ${MARGIN.top}V${bedY}`} />
        ))}
        <WayMarks plan={plan} x={x} y={MARGIN.top - 12} />
        <path class="in-hand" d={between((s) => Math.max(0, s))} />
        <path class="owed" d={between((s) => Math.min(0, s))} />
        <path
          class="curve"
          d={path(sheet.curve.map((p) => `${x(p.distanceM).toFixed(1)} ${y(p.inHandS).toFixed(1)}`))}
        />
      </svg>
    </figure>
  );
};
