import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { isPractice } from '../../session/reviewFold.ts';
import type { ReviewModel } from '../../session/reviewModel.ts';
import type { RunRow } from '../../session/reviewRuns.ts';
import { distance, pace, span, unitName } from '../format.ts';
import { fileNameOf, OpenFile, saveFile } from '../parts/files.tsx';
import { TableBehind } from '../review/details.tsx';
import { ReviewScreen } from '../review/review.tsx';

const resultText = ({ digest }: RunRow): string => {
  if (digest === null) return 'not looked at yet';
  if (isPractice(digest)) return digest.endS === null ? 'not done to the end' : span(digest.endS);
  return digest.finishS === null
    ? `ended at ${(digest.distanceM / 1000).toFixed(1)} km`
    : span(digest.finishS);
};

const whatText = ({ plan }: RunRow): string => {
  if (plan === null) return 'cannot be read by this version';
  if (plan.kind === 'practice') return `${plan.plan.name}, practice`;
  const { name, distanceM, unit } = plan.plan;
  return `${name}, ${Number(distance(distanceM, unit, 2))} ${unitName(unit)}`;
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
        <span>{new Date(row.id).toLocaleDateString()}</span>
        <strong>{whatText(row)}</strong>
        <span class="figure">{resultText(row)}</span>
      </button>
      {sure.value ? (
        <fieldset class="buttons plain" aria-label="Delete for good?">
          <button type="button" onClick={() => void model.remove(row.id)}>
            Delete for good
          </button>
          <button type="button" onClick={() => (sure.value = false)}>
            Keep
          </button>
        </fieldset>
      ) : (
        <button type="button" onClick={() => (sure.value = true)} aria-label={`Delete ${whatText(row)}`}>
          Delete
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
    <section aria-label="Over the runs">
      <h2>Over the runs</h2>
      <TableBehind
        title="Threshold held, openings, evenness"
        open
        head={[
          'when',
          'threshold /km',
          'give or take, s',
          'opening over its cap, s/km',
          'second half, %',
          'wander, %',
          'foot pod',
        ]}
        rows={facts.map((f) => [
          new Date(f.atMs).toLocaleDateString(),
          dash(f.threshold?.paceSPerKm ?? null, (p) => pace(p, 'km')),
          dash(f.threshold?.sdSPerKm ?? null, (s) => (1.96 * s).toFixed(1)),
          dash(f.openingOverS, (s) => s.toFixed(1)),
          dash(f.fadeShare, (s) => (100 * s).toFixed(1)),
          dash(f.wanderSd, (s) => (100 * s).toFixed(1)),
          dash(f.podFactor, (x) => x.toFixed(3)),
        ])}
      />
      <label class="check">
        <input
          type="checkbox"
          checked={model.counts.value}
          onChange={(e) => model.setCounts(e.currentTarget.checked)}
        />
        Let these runs move the realistic goal, the what-if, and what is believed of this phone
      </label>
      <p class="note">
        A trend of a few runs is weather, not climate. Raise training slowly, one thing at a time, and rest
        when something hurts.
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
        <h1>Runs</h1>
        <p>Every run and session that this device has kept, and what each of them says.</p>
      </header>
      <p role="status" class="note">
        {reading.value !== null
          ? `Putting the run together: ${Math.round(100 * reading.value)} %`
          : said.value}
      </p>
      {rows.value === null ? (
        <p class="note">Looking for runs.</p>
      ) : rows.value.length === 0 ? (
        <p>No runs yet. Run one, practise, or open a file: a GPX track from anywhere will do.</p>
      ) : (
        <ol class="run-rows" aria-label="Runs, the latest first">
          {rows.value.map((row) => (
            <Row key={row.id} model={model} row={row} />
          ))}
        </ol>
      )}
      <Trend model={model} />
      <section aria-label="Files">
        <h2>Files</h2>
        <div class="buttons">
          <OpenFile
            label="Open a run: log or GPX"
            accept=".jsonl,.gpx,.soundline,.json"
            onText={(text) => void model.addFile(text)}
          />
          <button type="button" onClick={() => void saveBackup()}>
            Save everything as one file
          </button>
          <OpenFile
            label="Restore everything"
            accept=".soundline"
            onText={(text) => void model.restore(text)}
          />
        </div>
        <p class="note">
          Runs stay on this device. Delete means deleted: there is no copy anywhere else but yours.
        </p>
      </section>
    </main>
  );
};
