import { plural } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { LiveRun } from '../../session/run/liveRun.ts';
import type { RunModel } from '../../session/run/runModel.ts';
import { clock, distance, pace, sounded, span, unitName } from '../format.ts';
import { CallBook } from '../parts/callBook.tsx';
import { DriftChart } from '../parts/driftChart.tsx';
import { fileNameOf, saveFile } from '../parts/files.tsx';
import { LATEST_RUN } from '../route.ts';

const driftText = (aheadS: number): string => {
  const { side, figure } = sounded(aheadS);
  if (side === 'even') return t('on plan');
  return side === 'up' ? t('{figure} s ahead', { figure }) : t('{figure} s behind', { figure });
};

/** The run afterwards: what the clock says, what was called, and the log to take away. */
export const RunSummary = ({ model, run }: { model: RunModel; run: LiveRun }) => {
  const view = run.view.value;
  const calls = run.cell.calls.value;
  const { plan } = run.cell.config;
  const { phase } = view;
  const finished = phase.phase === 'finished';
  const finish = calls.findLast((call) => call.saying.kind === 'finish');
  const dropped = [...run.heard.values()].filter((heard) => heard !== 'scheduled').length;
  // The finish as it was said, to the nearest second; a run that was stopped by its clock, as it stood on the face.
  const elapsedS = phase.phase === 'finished' ? phase.finishS : (view.elapsedS ?? 0);
  const shown = phase.phase === 'finished' ? span : clock;
  const look = (): void => {
    model.leave();
    location.hash = LATEST_RUN;
  };
  return (
    <main class="run-over">
      <header class="lead-in">
        <h1>{finished ? t('Finished') : t('Stopped')}</h1>
        <p>{plan.name}</p>
      </header>
      <dl class="figures">
        <div>
          <dt>{t('time')}</dt>
          <dd class="figure">{view.elapsedS === null ? '–' : shown(elapsedS)}</dd>
        </div>
        {phase.phase === 'finished' && phase.finishByGunS !== null && (
          <div>
            <dt>{t('by the gun')}</dt>
            <dd class="figure">{span(phase.finishByGunS)}</dd>
          </div>
        )}
        <div>
          <dt>{unitName(plan.unit)}</dt>
          <dd class="figure">{distance(view.progress.distanceM, plan.unit)}</dd>
        </div>
        <div>
          <dt>{t('pace /{unit}', { unit: unitName(plan.unit) })}</dt>
          <dd class="figure">{pace((1000 * elapsedS) / view.progress.distanceM, plan.unit)}</dd>
        </div>
        {finish?.aheadS != null && (
          <div>
            <dt>{t('against plan')}</dt>
            <dd class="figure">{driftText(finish.aheadS)}</dd>
          </div>
        )}
      </dl>
      <div class="buttons">
        {!model.simulated.value && (
          <button type="button" class="main-button" onClick={look}>
            {t('Look at this run')}
          </button>
        )}
        <button
          type="button"
          onClick={async () =>
            saveFile(fileNameOf(plan.name, 'jsonl'), 'application/x-ndjson', await model.logFile())
          }
        >
          {t('Save the log')}
        </button>
        <button type="button" class={model.simulated.value ? 'main-button' : ''} onClick={model.leave}>
          {t('Done')}
        </button>
      </div>
      <p class="note">
        {model.simulated.value
          ? t('This was a practice at home: its log goes when you are done.')
          : t(
              'The log holds every position and press of this run. It stays on this device, under Past runs, until you remove it; save it to have it elsewhere as well.',
            )}
      </p>
      <DriftChart
        samples={run.cell.samples.value}
        distanceM={plan.distanceM}
        unit={plan.unit}
        callsM={calls.flatMap((call) => call.distanceM ?? [])}
      />
      <section class="heard" aria-label={t('What was called')}>
        <h2>{t('Calls')}</h2>
        {dropped > 0 && (
          <p class="note">
            {t(plural(dropped, 'One of them could not be sounded.', '{n} of them could not be sounded.'))}
          </p>
        )}
        <CallBook calls={calls} startMs={view.progress.startMs} unit={plan.unit} />
      </section>
    </main>
  );
};
