import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { t } from '../../languages/text.ts';
import type { LiveRun } from '../../session/run/liveRun.ts';
import type { RunModel } from '../../session/run/runModel.ts';
import { shortDistance, span, unitName } from '../format.ts';
import { BrokenOff } from './brokenOff.tsx';
import { Choices } from './choices.tsx';
import { Instruments } from './instruments.tsx';
import { RunFace } from './runFace.tsx';
import { RunSummary } from './runSummary.tsx';
import { TalkChoice } from './talkChoice.tsx';

interface Props {
  readonly model: RunModel;
  readonly plan: RacePlan;
  /** The plan is still the demo race's: said before somebody runs by it. */
  readonly isExample: boolean;
}

export const RunScreen = ({ model, plan, isExample }: Props) => {
  const run = model.current.value;
  if (run === null) {
    if (model.brokenOff.value !== null) return <BrokenOff model={model} />;
    return <Before model={model} plan={plan} isExample={isExample} />;
  }
  switch (run.phase.value) {
    case 'ready':
      return <Ready model={model} run={run} />;
    case 'running':
      return <RunFace model={model} run={run} />;
    case 'over':
      return <RunSummary model={model} run={run} />;
  }
};

const planLine = (plan: RacePlan): string =>
  t('{name}: {distance} {unit} in {time}.', {
    name: plan.name,
    distance: shortDistance(plan.distanceM, plan.unit),
    unit: unitName(plan.unit),
    time: span(plan.goalS),
  });

/** Why each thing is asked for, for who reads it: below what is pressed, for whoever stands on the line. */
const Reasons = () => (
  <dl class="reasons">
    <dt>{t('Safety')}</dt>
    <dd>
      {t(
        'Traffic, marshals and your body come first. Some races and roads do not allow earphones: their rules and the law decide. Chest pain or faintness: stop and get help.',
      )}
    </dd>
    <dt>{t('Screen')}</dt>
    <dd>
      {t(
        'A browser gives no position to a page that is locked or out of sight. So the screen is kept on, black, for the whole run: turn its brightness down, and do not press the power button.',
      )}
    </dd>
    <dt>{t('Sound')}</dt>
    <dd>{t('Put your earphones in now. You will hear each call over your own music.')}</dd>
  </dl>
);

const Before = ({ model, plan, isExample }: Props) => {
  const busy = useSignal(false);
  const begin = async (who: 'runner' | 'simulated'): Promise<void> => {
    busy.value = true;
    await model.prepare(who);
    busy.value = false;
  };
  return (
    <main class="run-before" data-sound={model.sound.value}>
      <header class="lead-in">
        <h1>{t('Run||verb')}</h1>
        <p>
          {planLine(plan)} <a href="#/plan">{t('Change the plan')}</a> ·{' '}
          <a href="#/ready">{t('Check this phone')}</a>
        </p>
      </header>
      {isExample && (
        <div class="example">
          <p>{t('This is the plan of the demo race, with its stations and gels.')}</p>
          <a class="button" href="#/plan">
            {t('Make a plan')}
          </a>
        </div>
      )}
      {model.elsewhere.value && (
        <p class="alarm" role="alert">
          {t(
            'This run is in another window of this device. Go on there, or close that window and switch on here.',
          )}
        </p>
      )}
      <p>
        {t(
          'The browser will ask whether this page may know where you are. Soundline needs it to tell how far along the course you are. It stays on this device.',
        )}
      </p>
      <div class="buttons go">
        <button type="button" class="main-button" onClick={() => void begin('runner')} disabled={busy.value}>
          {t('Switch on')}
        </button>
        <button type="button" onClick={() => void begin('simulated')} disabled={busy.value}>
          {t('Practise the day at home')}
        </button>
      </div>
      <p class="note">
        {t(
          'Practised at home a simulated runner runs your plan, in real time, on these very screens; nothing else is simulated.',
        )}
      </p>
      <Choices choices={model.choices} />
      <TalkChoice talk={model.choices.talk} />
      <Reasons />
    </main>
  );
};

const Ready = ({ model, run }: { model: RunModel; run: LiveRun }) => {
  const { plan } = run.cell.config;
  // The touch that led here was at the foot of a long screen; on a wrist the start would be out of sight.
  useEffect(() => window.scrollTo(0, 0), []);
  const gunMs = run.view.value.phase.gunMs;
  return (
    <main class="run-ready">
      <header class="lead-in">
        <h1>{t('Ready')}</h1>
        <p>
          {planLine(plan)} {model.simulated.value && t('A simulated runner waits for your start.')}
        </p>
      </header>
      <Instruments model={model} run={run} />
      <div class="buttons starts">
        {plan.goalBy === 'gun' && (
          <button
            type="button"
            class="start-button"
            disabled={gunMs !== null}
            onClick={() => run.press('gun')}
          >
            {gunMs === null ? t('Gun') : t('Gun heard')}
            <small>{t('press when it fires')}</small>
          </button>
        )}
        <button type="button" class="main-button start-button" onClick={() => run.press('start')}>
          {t('Start||press')}
          <small>{t('press on the line')}</small>
        </button>
      </div>
      <p class="note">
        {t('Or leave your hands alone and run: the start is found when you begin to run.')}{' '}
        {t('On the way a press anywhere marks a board, and a hold asks where you stand.')}
      </p>
      <div class="buttons">
        <button type="button" onClick={() => run.press('ask')}>
          {t('Try the sound')}
        </button>
        <button type="button" onClick={model.leave}>
          {t('Switch off')}
        </button>
      </div>
    </main>
  );
};
