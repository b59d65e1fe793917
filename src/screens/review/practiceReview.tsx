import { useMemo } from 'preact/hooks';
import type { PracticeDigest, RanLeg } from '../../core/review/practiceDigest.ts';
import { type DistanceUnit, pacePer } from '../../core/units/units.ts';
import { distance, pace, span, unitName } from '../format.ts';
import { Chart, PAPER } from './chart.tsx';
import { signed } from './charts.tsx';
import { TableBehind } from './details.tsx';

const legName = ({ kind, rep }: RanLeg): string => (rep ? `${kind} ${rep.count} of ${rep.of}` : kind);

const targetText = ({ target }: RanLeg, unit: DistanceUnit): string =>
  target.by === 'pace' ? pace(target.paceSPerKm, unit) : target.by === 'effort' ? target.effort : 'free';

/** Pace as run and as asked, and heart rate where a belt was worn, over the minutes. */
const Over = ({ digest, unit }: { digest: PracticeDigest; unit: DistanceUnit }) => {
  const made = useMemo(() => {
    const { samples } = digest;
    const per = (p: number | null): number | null => (p === null ? null : pacePer(unit, p));
    return {
      xs: samples.map((s) => s.atS / 60),
      pace: [
        {
          label: 'asked',
          values: samples.map((s) => per(s.askedSPerKm)),
          stroke: '#ffb35c',
          width: 1.5,
          dash: [7, 5],
        },
        { label: 'run', values: samples.map((s) => per(s.paceSPerKm)), stroke: PAPER },
      ],
      heart: [{ label: 'beats a minute', values: samples.map((s) => s.heartBpm), stroke: PAPER }],
    };
  }, [digest]);
  const { samples } = digest;
  return (
    <>
      {samples.some((s) => s.paceSPerKm !== null) && (
        <Chart
          title={`Pace, per ${unitName(unit)} (quicker is higher)`}
          xs={made.xs}
          xUnit="minutes"
          lines={made.pace}
          upsideDown
          format={(v) => span(v)}
        />
      )}
      {samples.some((s) => s.heartBpm !== null) && (
        <Chart
          title="Heart rate"
          xs={made.xs}
          xUnit="minutes"
          lines={made.heart}
          format={(v) => String(Math.round(v))}
        />
      )}
    </>
  );
};

/** A session afterwards: its legs against what they asked. */
export const PracticeReview = ({ digest, unit }: { digest: PracticeDigest; unit: DistanceUnit }) => (
  <>
    <p>
      {digest.endS === null ? 'Not done to the end' : `Done in ${span(digest.endS)}`}; {digest.alarms}{' '}
      {digest.alarms === 1 ? 'word' : 'words'} about pace.
    </p>
    <Over digest={digest} unit={unit} />
    <TableBehind
      title="Legs"
      open
      head={[
        'leg',
        'time',
        unitName(unit),
        `pace /${unitName(unit)}`,
        'asked',
        'ahead or behind, s',
        'heart',
      ]}
      rows={digest.legs.map((l, i) => [
        `${i + 1}. ${legName(l)}`,
        span(l.timeS),
        l.distanceM === null ? '–' : distance(l.distanceM, unit),
        l.distanceM === null || l.distanceM < 1 ? '–' : pace((1000 * l.timeS) / l.distanceM, unit),
        targetText(l, unit),
        l.aheadS === null ? '–' : signed(l.aheadS),
        l.heartBpm === null ? '–' : String(Math.round(l.heartBpm)),
      ])}
    />
  </>
);
