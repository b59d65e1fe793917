import type { RacePlan } from '../../core/plan/racePlan.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import { distance, unitName } from '../format.ts';
import { distanceTicksM } from './chartPaths.ts';

/** Of the numbers below a drawing from its lower edge, and of those beside it from its left one. */
const NUMBER_PX = 8;

interface WayAxisProps {
  readonly distanceM: number;
  readonly unit: DistanceUnit;
  readonly x: (distanceM: number) => number;
  /** Of the whole picture. */
  readonly height: number;
  /** From here to there each number has a line up the drawing; left out: none. */
  readonly lines?: { readonly topY: number; readonly bedY: number };
}

/** Round distances under a drawing along the way, the unit at its left. */
export const WayAxis = ({ distanceM, unit, x, height, lines }: WayAxisProps) => (
  <>
    {distanceTicksM(distanceM, unit, x(distanceM) - x(0)).map((m) => (
      <g key={m}>
        {lines !== undefined && <path class="grid" d={`M${x(m)} ${lines.topY}V${lines.bedY}`} />}
        <text class="tick" x={x(m)} y={height - NUMBER_PX} text-anchor="middle">
          {distance(m, unit, 0)}
        </text>
      </g>
    ))}
    <text class="tick" x={x(0) - NUMBER_PX} y={height - NUMBER_PX} text-anchor="end">
      {unitName(unit)}
    </text>
  </>
);

interface SecondsAxisProps {
  /** What is written, above zero for ahead. */
  readonly ticksS: readonly number[];
  readonly y: (seconds: number) => number;
  readonly left: number;
  readonly width: number;
}

/** Seconds beside a drawing, each with its line. */
export const SecondsAxis = ({ ticksS, y, left, width }: SecondsAxisProps) => (
  <>
    {ticksS.map((s) => (
      <g key={s}>
        <path class="grid" d={`M${left} ${y(s)}h${width}`} />
        <text
          class={s === 0 ? 'tick' : s > 0 ? 'tick tick-up' : 'tick tick-down'}
          x={left - NUMBER_PX}
          y={y(s) + 4}
          text-anchor="end"
        >
          {Math.abs(s)}
        </text>
      </g>
    ))}
  </>
);

interface WayMarksProps {
  readonly plan: RacePlan;
  readonly x: (distanceM: number) => number;
  /** Middle of the marks. */
  readonly y: number;
}

/** What is on the way: stations as dots, what the runner carries as diamonds. */
export const WayMarks = ({ plan, x, y }: WayMarksProps) => (
  <>
    {plan.stations.map((s) => (
      <circle key={s.atM} class="station-mark" cx={x(s.atM)} cy={y} r="4" />
    ))}
    {plan.fuel.map((f) => (
      <path key={f.atM} class="fuel-mark" d={`M${x(f.atM)} ${y - 6}l5 6-5 6-5-6z`} />
    ))}
  </>
);
