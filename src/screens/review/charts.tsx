import { useMemo } from 'preact/hooks';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import type { Digest } from '../../core/review/digest.ts';
import type { RanOpening } from '../../core/review/parts.ts';
import type { Review } from '../../core/review/review.ts';
import { decimal, type Message, message } from '../../core/units/message.ts';
import { metresPer, pacePer } from '../../core/units/units.ts';
import { screenLanguage, t } from '../../languages/text.ts';
import type { OpenRun } from '../../session/review/reviewModel.ts';
import { distance, pace, span, unitName } from '../format.ts';
import { Chart, DIM, PAPER } from './chart.tsx';
import { TableBehind } from './details.tsx';
import { HeartTable, HeightTable, PaceTable } from './tables.tsx';

export interface RaceShown {
  readonly plan: RacePlan;
  readonly digest: Digest;
  readonly review: Review;
  readonly run: OpenRun;
}

const UP = '#7fe0dc';
const DOWN = '#ffb35c';
const TWO_SIDED_95 = 1.96;

/** `+4`, `−12`, `0`: up and down as seconds. */
export const signed = (s: number): string => {
  const whole = Math.round(s);
  return whole === 0
    ? '0'
    : `${whole > 0 ? '+' : '−'}${Math.abs(whole) < 100 ? Math.abs(whole) : span(Math.abs(whole))}`;
};

const xsOf = ({ plan, digest }: RaceShown): readonly number[] =>
  digest.samples.map((s) => s.distanceM / metresPer(plan.unit));

/** Seconds ahead or behind over the way, with the band that holds the truth nineteen times in twenty; calls as rings. */
export const DriftOver = (shown: RaceShown) => {
  const { plan, digest, review } = shown;
  const made = useMemo(() => {
    const { samples, calls } = digest;
    const near = samples.map((s, i) => {
      const next = samples[i + 1]?.distanceM ?? Number.POSITIVE_INFINITY;
      const said = calls.some(
        (c) => c.distanceM !== null && c.distanceM >= s.distanceM && c.distanceM < next,
      );
      return said ? s.aheadS : null;
    });
    return {
      xs: xsOf(shown),
      lines: [
        {
          label: '',
          values: samples.map((s) => s.aheadS + TWO_SIDED_95 * s.aheadSdS),
          stroke: DIM,
          width: 0.5,
        },
        {
          label: '',
          values: samples.map((s) => s.aheadS - TWO_SIDED_95 * s.aheadSdS),
          stroke: DIM,
          width: 0.5,
        },
        { label: t('seconds ahead (+) or behind (−)'), values: samples.map((s) => s.aheadS), stroke: PAPER },
        { label: t('a call sounded'), values: near, stroke: UP, points: true },
        { label: t('on plan'), values: samples.map(() => 0), stroke: DOWN, width: 1.5, dash: [7, 5] },
      ],
    };
  }, [digest, screenLanguage.value]);
  const unit = unitName(plan.unit);
  return (
    <>
      <Chart
        title={t('Ahead or behind, over the distance')}
        xUnit={unit}
        band={[0, 1]}
        bandLabel={t('19 times in 20 within')}
        zero
        isTime
        format={(v) => signed(v)}
        {...made}
      />
      <TableBehind
        title={t('Splits against plan, as a table')}
        open
        head={[unit, t('time'), t('split'), t('planned'), t('ahead or behind, s')]}
        rows={review.splits.map((s) => [
          distance(s.atM, plan.unit, s.atM === plan.distanceM ? 2 : 0),
          span(s.timeS),
          span(s.splitS),
          span(s.plannedSplitS),
          signed(s.aheadS),
        ])}
      />
    </>
  );
};

/** A pace slower than this is standing or walking through a station: it would flatten all the rest. */
const SLOWEST_SHOWN = 1.6;

const smoothed = (digest: Digest): (number | null)[] =>
  digest.samples.map((_, i, all) => {
    const [a, b] = [all[Math.max(0, i - 3)], all[Math.min(all.length - 1, i + 3)]];
    return a && b && b.distanceM > a.distanceM
      ? ((b.atS - a.atS) / (b.distanceM - a.distanceM)) * 1000
      : null;
  });

/** Pace as run and as planned; quicker is higher. */
export const PaceOver = (shown: RaceShown) => {
  const { plan, digest, review } = shown;
  const made = useMemo(() => {
    const ran = smoothed(digest);
    return {
      xs: xsOf(shown),
      lines: [
        {
          label: t('planned'),
          values: review.plannedSPerKm.map((p) => pacePer(plan.unit, p)),
          stroke: DOWN,
          width: 1.5,
          dash: [7, 5],
        },
        {
          label: t('run||as it was run'),
          values: ran.map((p, i) =>
            p === null || p > SLOWEST_SHOWN * (review.plannedSPerKm[i] ?? p) ? null : pacePer(plan.unit, p),
          ),
          stroke: PAPER,
        },
      ],
    };
  }, [digest, screenLanguage.value]);
  return (
    <>
      <Chart
        title={t('Pace, per {unit} (quicker is higher)', { unit: unitName(plan.unit) })}
        xUnit={unitName(plan.unit)}
        upsideDown
        isTime
        format={(v) => span(v)}
        {...made}
      />
      <PaceTable {...shown} />
    </>
  );
};

