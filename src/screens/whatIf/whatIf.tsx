import { useEffect } from 'preact/hooks';
import { durationText, roughDurationText } from '../../core/prepare/format.ts';
import { WHAT_IF_EVIDENCE, WHAT_IF_LIMITS } from '../../core/prepare/whatIf/evidence.ts';
import { openingText, tallyText } from '../../core/prepare/whatIf/text.ts';
import type { WhatIf } from '../../core/prepare/whatIf/whatIf.ts';
import type { PlanModel } from '../../session/planModel.ts';
import type { PrepareModel } from '../../session/prepareModel.ts';
import type { WhatIfState } from '../../session/prepareWhatIf.ts';
import { distance, unitName } from '../format.ts';
import { Field } from '../plan/field.tsx';
import { Cautions } from '../plan/fineprint.tsx';
import { Steps } from '../plan/steps.tsx';
import { FinishChart } from './finishChart.tsx';

export const WhatIfScreen = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const { whatIf } = model;
  const wish = model.wish.value;
  const race = plan.plan.value;
  const hasResults = model.goal.value.prediction !== null;
  // A plan that has changed is another question.
  useEffect(() => {
    const wait = setTimeout(() => whatIf.ask(wish), 250);
    return () => clearTimeout(wait);
  }, [whatIf, wish]);
  const state = whatIf.state.value;
  return (
    <main class="what-if">
      <Steps here="whatIf" />
      <header class="lead-in">
        <h1>What if</h1>
        <p>Your plan run a thousand times by runners with your results. Not what will happen: what could.</p>
      </header>
      <div class="plan-sides">
        <section class="sheet" aria-label="What it rests on">
          <p>
            Goal <strong class="figure">{durationText(race.goalS)}</strong>
            {race.opening
              ? `, opening ${Number(race.opening.quickerSPerKm.toFixed(1))} s per km quicker for ${distance(race.opening.untilM, race.unit, 1)} ${unitName(race.unit)}`
              : ', no opening'}
            {race.push ? `, push from ${distance(race.push.fromM, race.unit, 1)}` : ''}.
          </p>
          <p>
            {hasResults
              ? `Taken from your results: about ${roughDurationText(wish.spread.middleS)} on this course at an even effort, give or take ${(100 * wish.spread.sdLog).toFixed(1)} %.`
              : 'Without a result of yours, the goal itself is taken for what you can do, so the chance is near even by nature. Put a result in under Goal.'}
          </p>
          {race.goalBy === 'gun' && (
            <Field
              label="From the gun to your line"
              keys="numeric"
              unit="s"
              value={model.draft.value.lineAfterGunS}
              onChange={(lineAfterGunS) => model.set({ lineAfterGunS })}
            />
          )}
          <h2>What it does not know</h2>
          <ul>
            {WHAT_IF_LIMITS.map((limit) => (
              <li key={limit}>{limit}</li>
            ))}
          </ul>
          <h2>What it rests on</h2>
          <ul>
            {WHAT_IF_EVIDENCE.map(({ text }) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </section>
        <section class="sheet what-came" aria-label="What came out" aria-busy={whatIf.busy.value}>
          {whatIf.trouble.value !== null && <p class="field-error">{whatIf.trouble.value}</p>}
          {state === null ? <p role="status">A thousand runs are under way …</p> : <Outcome state={state} />}
          <Cautions keys={['estimate', 'heat', 'chest', 'general']} />
        </section>
      </div>
    </main>
  );
};

const Outcome = ({ state }: { state: WhatIfState }) => {
  const { result, wish } = state;
  const { unit } = wish.plan;
  return (
    <>
      <p class="verdict" role="status">
        {tallyText(result.plan, unit)}
      </p>
      <FinishChart tally={result.plan} goalS={wish.plan.goalS} />
      <h2>Another opening</h2>
      <Openings openings={result.openings} unit={unit} />
    </>
  );
};

const Openings = ({ openings, unit }: { openings: WhatIf['openings']; unit: 'km' | 'mile' }) => (
  <>
    <div class="scroll-x">
      <table class="plan-table">
        <thead>
          <tr>
            <th scope="col">Quicker by</th>
            <th scope="col">Goal made</th>
            <th scope="col">Middle finish</th>
            <th scope="col">Against even</th>
          </tr>
        </thead>
        <tbody>
          {openings.map((o) => (
            <tr key={o.quickerSPerKm}>
              <th scope="row">{o.quickerSPerKm} s per km</th>
              <td>
                {Math.round(100 * o.chance)} ± {Math.max(1, Math.round(100 * o.chanceSd))} %
              </td>
              <td>{durationText(o.finishS.middle)}</td>
              <td>
                {o.quickerSPerKm === 0
                  ? '–'
                  : `${o.changeS < 0 ? '−' : '+'}${Math.abs(o.changeS).toFixed(1)} ± ${o.changeSdS.toFixed(1)} s`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
    <ul>
      {openings
        .filter((o) => o.quickerSPerKm > 0)
        .map((o) => (
          <li key={o.quickerSPerKm}>{openingText(o, unit)}</li>
        ))}
    </ul>
    <p class="note">
      ± is one standard error from the thousand runs, not the doubt of the model, which is larger.
    </p>
  </>
);
