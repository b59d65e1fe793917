import { useComputed, useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { planSheetOf } from '../../session/planCurve.ts';
import type { Rehearsal } from '../../session/rehearsal.ts';
import type { RehearseModel } from '../../session/rehearseModel.ts';
import { clock, distance, pace, span, unitName } from '../format.ts';
import { CallBook } from '../parts/callBook.tsx';
import { DriftChart } from '../parts/driftChart.tsx';
import { Sounding, Waterline } from '../parts/sounding.tsx';
import { PlanCurve } from '../plan/planCurve.tsx';
import { RateChoice, SourceChoice } from './choices.tsx';

export const RehearseScreen = ({ model, sound }: { model: RehearseModel; sound: ComponentChildren }) => {
  const current = model.current.value;
  return (
    <main class="rehearse" data-live={current !== null}>
      <header class="lead-in">
        <h1>Rehearse</h1>
        <p>
          Soundline is a voice in your ear while you race. It tells you how many seconds you are ahead of or
          behind your plan, at the moment it matters. Hear a whole race before you run it.
        </p>
      </header>
      <section class="helm" aria-label="Rehearsal">
        <Begin model={model} />
        {sound}
        {current === null && <SourceChoice value={model.source} />}
        <RateChoice model={model} />
        <p class="note">
          Between calls the race runs at the rate you choose; while the voice speaks it runs at true speed.
        </p>
      </section>
      {current === null ? <Ahead model={model} /> : <Running run={current} />}
    </main>
  );
};

/** What lies ahead: the race to be rehearsed, and how to read a sounding. */
const Ahead = ({ model }: { model: RehearseModel }) => {
  const { plan, course } = model.config.value;
  const sheet = useComputed(() => planSheetOf(model.config.value.plan, model.config.value.course));
  return (
    <section class="ahead" aria-label="The race">
      <h2>{plan.name}</h2>
      <p class="note">
        {Number(distance(plan.distanceM, plan.unit, 4))} {unitName(plan.unit)} in {span(plan.goalS)}
        {course !== null && ', on a measured course'}
      </p>
      <PlanCurve plan={plan} sheet={sheet.value} />
      <ul class="legend">
        <li>
          <Waterline aheadS={4} />
          <p>
            <em>Ahead by four.</em> Four seconds in hand: above the water line.
          </p>
        </li>
        <li>
          <Waterline aheadS={-4} />
          <p>
            <em>Behind by four.</em> Four seconds owed: below it.
          </p>
        </li>
      </ul>
    </section>
  );
};

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
          {phase === 'running' ? 'Pause' : 'Go on'}
        </button>
        <button type="button" onClick={() => current.press('ask')} disabled={phase !== 'running'}>
          Ask
        </button>
        <button type="button" onClick={model.leave}>
          End
        </button>
      </div>
    );
  }
  return (
    <div class="buttons">
      <button type="button" class="main-button" onClick={() => void begin()} disabled={waking.value}>
        {phase === 'over'
          ? 'Hear it again'
          : model.source.value === 'demo'
            ? 'Hear the demo race'
            : 'Hear my race'}
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
      <section class="gauge" aria-label="Where the runner is">
        <Sounding drift={drift} />
        <dl class="figures">
          <Figure name="time" value={view.elapsedS === null ? '–' : clock(view.elapsedS)} />
          <Figure name={unitName(plan.unit)} value={distance(progress.distanceM, plan.unit)} />
          <Figure
            name={`pace /${unitName(plan.unit)}`}
            value={pace(1000 / progress.baseSpeedMps, plan.unit)}
          />
          <Figure
            name="finish"
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
      <section class="heard" aria-label="What was said">
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
