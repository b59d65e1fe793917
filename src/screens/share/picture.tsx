import { useMemo } from 'preact/hooks';
import { t } from '../../languages/text.ts';
import { drawCode } from '../../share/picture.ts';

/** One path for all dark squares: runs of a row as rectangles. */
const pathOf = (rows: readonly (readonly boolean[])[]): string =>
  rows
    .flatMap((row, y) => {
      const runs: string[] = [];
      let from = -1;
      for (let x = 0; x <= row.length; x++) {
        if (row[x] === true && from < 0) from = x;
        if (row[x] !== true && from >= 0) {
          runs.push(`M${from} ${y}h${x - from}v1h${from - x}z`);
          from = -1;
        }
      }
      return runs;
    })
    .join('');

/** A text as a picture code, dark on white as every reader wants it. */
export const Code = ({ text }: { text: string }) => {
  const rows = useMemo(() => drawCode(text), [text]);
  return (
    <svg
      class="code"
      viewBox={`0 0 ${rows.length} ${rows.length}`}
      shape-rendering="crispEdges"
      role="img"
      aria-label={t('The plan as a picture code')}
    >
      <rect width={rows.length} height={rows.length} fill="#fff" />
      <path d={pathOf(rows)} fill="#000" />
    </svg>
  );
};
