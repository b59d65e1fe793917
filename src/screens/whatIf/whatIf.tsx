import { useEffect } from 'preact/hooks';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { durationText, roughDurationText } from '../../core/prepare/format.ts';
import { WHAT_IF_EVIDENCE, WHAT_IF_LIMITS } from '../../core/prepare/whatIf/evidence.ts';
import { usualFade } from '../../core/prepare/whatIf/fade.ts';
import type { Spread } from '../../core/prepare/whatIf/oneRun.ts';
import { openingText, tallyText } from '../../core/prepare/whatIf/text.ts';
import type { WhatIf } from '../../core/prepare/whatIf/whatIf.ts';
import { decimal, decimalUpTo, plural } from '../../core/units/message.ts';
import { shownNumber, t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import type { PrepareModel } from '../../session/prepare/prepareModel.ts';
import type { WhatIfState } from '../../session/prepare/prepareWhatIf.ts';
import { Field } from '../form/field.tsx';
import { distance, unitName } from '../format.ts';
import { rich } from '../parts/rich.tsx';
import { Cautions } from '../plan/fineprint.tsx';
import { ExamplePlan, NextStep, Steps } from '../plan/steps.tsx';
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
        <h1>{t('What if')}</h1>
        <p>
          {t(
            'Your plan run a thousand times by runners with your results. Not what will happen: what could.',
          )}
        </p>
      </header>
      <ExamplePlan model={plan} />
      <div class="plan-sides">
        <section class="sheet" aria-label={t('What it rests on')}>
          <p>
            <GoalAndLegs plan={race} />
          </p>
          <p>
            {hasResults
              ? t(
                  'Taken from your results: about {time} on this course at an even effort, give or take {percent} %.',
                  {
                    time: roughDurationText(wish.spread.middleS),
                    percent: decimal(100 * wish.spread.sdLog, 1),
                  },
                )
              : t(
                  'Without a result of yours, the goal itself is taken for what you can do, so the chance is near even by nature. Put a result in under Goal.',
                )}
          </p>
          <p>
            <Manner spread={wish.spread} goalS={race.goalS} ownRuns={model.ownRuns.value} />
          </p>
          {race.goalBy === 'gun' && (
            <Field
              label={t('From the gun to your line')}
              keys="numeric"
              unit="s"
              value={model.draft.value.lineAfterGunS}
              onChange={(lineAfterGunS) => model.set({ lineAfterGunS })}
            />
          )}
          <h2>{t('What it does not know')}</h2>
          <ul>
            {WHAT_IF_LIMITS.map((limit) => (
              <li key={limit.text}>{t(limit)}</li>
            ))}
          </ul>
          <h2>{t('What it rests on')}</h2>
          <ul>
            {WHAT_IF_EVIDENCE.map(({ text }) => (
              <li key={text.text}>{t(text)}</li>
            ))}
          </ul>
        </section>
        <section class="sheet what-came" aria-label={t('What came out')} aria-busy={whatIf.busy.value}>
          {whatIf.trouble.value !== null && <p class="field-error">{whatIf.trouble.value}</p>}
          {state === null ? (
            <p role="status">{t('A thousand runs are under way …')}</p>
          ) : (
            <Outcome state={state} />
          )}
          <Cautions keys={['estimate', 'heat', 'chest', 'general']} />
        </section>
      </div>
      <NextStep here="whatIf" />
    </main>
  );
};

/** The goal and the legs of the plan in a sentence. */
const GoalAndLegs = ({ plan }: { plan: RacePlan }) => {
  const { goalS, opening, push, unit } = plan;
  const places = {
    goal: <strong class="figure">{durationText(goalS)}</strong>,
    quicker: opening && shownNumber(decimalUpTo(opening.quickerSPerKm, 1)),
    distance: opening && `${distance(opening.untilM, unit, 1)} ${unitName(unit)}`,
    from: push && `${distance(push.fromM, unit, 1)} ${unitName(unit)}`,
  };
  if (opening === null)
    return push === null
      ? rich('Goal {goal}, no opening.', places)
      : rich('Goal {goal}, no opening, push from {from}.', places);
  return push === null
    ? rich('Goal {goal}, opening {quicker} s per km quicker for {distance}.', places)
    : rich('Goal {goal}, opening {quicker} s per km quicker for {distance}, push from {from}.', places);
};

const Outcome = ({ state }: { state: WhatIfState }) => {
  const { result, wish } = state;
  const { unit } = wish.plan;
  return (
    <>
      <p class="verdict" role="status">
        {t(tallyText(result.plan, unit))}
      </p>
      <FinishChart tally={result.plan} goalS={wish.plan.goalS} />
      <h2>{t('Another opening')}</h2>
      <Openings openings={result.openings} unit={unit} />
    </>
  );
};

const Openings = ({ openings, unit }: { openings: WhatIf['openings']; unit: 'km' | 'mile' }) => (
  <>
    <div class="scroll-x">
      <table class="plan-table tight">
        <thead>
          <tr>
            <th scope="col">{t('Quicker by, s per km')}</th>
            <th scope="col">{t('Goal made')}</th>
            <th scope="col">{t('Middle finish')}</th>
            <th scope="col">{t('Against even, s')}</th>
          </tr>
        </thead>
        <tbody>
          {openings.map((o) => (
            <tr key={o.quickerSPerKm}>
              <th scope="row">{o.quickerSPerKm}</th>
              <td>
                {Math.round(100 * o.chance)} ± {Math.max(1, Math.round(100 * o.chanceSd))} %
              </td>
              <td>{durationText(o.finishS.middle)}</td>
              <td>
                {o.quickerSPerKm === 0
                  ? '–'
                  : `${o.changeS < 0 ? '−' : '+'}${shownNumber(decimal(Math.abs(o.changeS), 1))} ± ${shownNumber(decimal(o.changeSdS, 1))}`}
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
          <li key={o.quickerSPerKm}>{t(openingText(o, unit))}</li>
        ))}
    </ul>
    <p class="note">
      {t('± is one standard error from the thousand runs, not the doubt of the model, which is larger.')}
    </p>
  </>
);

/** How these runners run: as people do, moved by what this runner's own runs have shown. */
const Manner = ({ spread, goalS, ownRuns }: { spread: Spread; goalS: number; ownRuns: number }) => {
  const usual = usualFade(goalS);
  const places = {
    wander: decimal(100 * spread.wanderSd, 1),
    fade: decimal(100 * (usual + (spread.fadeMore ?? 0)), 1),
    usual: decimal(100 * usual, 1),
    station: decimal(spread.stationS, 1),
  };
  return ownRuns === 0
    ? t(
        'They run as most do: the pace wanders by {wander} % over a kilometre, a water station costs {station} s.',
        places,
      )
    : t(
        plural(
          ownRuns,
          'Moved by one run of yours: the pace wanders by {wander} % over a kilometre, a water station costs {station} s, and legs that give all slow by {fade} % from the first half to the second, where most slow by {usual} %.',
          'Moved by {n} runs of yours: the pace wanders by {wander} % over a kilometre, a water station costs {station} s, and legs that give all slow by {fade} % from the first half to the second, where most slow by {usual} %.',
          places,
        ),
      );
};
