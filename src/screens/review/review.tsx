import { type Message, message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import { isPractice } from '../../session/review/reviewFold.ts';
import {
  EXPORTS,
  type ExportKind,
  type OpenRun,
  type ReviewModel,
} from '../../session/review/reviewModel.ts';
import { shownMoment } from '../parts/dates.ts';
import { fileNameOf, saveFile } from '../parts/files.tsx';
import { Calls } from './calls.tsx';
import { DriftOver, Facts, HeartOver, HeightOver, PaceOver, Projections } from './charts.tsx';
import { PracticeReview } from './practiceReview.tsx';
import { ReceptionOver } from './reception.tsx';

const EXPORT_NAMES: Readonly<Record<ExportKind, Message>> = {
  gpx: message('GPX track'),
  csv: message('CSV table'),
  geojson: message('GeoJSON map'),
  log: message('Run with its log'),
};

const Exports = ({ model, run }: { model: ReviewModel; run: OpenRun }) => {
  const save = async (kind: ExportKind): Promise<void> => {
    const file = await model.exported(run.id, kind);
    if (file !== null) saveFile(fileNameOf(run.read.plan.plan.name, file.ending), file.type, file.text);
  };
  return (
    <div class="buttons">
      {EXPORTS.map((kind) => (
        <button key={kind} type="button" onClick={() => void save(kind)}>
          {t(EXPORT_NAMES[kind])}
        </button>
      ))}
    </div>
  );
};

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
            {t('All runs')}
          </button>
        </p>
        <h1>{plan.name}</h1>
        <p>{shownMoment(run.id)}</p>
      </header>
      {read.isImported && (
        <p class="note">
          {t(
            'It came without a plan, so it is held against its own even pace; the calls are what would have been said.',
          )}
        </p>
      )}
      {shown !== null && (
        <>
          <ul class="five-lines" aria-label={t('In short')}>
            {shown.review.summary.map((line) => (
              <li key={line.text}>{t(line)}</li>
            ))}
          </ul>
          <DriftOver {...shown} />
          <PaceOver {...shown} />
          <HeartOver {...shown} />
          <HeightOver {...shown} />
          <ReceptionOver {...shown} />
          <Facts {...shown} />
          <Projections {...shown} />
        </>
      )}
      {isPractice(digest) && <PracticeReview digest={digest} unit={plan.unit} />}
      <Calls model={model} calls={digest.calls} unit={plan.unit} />
      <section aria-label={t('Save this run')}>
        <h2>{t('Save this run')}</h2>
        <Exports model={model} run={run} />
        <p class="note">{t('Files stay on this device until you send them somewhere.')}</p>
      </section>
    </main>
  );
};
