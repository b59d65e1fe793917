import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { decimal } from '../../core/units/message.ts';
import { shownNumber, t } from '../../languages/text.ts';
import { isPractice } from '../../session/reviewFold.ts';
import type { ReviewModel } from '../../session/reviewModel.ts';
import type { RunRow } from '../../session/reviewRuns.ts';
import { pace, shortDistance, span, unitName } from '../format.ts';
import { shownDay } from '../parts/dates.ts';
import { fileNameOf, OpenFile, saveFile } from '../parts/files.tsx';
import { TableBehind } from '../review/details.tsx';
import { ReviewScreen } from '../review/review.tsx';
import { ThresholdOver } from './thresholdChart.tsx';

const resultText = ({ digest }: RunRow): string => {
  if (digest === null) return t('not looked at yet');
  if (isPractice(digest)) return digest.endS === null ? t('not done to the end') : span(digest.endS);
  return digest.finishS === null
    ? t('ended at {distance} km', { distance: decimal(digest.distanceM / 1000, 1) })
    : span(digest.finishS);
};

const whatText = ({ plan }: RunRow): string => {
  if (plan === null) return t('cannot be read by this version');
  if (plan.kind === 'practice') return t('{name}, practice', { name: plan.plan.name });
  const { name, distanceM, unit } = plan.plan;
  return `${name}, ${shortDistance(distanceM, unit)} ${unitName(unit)}`;
};

const Row = ({ model, row }: { model: ReviewModel; row: RunRow }) => {
  const sure = useSignal(false);
  return (
    <li>
      <button
        type="button"
        class="run-row"
        disabled={row.plan === null}
        onClick={() => void model.look(row.id)}
      >
        <span>{shownDay(row.id)}</span>
        <strong>{whatText(row)}</strong>
        <span class="figure">{resultText(row)}</span>
      </button>
      {sure.value ? (
        <fieldset class="buttons plain" aria-label={t('Delete for good?')}>
          <button type="button" onClick={() => void model.remove(row.id)}>
            {t('Delete for good')}
          </button>
          <button type="button" onClick={() => (sure.value = false)}>
            {t('Keep')}
          </button>
        </fieldset>
      ) : (
        <button
          type="button"
          onClick={() => (sure.value = true)}
          aria-label={t('Delete {run}', { run: whatText(row) })}
        >
          {t('Delete')}
        </button>
      )}
    </li>
  );
};

const dash = (x: number | null, text: (x: number) => string): string => (x === null ? '–' : text(x));

const Trend = ({ model }: { model: ReviewModel }) => {
  const facts = model.facts.value;
  if (facts.length === 0) return null;
  return (
    <section aria-label={t('Over the runs')}>
      <h2>{t('Over the runs')}</h2>
      <ThresholdOver facts={facts} />
      <TableBehind
        title={t('Threshold held, openings, evenness')}
        open
        head={[
          t('when||date of a run'),
          t('threshold /km'),
          t('give or take, s'),
          t('opening over its cap, s/km'),
          t('second half, %'),
          t('wander, %||of the pace'),
          t('foot pod'),
        ]}
        rows={facts.map((f) => [
          shownDay(f.atMs),
          dash(f.threshold?.paceSPerKm ?? null, (p) => pace(p, 'km')),
          dash(f.threshold?.sdSPerKm ?? null, (s) => shownNumber(decimal(1.96 * s, 1))),
          dash(f.openingOverS, (s) => shownNumber(decimal(s, 1))),
          dash(f.fadeShare, (s) => shownNumber(decimal(100 * s, 1))),
          dash(f.wanderSd, (s) => shownNumber(decimal(100 * s, 1))),
          dash(f.podFactor, (x) => shownNumber(decimal(x, 3))),
        ])}
      />
      <label class="check">
        <input
          type="checkbox"
          checked={model.counts.value}
          onChange={(e) => model.setCounts(e.currentTarget.checked)}
        />
        {t('Let these runs move the realistic goal, the what-if, and what is believed of this phone')}
      </label>
      <p class="note">
        {t(
          'A trend of a few runs is weather, not climate. Raise training slowly, one thing at a time, and rest when something hurts.',
        )}
      </p>
    </section>
  );
};

/** Every run on this device; one of them open. */
export const RunsScreen = ({ model }: { model: ReviewModel }) => {
  useEffect(() => {
    void model.refresh().then(model.prepareAll);
  }, [model]);
  const { open, rows, reading, said } = model;
  if (open.value !== null) return <ReviewScreen model={model} run={open.value} />;
  const saveBackup = async (): Promise<void> => {
    const file = await model.backup();
    saveFile(fileNameOf('soundline-backup', file.ending), file.type, file.text);
  };
  return (
    <main class="runs">
      <header class="lead-in">
        <h1>{t('Runs||noun')}</h1>
        <p>{t('Every run and session that this device has kept, and what each of them says.')}</p>
      </header>
      <p role="status" class="note">
        {reading.value !== null
          ? t('Putting the run together: {percent} %', { percent: Math.round(100 * reading.value) })
          : said.value && t(said.value)}
      </p>
      {rows.value === null ? (
        <p class="note">{t('Looking for runs.')}</p>
      ) : rows.value.length === 0 ? (
        <p>{t('No runs yet. Run one, practise, or open a file: a GPX track from anywhere will do.')}</p>
      ) : (
        <ol class="run-rows" aria-label={t('Runs, the latest first')}>
          {rows.value.map((row) => (
            <Row key={row.id} model={model} row={row} />
          ))}
        </ol>
      )}
      <Trend model={model} />
      <section aria-label={t('Files')}>
        <h2>{t('Files')}</h2>
        <div class="buttons">
          <OpenFile
            label={t('Open a run: log or GPX')}
            accept=".jsonl,.gpx,.soundline,.json"
            onText={(text) => void model.addFile(text)}
          />
          <button type="button" onClick={() => void saveBackup()}>
            {t('Save everything as one file')}
          </button>
          <OpenFile
            label={t('Restore everything')}
            accept=".soundline"
            onText={(text) => void model.restore(text)}
          />
        </div>
        <p class="note">
          {t('Runs stay on this device. Delete means deleted: there is no copy anywhere else but yours.')}
        </p>
      </section>
    </main>
  );
};
