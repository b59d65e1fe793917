import { message, plural } from '../../core/units/message.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import type { DriftSample } from '../../session/run/runCell.ts';
import { distance, unitName } from '../format.ts';
import { bandPath, linePath, niceTopS, type Scale } from './chartPaths.ts';
import { SecondsAxis, WayAxis } from './wayAxis.tsx';
import { useWidth } from './width.ts';

const HEIGHT = 220;
const MARGIN = { top: 12, right: 12, bottom: 30, left: 40 };

interface Props {
  readonly samples: readonly DriftSample[];
  readonly distanceM: number;
  readonly unit: DistanceUnit;
  /** Where calls were made. */
  readonly callsM: readonly number[];
}

/** Drift over distance as a tide curve: above the water line is ahead of plan, below is behind. */
export const DriftChart = ({ samples, distanceM, unit, callsM }: Props) => {
  const [ref, width] = useWidth<HTMLElement>();
  const top = niceTopS(samples);
  const inner = { width: width - MARGIN.left - MARGIN.right, height: HEIGHT - MARGIN.top - MARGIN.bottom };
  const scale: Scale = {
    x: (m) => MARGIN.left + (m / distanceM) * inner.width,
    y: (s) => MARGIN.top + (0.5 - s / (2 * top)) * inner.height,
  };
  const waterY = scale.y(0);
  const bedY = HEIGHT - MARGIN.bottom;
  const last = samples.at(-1);
  return (
    <figure class="chart" ref={ref}>
      <figcaption>
        {t('Seconds ahead or behind over the distance; the grey band holds the truth 19 times in 20')}
      </figcaption>
      <svg width={width} height={HEIGHT} role="img" aria-label={spoken(last, unit)}>
        <rect class="water" x={MARGIN.left} y={waterY} width={inner.width} height={bedY - waterY} />
        <SecondsAxis
          ticksS={[top, top / 2, 0, -top / 2, -top]}
          y={scale.y}
          left={MARGIN.left}
          width={inner.width}
        />
        <WayAxis
          distanceM={distanceM}
          unit={unit}
          x={scale.x}
          height={HEIGHT}
          lines={{ topY: MARGIN.top, bedY }}
        />
        <path class="surface" d={`M${MARGIN.left} ${waterY}h${inner.width}`} />
        <text class="side tick-up" x={width - MARGIN.right - 6} y={MARGIN.top + 18} text-anchor="end">
          {t('ahead')}
        </text>
        <text class="side tick-down" x={width - MARGIN.right - 6} y={bedY - 12} text-anchor="end">
          {t('behind')}
        </text>
        <path class="band" d={bandPath(samples, scale)} />
        <path class="curve" d={linePath(samples, scale)} />
        {callsM.map((m) => (
          <path key={m} class="call-mark" d={`M${scale.x(m)} ${bedY}v-7`} />
        ))}
        {last && <circle class="curve-end" cx={scale.x(last.distanceM)} cy={scale.y(last.aheadS)} r="4" />}
      </svg>
    </figure>
  );
};

const spoken = (last: DriftSample | undefined, unit: DistanceUnit): string => {
  if (last === undefined) return t('Nothing to draw yet');
  const place = message('{n} {unit}', { n: distance(last.distanceM, unit, 1), unit: unitName(unit) });
  const seconds = Math.round(Math.abs(last.aheadS));
  return last.aheadS >= 0
    ? t(plural(seconds, 'At {place}: {n} second ahead', 'At {place}: {n} seconds ahead', { place }))
    : t(plural(seconds, 'At {place}: {n} second behind', 'At {place}: {n} seconds behind', { place }));
};
