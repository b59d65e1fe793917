import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { RunFacts } from '../../core/review/trend.ts';
import { decimal } from '../../core/units/message.ts';
import { shownNumber, t } from '../../languages/text.ts';
import { isPractice } from '../../session/review/reviewFold.ts';
import type { ReviewModel } from '../../session/review/reviewModel.ts';
import type { RunRow } from '../../session/review/reviewRuns.ts';
import { pace, shortDistance, span, unitName } from '../format.ts';
import { shownDay } from '../parts/dates.ts';
import { fileNameOf, OpenFile, saveFile } from '../parts/files.tsx';
import { TableBehind } from '../review/details.tsx';
import { ReviewScreen } from '../review/review.tsx';
import { LATEST_RUN } from '../route.ts';
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

const number = (x: number, decimals: number): string => {
  const rounded = Number(x.toFixed(decimals));
  return `${rounded < 0 ? '−' : ''}${shownNumber(decimal(Math.abs(rounded), decimals))}`;
};

interface Column {
  readonly head: string;
  /** Null where the run says nothing of it. */
  readonly of: (f: RunFacts) => string | null;
}

const told = (x: number | null | undefined, text: (x: number) => string): string | null =>
  x === null || x === undefined ? null : text(x);

/** What runs can say, each with its unit; built when it is shown, for the language may change. */
const columns = (): readonly Column[] => [
  { head: t('threshold /km'), of: (f) => told(f.threshold?.paceSPerKm, (p) => pace(p, 'km')) },
  { head: t('give or take, s'), of: (f) => told(f.threshold?.sdSPerKm, (s) => number(1.96 * s, 1)) },
  { head: t('opening too quick by, s/km'), of: (f) => told(f.openingOverS, (s) => number(s, 1)) },
  { head: t('second half, %'), of: (f) => told(f.fadeShare, (s) => number(100 * s, 1)) },
  { head: t('wander, %||of the pace'), of: (f) => told(f.wanderSd, (s) => number(100 * s, 1)) },
  { head: t('foot pod'), of: (f) => told(f.podFactor, (x) => number(x, 3)) },
];

const Trend = ({ model }: { model: ReviewModel }) => {
  const facts = model.facts.value;
  if (facts.length === 0) return null;
  // A column that no run fills is only in the way, most of all on a phone.
  const shown = columns().filter(({ of }) => facts.some((f) => of(f) !== null));
  return (
    <section aria-label={t('Over the runs')}>
      <h2>{t('Over the runs')}</h2>
      <ThresholdOver facts={facts} />
      <TableBehind
        title={t('Threshold held, openings, evenness')}
        open
        head={[t('when||date of a run'), ...shown.map(({ head }) => head)]}
        rows={facts.map((f) => [shownDay(f.atMs), ...shown.map(({ of }) => of(f) ?? '–')])}
      />
      <p class="note">
        {t(
          'Opening: above 0 it was quicker than planned. Second half: above 0 it was slower than the first, hills taken out. Wander: how much the pace swings from one kilometre to the next.',
        )}
      </p>
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
    const isLatest = location.hash === LATEST_RUN;
    if (isLatest) history.replaceState(null, '', '#/runs');
    const begin = async (): Promise<void> => {
      await model.refresh();
      const latest = model.rows.peek()?.[0];
      if (isLatest && latest) await model.look(latest.id);
      await model.prepareAll();
    };
    void begin();
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
        <h1>{t('Past runs')}</h1>
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
