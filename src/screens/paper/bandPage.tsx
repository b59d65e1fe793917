import { SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { durationText } from '../../core/prepare/format.ts';
import type { BandMark, BandRow, WristBand } from '../../core/prepare/paper/wristBand.ts';
import { t } from '../../languages/text.ts';
import { unitName } from '../format.ts';

/** Lines on one strip: 42 at their least height reach once around a wrist and over the page. */
const LINES = 48;
/** A strip goes once around a wrist of about 17 cm; lines are no higher and no lower than can be read. */
const AROUND_MM = 165;
const LEAST_MM = 4;
const MOST_MM = 6;

const markText = (mark: BandMark): string =>
  `${mark.from === 'fuel' ? '◆' : '○'}\u00a0${t(SUPPLY_NAMES[mark.what])}`;

interface StripProps {
  readonly rows: readonly BandRow[];
  readonly unit: string;
  readonly second: 'safe' | 'dream' | null;
}

/** One strip: outside the place, the clock and what to take; folded behind it the splits and the second goal. */
const Strip = ({ rows, unit, second }: StripProps) => {
  const lineMm = Math.min(MOST_MM, Math.max(LEAST_MM, AROUND_MM / rows.length));
  return (
    <div class="band">
      <table class="band-part" style={{ '--line': `${lineMm.toFixed(2)}mm` }}>
        <thead>
          <tr>
            <th scope="col">{unit}</th>
            <th scope="col">{t('clock||column')}</th>
            <th scope="col" class="band-marks">
              {t('take||column')}
            </th>
            <th scope="col" class="band-fold">
              {t('split||column')}
            </th>
            {second !== null && <th scope="col">{second === 'safe' ? t('safe||goal') : t('dream||goal')}</th>}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.atM} data-bold={row.bold}>
              <th scope="row">{typeof row.label === 'string' ? row.label : t(row.label)}</th>
              <td>{durationText(row.timeS)}</td>
              <td class="band-marks">{row.marks.map(markText).join(' ')}</td>
              <td class="band-fold">{durationText(row.splitS)}</td>
              {second !== null && <td>{row.otherTimeS === null ? '' : durationText(row.otherTimeS)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="band-spare">{t('tape here, under the other end')}</p>
    </div>
  );
};

/** The band at its true size: it goes around the wrist lengthwise. */
export const BandPage = ({ band, second }: { band: WristBand; second: 'safe' | 'dream' | null }) => {
  const strips = Math.max(1, Math.ceil(band.rows.length / LINES));
  const length = Math.ceil(band.rows.length / strips);
  return (
    <article class="sheet-page band-page" aria-label={t('Wrist band')}>
      <header>
        <h2>{t('{name}: wrist band', { name: band.name })}</h2>
        <p>
          {t(
            'Cut along the outer line. Fold along the dashes, so that the clock lies outside and the splits behind it. Wrap it around the wrist and tape the ends together. ○ offered by the race, ◆ yours: each is to be had before the line that it stands in.',
          )}
        </p>
      </header>
      <div class="band-strips">
        {Array.from({ length: strips }, (_, i) => (
          <Strip
            key={i}
            rows={band.rows.slice(i * length, (i + 1) * length)}
            unit={unitName(band.unit)}
            second={second}
          />
        ))}
      </div>
    </article>
  );
};
