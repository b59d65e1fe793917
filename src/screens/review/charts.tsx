import { useMemo } from 'preact/hooks';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import type { Digest } from '../../core/review/digest.ts';
import type { Review } from '../../core/review/review.ts';
import { metresPer, pacePer } from '../../core/units/units.ts';
import type { OpenRun } from '../../session/reviewModel.ts';
import { distance, pace, span, unitName } from '../format.ts';
import { Chart, DIM, PAPER } from './chart.tsx';
import { TableBehind } from './details.tsx';

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
        { label: 'seconds ahead (+) or behind (−)', values: samples.map((s) => s.aheadS), stroke: PAPER },
        { label: 'a call sounded', values: near, stroke: UP, points: true },
        { label: 'on plan', values: samples.map(() => 0), stroke: DOWN, width: 1.5, dash: [7, 5] },
      ],
    };
  }, [digest]);
  const unit = unitName(plan.unit);
  return (
    <>
      <Chart title="Drift" xUnit={unit} band={[0, 1]} zero format={(v) => signed(v)} {...made} />
      <TableBehind
        title="Splits against plan, as a table"
        open
        head={[unit, 'time', 'split', 'planned', 'ahead or behind, s']}
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
          label: 'planned',
          values: review.plannedSPerKm.map((p) => pacePer(plan.unit, p)),
          stroke: DOWN,
          width: 1.5,
          dash: [7, 5],
        },
        {
          label: 'run',
          values: ran.map((p, i) =>
            p === null || p > SLOWEST_SHOWN * (review.plannedSPerKm[i] ?? p) ? null : pacePer(plan.unit, p),
          ),
          stroke: PAPER,
        },
      ],
    };
  }, [digest]);
  return (
    <Chart
      title={`Pace, per ${unitName(plan.unit)} (quicker is higher)`}
      xUnit={unitName(plan.unit)}
      upsideDown
      format={(v) => span(v)}
      {...made}
    />
  );
};

/** Heart rate, where a belt was worn. */
export const HeartOver = (shown: RaceShown) => {
  const { plan, digest } = shown;
  const made = useMemo(
    () => ({
      xs: xsOf(shown),
      lines: [{ label: 'beats a minute', values: digest.samples.map((s) => s.heartBpm), stroke: PAPER }],
    }),
    [digest],
  );
  if (digest.samples.every((s) => s.heartBpm === null)) return null;
  return (
    <Chart title="Heart rate" xUnit={unitName(plan.unit)} format={(v) => String(Math.round(v))} {...made} />
  );
};

/** Heights of the course. */
export const HeightOver = ({ plan, run }: RaceShown) => {
  const { course } = run.read;
  const made = useMemo(() => {
    const heights = course?.elevationM;
    if (course == null || heights == null) return null;
    return {
      xs: Array.from(course.alongM, (m) => m / metresPer(plan.unit)),
      lines: [{ label: 'metres', values: Array.from(heights), stroke: PAPER }],
    };
  }, [course]);
  return (
    made && (
      <Chart title="Height" xUnit={unitName(plan.unit)} format={(v) => String(Math.round(v))} {...made} />
    )
  );
};

/** What the finish was thought to be, at each checkpoint. */
export const Projections = ({ plan, digest, review }: RaceShown) => (
  <TableBehind
    title="Projected finish at each checkpoint"
    head={[unitName(plan.unit), 'time', 'ahead or behind, s', 'projected', 'give or take', 'it was']}
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

/** What stations cost, and how the opening and reception were. */
export const Facts = ({ plan, digest, review }: RaceShown) => {
  const { opening, fade, stations } = review;
  const unit = unitName(plan.unit);
  return (
    <dl class="facts">
      {opening && (
        <>
          <dt>
            Opening to {distance(opening.untilM, plan.unit, 1)} {unit}
          </dt>
          <dd>
            {pace(opening.ranSPerKm, plan.unit)} run, {pace(opening.plannedSPerKm, plan.unit)} planned per{' '}
            {unit}:{' '}
            {opening.verdict === 'capped' ? 'capped' : opening.verdict === 'tooQuick' ? 'not capped' : 'slow'}
          </dd>
        </>
      )}
      {fade && (
        <>
          <dt>Second half against the first</dt>
          <dd>
            {Math.abs(100 * fade.share).toFixed(1)} % {fade.share > 0 ? 'slower' : 'quicker'}, hills and legs
            taken out
          </dd>
        </>
      )}
      {stations.length > 0 && (
        <>
          <dt>Stations</dt>
          <dd>
            {stations
              .map((s) => `${distance(s.atM, plan.unit, 1)} ${unit}: ${signed(-s.lostS)} s`)
              .join(', ')}
          </dd>
        </>
      )}
      <dt>Signal</dt>
      <dd>
        good for {Math.round(100 * review.goodShare)} % of the run; the longest gap{' '}
        {Math.round(digest.longestGapS)} s; {digest.fixes} fixes, {digest.unused} left out
      </dd>
    </dl>
  );
};
