import { useMemo } from 'preact/hooks';
import type { RunFacts } from '../../core/review/trend.ts';
import { t } from '../../languages/text.ts';
import { span } from '../format.ts';
import { Chart, DIM, PAPER } from '../review/chart.tsx';

const MS_PER_WEEK = 7 * 86_400_000;
const TWO_SIDED_95 = 1.96;

/** The pace held over threshold work, session by session, with what each can be off. Its table is the list below it. */
export const ThresholdOver = ({ facts }: { facts: readonly RunFacts[] }) => {
  const held = useMemo(
    () =>
      facts
        .flatMap((f) => (f.threshold === null ? [] : [{ ...f.threshold, atMs: f.atMs }]))
        .sort((a, b) => a.atMs - b.atMs),
    [facts],
  );
  const lastMs = held.at(-1)?.atMs ?? 0;
  const made = useMemo(
    () => ({
      xs: held.map((h) => (h.atMs - lastMs) / MS_PER_WEEK),
      lines: [
        {
          label: '',
          values: held.map((h) => h.paceSPerKm + TWO_SIDED_95 * h.sdSPerKm),
          stroke: DIM,
          width: 0.5,
        },
        {
          label: '',
          values: held.map((h) => h.paceSPerKm - TWO_SIDED_95 * h.sdSPerKm),
          stroke: DIM,
          width: 0.5,
        },
        { label: '', values: held.map((h) => h.paceSPerKm), stroke: PAPER },
        { label: t('a session'), values: held.map((h) => h.paceSPerKm), stroke: PAPER, points: true },
      ],
    }),
    [held],
  );
  return held.length < 2 ? null : (
    <Chart
      title={t('Threshold pace per km (quicker is higher)')}
      xUnit={t('weeks, up to the last')}
      band={[0, 1]}
      bandLabel={t('19 times in 20 within')}
      upsideDown
      isTime
      format={(v) => span(v)}
      {...made}
    />
  );
};
