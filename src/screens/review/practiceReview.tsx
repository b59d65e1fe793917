import { useMemo } from 'preact/hooks';
import { EFFORT_NAMES, legName } from '../../core/practice/names.ts';
import type { PracticeDigest, RanLeg } from '../../core/review/practiceDigest.ts';
import { type Message, message, plural } from '../../core/units/message.ts';
import { type DistanceUnit, pacePer } from '../../core/units/units.ts';
import { screenLanguage, t } from '../../languages/text.ts';
import { distance, pace, span, unitName } from '../format.ts';
import { Chart, PAPER } from './chart.tsx';
import { signed } from './charts.tsx';
import { TableBehind } from './details.tsx';

const targetText = ({ target }: RanLeg, unit: DistanceUnit): string => {
  if (target.by === 'pace') return pace(target.paceSPerKm, unit);
  return target.by === 'effort' ? t(EFFORT_NAMES[target.effort]) : t('free||no target');
};

/** Pace as run and as asked, and heart rate where a belt was worn, over the minutes. */
const Over = ({ digest, unit }: { digest: PracticeDigest; unit: DistanceUnit }) => {
  const made = useMemo(() => {
    const { samples } = digest;
    const per = (p: number | null): number | null => (p === null ? null : pacePer(unit, p));
    return {
      xs: samples.map((s) => s.atS / 60),
      pace: [
        {
          label: t('asked||pace'),
          values: samples.map((s) => per(s.askedSPerKm)),
          stroke: '#ffb35c',
          width: 1.5,
          dash: [7, 5],
        },
        { label: t('run||as it was run'), values: samples.map((s) => per(s.paceSPerKm)), stroke: PAPER },
      ],
      heart: [{ label: t('beats a minute'), values: samples.map((s) => s.heartBpm), stroke: PAPER }],
    };
  }, [digest, screenLanguage.value]);
  const { samples } = digest;
  return (
    <>
      {samples.some((s) => s.paceSPerKm !== null) && (
        <Chart
          title={t('Pace, per {unit} (quicker is higher)', { unit: unitName(unit) })}
          xs={made.xs}
          xUnit={t('minutes')}
          lines={made.pace}
          upsideDown
          format={(v) => span(v)}
        />
      )}
      {samples.some((s) => s.heartBpm !== null) && (
        <Chart
          title={t('Heart rate')}
          xs={made.xs}
          xUnit={t('minutes')}
          lines={made.heart}
          format={(v) => String(Math.round(v))}
        />
      )}
      <MinutesTable digest={digest} unit={unit} />
    </>
  );
};

/** Behind the drawings: what they show at each whole minute. */
const MinutesTable = ({ digest, unit }: { digest: PracticeDigest; unit: DistanceUnit }) => {
  const { samples } = digest;
  if (samples.every((s) => s.paceSPerKm === null && s.heartBpm === null)) return null;
  const minutes = samples.filter(
    (s, i) => Math.floor(s.atS / 60) !== Math.floor((samples[i - 1]?.atS ?? -1) / 60),
  );
  const paceText = (p: number | null): string => (p === null ? '–' : pace(p, unit));
  return (
    <TableBehind
      title={t('Pace and heart rate at each minute, as a table')}
      head={[t('minutes'), t('run||as it was run'), t('asked||pace'), t('beats a minute')]}
      rows={minutes.map((s) => [
        String(Math.floor(s.atS / 60)),
        paceText(s.paceSPerKm),
        paceText(s.askedSPerKm),
        s.heartBpm === null ? '–' : String(Math.round(s.heartBpm)),
      ])}
    />
  );
};

const doneText = ({ endS, alarms }: PracticeDigest): Message => {
  const words = plural(alarms, 'one word about pace', '{n} words about pace');
  return endS === null
    ? message('Not done to the end; {words}.', { words })
    : message('Done in {time}; {words}.', { time: span(endS), words });
};

/** A session afterwards: its legs against what they asked. */
export const PracticeReview = ({ digest, unit }: { digest: PracticeDigest; unit: DistanceUnit }) => (
  <>
    <p>{t(doneText(digest))}</p>
    <Over digest={digest} unit={unit} />
    <TableBehind
      title={t('Legs||of a session')}
      open
      head={[
        t('leg||of a session'),
        t('time'),
        unitName(unit),
        t('pace /{unit}', { unit: unitName(unit) }),
        t('asked||pace'),
        t('ahead or behind, s'),
        t('heart||rate'),
      ]}
      rows={digest.legs.map((l, i) => [
        `${i + 1}. ${t(legName(l))}`,
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
