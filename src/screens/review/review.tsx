import type { PracticeDigest, RanLeg } from '../../core/review/practiceDigest.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import { isPractice } from '../../session/reviewFold.ts';
import { EXPORTS, type ExportKind, type OpenRun, type ReviewModel } from '../../session/reviewModel.ts';
import { distance, pace, span, unitName } from '../format.ts';
import { fileNameOf, saveFile } from '../parts/files.tsx';
import { Calls } from './calls.tsx';
import { DriftOver, Facts, HeartOver, HeightOver, PaceOver, Projections, signed } from './charts.tsx';
import { TableBehind } from './details.tsx';

const EXPORT_NAMES: Readonly<Record<ExportKind, string>> = {
  gpx: 'GPX track',
  csv: 'CSV table',
  geojson: 'GeoJSON map',
  log: 'Run with its log',
};

const Exports = ({ model, run }: { model: ReviewModel; run: OpenRun }) => {
  const save = async (kind: ExportKind): Promise<void> => {
    const file = await model.exported(run.id, kind);
    if (file !== null) saveFile(fileNameOf(run.read.plan.plan.name, file.ending), file.type, file.text);
  };
  return (
    <div class="buttons">
      {EXPORTS.filter((kind) => kind !== 'csv' || !isPractice(run.digest)).map((kind) => (
        <button key={kind} type="button" onClick={() => void save(kind)}>
          {EXPORT_NAMES[kind]}
        </button>
      ))}
    </div>
  );
};

const legName = ({ kind, rep }: RanLeg): string => (rep ? `${kind} ${rep.count} of ${rep.of}` : kind);

const targetText = ({ target }: RanLeg, unit: DistanceUnit): string =>
  target.by === 'pace' ? pace(target.paceSPerKm, unit) : target.by === 'effort' ? target.effort : 'free';

const PracticeReview = ({ digest, unit }: { digest: PracticeDigest; unit: DistanceUnit }) => (
  <>
    <p>
      {digest.endS === null ? 'Not done to the end' : `Done in ${span(digest.endS)}`}; {digest.alarms}{' '}
      {digest.alarms === 1 ? 'word' : 'words'} about pace.
    </p>
    <TableBehind
      title="Legs"
      open
      head={['leg', 'time', unitName(unit), `pace /${unitName(unit)}`, 'asked', 'up or down, s', 'heart']}
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

/** A run afterwards: five lines, drawings with their tables, and every call with its reason. */
export const ReviewScreen = ({ model, run }: { model: ReviewModel; run: OpenRun }) => {
  const { digest, review, read } = run;
  const { plan } = read.plan;
  const shown =
    review !== null && !isPractice(digest) && read.plan.kind === 'race'
      ? { plan: read.plan.plan, digest, review, run }
      : null;
  return (
    <main class="review">
      <header class="lead-in">
        <p>
          <button type="button" onClick={model.close}>
            All runs
          </button>
        </p>
        <h1>{plan.name}</h1>
        <p>{new Date(run.id).toLocaleString()}</p>
      </header>
      {shown !== null && (
        <>
          <ul class="five-lines" aria-label="In five lines">
            {shown.review.summary.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <DriftOver {...shown} />
          <PaceOver {...shown} />
          <HeartOver {...shown} />
          <HeightOver {...shown} />
          <Facts {...shown} />
          <Projections {...shown} />
        </>
      )}
      {isPractice(digest) && <PracticeReview digest={digest} unit={plan.unit} />}
      <Calls model={model} calls={digest.calls} unit={plan.unit} />
      <section aria-label="Take it away">
        <h2>Take it away</h2>
        <Exports model={model} run={run} />
        <p class="note">Files stay on this device until you send them somewhere.</p>
      </section>
    </main>
  );
};
