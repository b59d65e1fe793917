import { type DistanceUnit, metresPer } from '../../core/units/units.ts';

export interface Scale {
  readonly x: (distanceM: number) => number;
  readonly y: (seconds: number) => number;
}

interface Sample {
  readonly distanceM: number;
  readonly aheadS: number;
  readonly aheadSdS: number;
}

/** 19 times in 20. */
const BAND_SDS = 1.96;

const TOPS_S = [10, 20, 40, 60, 120, 240, 600, 1200, 3600];

/** The largest drift that the chart must hold with its band, as a round number of seconds. */
export const niceTopS = (samples: readonly Sample[]): number => {
  const most = samples.reduce((m, s) => Math.max(m, Math.abs(s.aheadS) + BAND_SDS * s.aheadSdS), 0);
  return TOPS_S.find((top) => most <= top) ?? 7200;
};

const STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];
const TICK_PX = 44;

/** Round distances along the axis, as many as fit. */
export const distanceTicksM = (distanceM: number, unit: DistanceUnit, widthPx: number): number[] => {
  const unitM = metresPer(unit);
  const step = STEPS.find((s) => s >= 1 && (s * unitM * widthPx) / distanceM >= TICK_PX) ?? 50;
  const ticks: number[] = [];
  for (let m = step * unitM; m <= distanceM + 1; m += step * unitM) ticks.push(m);
  return ticks;
};

const at = (x: number, y: number): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

export const linePath = (samples: readonly Sample[], { x, y }: Scale): string =>
  samples.map((s, i) => `${i === 0 ? 'M' : 'L'}${at(x(s.distanceM), y(s.aheadS))}`).join('');

/** The outline of the uncertainty: there along the upper edge, back along the lower. */
export const bandPath = (samples: readonly Sample[], { x, y }: Scale): string => {
  if (samples.length < 2) return '';
  const upper = samples.map((s) => at(x(s.distanceM), y(s.aheadS + BAND_SDS * s.aheadSdS)));
  const lower = samples.map((s) => at(x(s.distanceM), y(s.aheadS - BAND_SDS * s.aheadSdS))).reverse();
  return `M${[...upper, ...lower].join('L')}Z`;
};
