import { useComputed, useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { t } from '../../languages/text.ts';
import { planSheetOf } from '../../session/plan/planCurve.ts';
import type { Rehearsal } from '../../session/rehearsal/rehearsal.ts';
import type { RehearseModel } from '../../session/rehearsal/rehearseModel.ts';
import { clock, distance, pace, shortDistance, span, unitName } from '../format.ts';
import { CallBook } from '../parts/callBook.tsx';
import { DriftChart } from '../parts/driftChart.tsx';
import { rich } from '../parts/rich.tsx';
import { Sounding, Waterline } from '../parts/sounding.tsx';
import { PlanCurve } from '../plan/planCurve.tsx';
import { HEAR_MINE } from '../route.ts';
import { RateChoice, SourceChoice } from './choices.tsx';

interface Props {
  readonly model: RehearseModel;
  readonly sound: ComponentChildren;
  /** There is a plan that is not the demo race's: it is what its runner came to hear. */
  readonly hasOwn: boolean;
}

export const RehearseScreen = ({ model, sound, hasOwn }: Props) => {
  const current = model.current.value;
  useEffect(() => {
    const isAsked = location.hash === HEAR_MINE;
    if (isAsked) history.replaceState(null, '', '#/rehearse');
    if ((isAsked || hasOwn) && model.current.peek() === null) model.source.value = 'plan';
  }, [model]);
  return (
    <main class="rehearse" data-live={current !== null}>
      <header class="lead-in">
        <h1>{t('Rehearse||verb')}</h1>
        <p>
          {t(
            'Soundline is a voice in your ear while you race. It tells you how many seconds you are ahead of or behind your plan, at the moment it matters. Hear a whole race before you run it.',
          )}
        </p>
      </header>
      <section class="helm" aria-label={t('Rehearsal')}>
        <Begin model={model} />
        {sound}
        {current === null && <SourceChoice value={model.source} />}
        <RateChoice model={model} />
        <p class="note">
          {t(
            'Between calls the race runs at the rate you choose; while the voice speaks it runs at true speed.',
          )}{' '}
          <a href="#/learn">{t('Learn the tones')}</a>
        </p>
      </section>
      {current === null ? (
        <>
          <Ahead model={model} />
          <OwnRace />
        </>
      ) : (
        <Running run={current} />
      )}
    </main>
  );
};

/** What lies ahead: the race to be rehearsed, and how to read a sounding. */
const Ahead = ({ model }: { model: RehearseModel }) => {
  const { plan, course } = model.config.value;
  const what = {
    distance: shortDistance(plan.distanceM, plan.unit, 2),
    unit: unitName(plan.unit),
    time: span(plan.goalS),
  };
  const sheet = useComputed(() => planSheetOf(model.config.value.plan, model.config.value.course));
  return (
    <section class="ahead" aria-label={t('The race')}>
      <h2>{plan.name}</h2>
      <p class="note">
        {course === null
          ? t('{distance} {unit} in {time}', what)
          : t('{distance} {unit} in {time}, on a measured course', what)}
      </p>
      <PlanCurve plan={plan} sheet={sheet.value} />
      <ul class="legend">
        <li>
          <Waterline aheadS={4} near />
          <p>
            <em>{t('Ahead by four.')}</em> {t('Four seconds in hand: above the water line.')}
          </p>
        </li>
        <li>
          <Waterline aheadS={-4} near />
          <p>
            <em>{t('Behind by four.')}</em> {t('Four seconds owed: below it.')}
          </p>
        </li>
      </ul>
    </section>
  );
};

/** The way from here to a race of one's own. */
const OwnRace = () => (
  <section class="own-race" aria-label={t('Your own race')}>
    <h2>{t('Your own race')}</h2>
    <ol>
      <li>
        {rich('{plan}: distance and goal; the course, food and the morning if you like.', {
          plan: <a href="#/plan">{t('Make a plan')}</a>,
        })}
      </li>
      <li>{t('Hear it here, at home: choose “My plan” and press.')}</li>
      <li>
        {rich('On the day {check}, then {run}: the phone in a pocket, the earphones in.', {
          check: <a href="#/ready">{t('check the phone')}</a>,
          run: <a href="#/run">{t('switch on')}</a>,
        })}
      </li>
    </ol>
  </section>
);

const Begin = ({ model }: { model: RehearseModel }) => {
  const waking = useSignal(false);
  const current = model.current.value;
  const begin = async (): Promise<void> => {
    waking.value = true;
    await model.begin();
    waking.value = false;
  };
  const phase = current?.phase.value;
  if (current !== null && phase !== 'over') {
    return (
      <div class="buttons">
        <button
          type="button"
          class="main-button"
          onClick={phase === 'running' ? current.pause : current.goOn}
        >
          {phase === 'running' ? t('Pause') : t('Go on')}
        </button>
        <button type="button" onClick={() => current.press('ask')} disabled={phase !== 'running'}>
          {t('Ask')}
        </button>
        <button type="button" onClick={model.leave}>
          {t('End||press')}
        </button>
      </div>
    );
  }
  return (
    <div class="buttons">
      <button type="button" class="main-button" onClick={() => void begin()} disabled={waking.value}>
        {phase === 'over'
          ? t('Hear it again')
          : model.source.value === 'demo'
            ? t('Hear the demo race')
            : t('Hear my race')}
      </button>
    </div>
  );
};

const Running = ({ run }: { run: Rehearsal }) => {
  const view = run.view.value;
  const calls = run.cell.calls.value;
  const { plan } = run.cell.config;
  const { progress, drift } = view;
  return (
    <>
      <section class="gauge" aria-label={t('Where the runner is')}>
        <Sounding drift={drift} />
        <dl class="figures">
          <Figure name={t('time')} value={view.elapsedS === null ? '–' : clock(view.elapsedS)} />
          <Figure name={unitName(plan.unit)} value={distance(progress.distanceM, plan.unit)} />
          <Figure
            name={t('pace /{unit}', { unit: unitName(plan.unit) })}
            value={pace(1000 / progress.baseSpeedMps, plan.unit)}
          />
          <Figure
            name={t('finish')}
            value={drift?.projectedFinishS == null ? '–' : span(drift.projectedFinishS)}
          />
        </dl>
      </section>
      <DriftChart
        samples={run.cell.samples.value}
        distanceM={plan.distanceM}
        unit={plan.unit}
        callsM={calls.flatMap((call) => call.distanceM ?? [])}
      />
      <section class="heard" aria-label={t('What was said')}>
        <p class="now-said" role="status">
          {calls.at(-1)?.utterance.text ?? ''}
        </p>
        <CallBook calls={calls} startMs={progress.startMs} unit={plan.unit} />
      </section>
    </>
  );
};

const Figure = ({ name, value }: { name: string; value: string }) => (
  <div>
    <dt>{name}</dt>
    <dd class="figure">{value}</dd>
  </div>
);
