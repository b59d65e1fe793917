import { useEffect, useRef } from 'preact/hooks';
import uPlot from 'uplot';
import { decimalUpTo } from '../../core/units/message.ts';
import { shownNumber } from '../../languages/text.ts';
import { useWidth } from '../parts/width.ts';

/** One line of a chart, or the edge of its band. Told apart by dash and width, not by colour alone. */
export interface ChartLine {
  readonly label: string;
  readonly values: readonly (number | null)[];
  readonly stroke: string;
  readonly width?: number;
  readonly dash?: readonly number[];
  /** Drawn as points, not as a line. */
  readonly points?: boolean;
}

export interface ChartProps {
  readonly title: string;
  /** Distance in the plan's unit. */
  readonly xs: readonly number[];
  readonly xUnit: string;
  readonly lines: readonly ChartLine[];
  /** The lines, by their place, between which the band lies. */
  readonly band?: readonly [number, number];
  /** What the band is, for the key. */
  readonly bandLabel?: string;
  /** The upright axis is in seconds, so its marks stand at whole parts of a minute. */
  readonly isTime?: boolean;
  /** How a value of the upright axis reads. */
  readonly format: (value: number) => string;
  readonly upsideDown?: boolean;
  readonly zero?: boolean;
}

const HEIGHT_PX = 240;
export const PAPER = '#ece5d3';
export const DIM = '#aab8c4';
const GRID = '#3a4c5f';
const BAND = 'rgba(170, 184, 196, 0.28)';
/** A digit of the axis, about. */
const DIGIT_PX = 8;

/** Seconds between marks: none of them falls on 1:40. */
const TIME_STEPS_S = [1, 2, 5, 10, 15, 20, 30, 60, 120, 300, 600, 900, 1800, 3600];

const axisOf = (format: (value: number) => string, values: readonly (number | null)[]) => {
  const longest = Math.max(...values.map((v) => (v === null ? 0 : format(v).length)), 3);
  return {
    stroke: DIM,
    grid: { stroke: GRID, width: 1 },
    ticks: { show: false },
    font: '13px sans-serif',
    size: 14 + DIGIT_PX * longest,
    values: (_: uPlot, splits: number[]) => splits.map(format),
  };
};

/** A drawing over distance. What it shows stands as a table behind it, for who does not see it (see details.tsx). */
export const Chart = (props: ChartProps) => {
  const { title, xs, xUnit, lines, band, bandLabel, format, upsideDown, zero, isTime } = props;
  const [box, width] = useWidth<HTMLDivElement>();
  const plot = useRef<uPlot | null>(null);
  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const made = new uPlot(
      {
        width,
        height: HEIGHT_PX,
        cursor: { drag: { x: false, y: false } },
        legend: { show: false },
        scales: {
          x: { time: false },
          y: { dir: upsideDown ? -1 : 1, ...(zero ? { range: rangeWithZero } : {}) },
        },
        axes: [
          {
            ...axisOf((v) => shownNumber(decimalUpTo(v, 4)), [1]),
            size: 34,
            label: xUnit,
            labelSize: 18,
            labelFont: '13px sans-serif',
          },
          {
            ...axisOf(
              format,
              lines.flatMap((l) => [...l.values]),
            ),
            ...(isTime ? { incrs: TIME_STEPS_S } : {}),
          },
        ],
        series: [
          {},
          ...lines.map((l) => ({
            label: l.label,
            stroke: l.stroke,
            width: l.points ? 0 : (l.width ?? 2),
            points: l.points
              ? { show: true, size: 9, stroke: l.stroke, fill: '#0a1018', width: 2 }
              : { show: false },
            ...(l.dash ? { dash: [...l.dash] } : {}),
          })),
        ],
        ...(band ? { bands: [{ series: [band[0] + 1, band[1] + 1] as [number, number], fill: BAND }] } : {}),
      },
      [[...xs], ...lines.map((l) => [...l.values])] as uPlot.AlignedData,
      element,
    );
    plot.current = made;
    return () => made.destroy();
  }, [xs, width, xUnit]);
  return (
    <figure class="chart" aria-label={title}>
      <figcaption>
        <strong>{title}</strong>
        <ul class="keys">
          {lines
            .filter((l) => l.label !== '')
            .map((l) => (
              <li key={l.label}>
                <svg width="34" height="10" aria-hidden="true">
                  {l.points ? (
                    <circle cx="17" cy="5" r="4" fill="none" stroke={l.stroke} stroke-width="2" />
                  ) : (
                    <path
                      d="M0 5h34"
                      stroke={l.stroke}
                      stroke-width={l.width ?? 2}
                      stroke-dasharray={l.dash?.join(' ')}
                    />
                  )}
                </svg>
                {l.label}
              </li>
            ))}
          {bandLabel !== undefined && (
            <li>
              <svg width="34" height="14" aria-hidden="true">
                <rect width="34" height="14" fill={BAND} stroke={DIM} stroke-width="0.5" />
              </svg>
              {bandLabel}
            </li>
          )}
        </ul>
      </figcaption>
      <div ref={box} class="plot" aria-hidden="true" />
    </figure>
  );
};

const rangeWithZero = (_: uPlot, min: number, max: number): [number, number] => {
  const spare = 0.08 * Math.max(4, Math.max(max, 0) - Math.min(min, 0));
  return [Math.min(min, 0) - spare, Math.max(max, 0) + spare];
};
