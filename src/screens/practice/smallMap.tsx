import type { CourseLine } from '../../core/course/line.ts';
import { t } from '../../languages/text.ts';

const WIDTH = 280;
const HEIGHT = 160;
const MARGIN = 12;
/** More points than this nobody sees on so small a drawing. */
const MOST_POINTS = 400;

/** A course as a line, small. North is up. */
export const SmallMap = ({ line, name }: { line: CourseLine; name: string }) => {
  const every = Math.max(1, Math.ceil(line.eastM.length / MOST_POINTS));
  const shown = Array.from(line.eastM, (east, i) => ({ east, north: line.northM[i] as number })).filter(
    (_, i) => i % every === 0 || i === line.eastM.length - 1,
  );
  const west = Math.min(...shown.map((p) => p.east));
  const south = Math.min(...shown.map((p) => p.north));
  const acrossM = Math.max(1, Math.max(...shown.map((p) => p.east)) - west);
  const upM = Math.max(1, Math.max(...shown.map((p) => p.north)) - south);
  const scale = Math.min((WIDTH - 2 * MARGIN) / acrossM, (HEIGHT - 2 * MARGIN) / upM);
  const x = (east: number): string => ((WIDTH - scale * acrossM) / 2 + scale * (east - west)).toFixed(1);
  const y = (north: number): string => ((HEIGHT + scale * upM) / 2 - scale * (north - south)).toFixed(1);
  return (
    <svg
      class="small-map"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={t('The course, {name}, drawn as a line', { name })}
    >
      <path class="map-line" d={`M${shown.map((p) => `${x(p.east)} ${y(p.north)}`).join('L')}`} />
    </svg>
  );
};