/** Heart rate, where a belt was worn. */
export const HeartOver = (shown: RaceShown) => {
  const { plan, digest } = shown;
  const made = useMemo(
    () => ({
      xs: xsOf(shown),
      lines: [{ label: t('beats a minute'), values: digest.samples.map((s) => s.heartBpm), stroke: PAPER }],
    }),
    [digest, screenLanguage.value],
  );
  if (digest.samples.every((s) => s.heartBpm === null)) return null;
  return (
    <>
      <Chart
        title={t('Heart rate')}
        xUnit={unitName(plan.unit)}
        format={(v) => String(Math.round(v))}
        {...made}
      />
      <HeartTable {...shown} />
    </>
  );
};

/** Heights of the course. */
export const HeightOver = (shown: RaceShown) => {
  const { plan, run } = shown;
  const { course } = run.read;
  const made = useMemo(() => {
    const heights = course?.elevationM;
    if (course == null || heights == null) return null;
    return {
      xs: Array.from(course.alongM, (m) => m / metresPer(plan.unit)),
      lines: [{ label: t('metres'), values: Array.from(heights), stroke: PAPER }],
    };
  }, [course, screenLanguage.value]);
  return (
    made && (
      <>
        <Chart
          title={t('Height')}
          xUnit={unitName(plan.unit)}
          format={(v) => String(Math.round(v))}
          {...made}
        />
        <HeightTable {...shown} />
      </>
    )
  );
};

/** What the finish was thought to be, at each checkpoint. */
export const Projections = ({ plan, digest, review }: RaceShown) => (
  <TableBehind
    title={t('Projected finish at each checkpoint')}
    head={[
      unitName(plan.unit),
      t('time'),
      t('ahead or behind, s'),
      t('projected'),
      t('give or take'),
      t('it was||finish time in the end'),
    ]}
    rows={review.projected.map((p) => [
      distance(p.atM, plan.unit, 1),
      span(p.timeS),
      signed(p.aheadS),
      p.projectedS === null ? '–' : span(p.projectedS),
      span(TWO_SIDED_95 * p.projectedSdS),
      digest.finishS === null ? '–' : span(digest.finishS),
    ])}
  />
);

const VERDICTS: Readonly<Record<RanOpening['verdict'], Message>> = {
  capped: message('as planned||pace of the opening'),
  tooQuick: message('too quick||pace of the opening'),
  slow: message('slow||pace of the opening'),
};

/** What stations cost, and how the opening and reception were. */
export const Facts = ({ plan, digest, review }: RaceShown) => {
  const { opening, fade, stations } = review;
  const unit = unitName(plan.unit);
  return (
    <dl class="facts">
      {opening && (
        <>
          <dt>
            {t('Opening to {distance} {unit}', { distance: distance(opening.untilM, plan.unit, 1), unit })}
          </dt>
          <dd>
            {t('{run} run, {planned} planned per {unit}: {verdict}', {
              run: pace(opening.ranSPerKm, plan.unit),
              planned: pace(opening.plannedSPerKm, plan.unit),
              unit,
              verdict: VERDICTS[opening.verdict],
            })}
          </dd>
        </>
      )}
      {fade && (
        <>
          <dt>{t('Second half against the first')}</dt>
          <dd>
            {fade.share > 0
              ? t('{percent} % slower, hills and changes of target taken out', {
                  percent: decimal(100 * fade.share, 1),
                })
              : t('{percent} % quicker, hills and changes of target taken out', {
                  percent: decimal(-100 * fade.share, 1),
                })}
          </dd>
        </>
      )}
      {stations.length > 0 && (
        <>
          <dt>{t('Stations')}</dt>
          <dd>
            {stations
              .map((s) => `${distance(s.atM, plan.unit, 1)} ${unit}: ${signed(-s.lostS)} s`)
              .join(', ')}
          </dd>
        </>
      )}
      <dt>{t('Signal')}</dt>
      <dd>
        {t('good for {percent} % of the run; the longest gap {gap} s; {fixes} fixes, {unused} left out', {
          percent: Math.round(100 * review.goodShare),
          gap: Math.round(digest.longestGapS),
          fixes: digest.fixes,
          unused: digest.unused,
        })}
      </dd>
    </dl>
  );
};
