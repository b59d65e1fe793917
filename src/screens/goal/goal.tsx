import { durationText, roughDurationText } from '../../core/prepare/format.ts';
import { FORMULAS, formulas } from '../../core/prepare/goal/formulas.ts';
import type { PlanModel } from '../../session/planModel.ts';
import type { GoalSheet } from '../../session/prepareGoal.ts';
import type { PrepareModel } from '../../session/prepareModel.ts';
import { distance, pace, span, unitName } from '../format.ts';
import { Cautions, Sources } from '../plan/fineprint.tsx';
import { BadPlan, Steps } from '../plan/steps.tsx';
import { GoalForm } from './goalForm.tsx';
import { RangeChart } from './rangeChart.tsx';

export const GoalScreen = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const sheet = model.goal.value;
  const race = plan.plan.value;
  return (
    <main class="goal">
      <Steps here="goal" />
      <header class="lead-in">
        <h1>Goal</h1>
        <p>What have you run lately, and what does it say about this race? A range, not a promise.</p>
      </header>
      <BadPlan model={plan} />
      <div class="plan-sides">
        <section aria-label="What you know">
          <GoalForm model={model} plan={plan} />
        </section>
        <section class="sheet" aria-label="What it says">
          {sheet.prediction === null || sheet.verdict === null ? (
            <p class="verdict">Put in a result, and the range that it points to stands here.</p>
          ) : (
            <>
              <p class="verdict" role="status" data-grade={sheet.verdict.grade}>
                {sheet.verdict.text}
              </p>
              <RangeChart prediction={sheet.prediction} goalS={race.goalS} />
              {sheet.prediction.notes.map((note) => (
                <p key={note} class="note">
                  {note}
                </p>
              ))}
              <Training sheet={sheet} />
              <Formulas sheet={sheet} unit={race.unit} />
            </>
          )}
          <Meaning sheet={sheet} unit={race.unit} />
          <Reasons sheet={sheet} />
          <Cautions
            keys={[
              ...(sheet.verdict?.cautions ?? []),
              ...sheet.reasons.flatMap((r) => r.cautions),
              ...(sheet.training?.weeks ? sheet.training.cautions : []),
            ]}
          />
          <Sources
            sources={[
              ...FORMULAS.map((name) => formulas[name].source),
              ...(sheet.prediction?.sources ?? []),
              ...sheet.reasons.map((r) => r.source),
              ...(sheet.training?.sources ?? []),
            ]}
          />
        </section>
      </div>
    </main>
  );
};

const Training = ({ sheet }: { sheet: GoalSheet }) =>
  sheet.training === null || sheet.training.weeks === null ? null : (
    <section aria-label="What it would take">
      <h2>What it would take</h2>
      <p>{sheet.training.text}</p>
      <ul>
        {sheet.training.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ul>
    </section>
  );

/** Per cent; less is not shown. */
const LEAST_ADDED = 0.05;

const Formulas = ({ sheet, unit }: { sheet: GoalSheet; unit: 'km' | 'mile' }) => {
  const rows = sheet.prediction?.byResult ?? [];
  const isAdded = rows.some((r) => r.addedPercent >= LEAST_ADDED);
  return (
    <section aria-label="By formula">
      <h2>By formula</h2>
      {sheet.ownResults > 0 && (
        <p class="note">
          {sheet.ownResults === 1 ? 'One of these comes' : `${sheet.ownResults} of these come`} from your own{' '}
          <a href="#/runs">runs</a>.
        </p>
      )}
      <div class="scroll-x">
        <table class="plan-table">
          <thead>
            <tr>
              <th scope="col">From</th>
              {FORMULAS.map((name) => (
                <th key={name} scope="col">
                  {formulas[name].label}
                </th>
              ))}
              {isAdded && <th scope="col">Added</th>}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ result, timesS, addedPercent }, i) => (
              <tr key={i}>
                <th scope="row">
                  {Number(distance(result.distanceM, unit, 1))} {unitName(unit)} in{' '}
                  {durationText(result.timeS)}
                </th>
                {FORMULAS.map((name) => (
                  <td key={name}>{span(timesS[name])}</td>
                ))}
                {isAdded && <td>{addedPercent < LEAST_ADDED ? '–' : `${addedPercent.toFixed(1)} %`}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="note">
        On a flat course on a normal day.{isAdded && ' “Added” is for weekly distance and for going long.'}
      </p>
    </section>
  );
};

const Meaning = ({ sheet, unit }: { sheet: GoalSheet; unit: 'km' | 'mile' }) => {
  const { meaning } = sheet;
  return (
    <section aria-label="What the goal means">
      <h2>What the goal means</h2>
      <p>
        <strong class="figure">{pace(meaning.paceSPerKm, 'km')}</strong> per km,{' '}
        <strong class="figure">{pace(meaning.paceSPerKm, 'mile')}</strong> per mile. By your plan:
      </p>
      <table class="plan-table">
        <tbody>
          {meaning.marks.map((mark) => (
            <tr key={mark.name} data-what={mark.name === 'finish' ? 'finish' : 'board'}>
              <th scope="row">
                {mark.name}
                {mark.name === 'half-way' && ` (${distance(mark.atM, unit, 2)} ${unitName(unit)})`}
              </th>
              <td>{durationText(mark.timeS)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

const Reasons = ({ sheet }: { sheet: GoalSheet }) => {
  const { prediction, hillRatio } = sheet;
  const hills = Math.round(1000 * (hillRatio - 1)) / 10;
  return (
    <section aria-label="Heat and hills">
      <h2>Heat and hills</h2>
      {sheet.reasons.length === 0 && (
        <p>
          {sheet.climbM === null
            ? 'Put in the temperature, and a course with heights, and reasons to take the goal back stand here.'
            : 'Nothing in what you gave speaks against the goal.'}
        </p>
      )}
      {sheet.reasons.map((reason) => (
        <p key={reason.kind} class="reason" data-weight={reason.weight}>
          <strong>{reason.weight === 'revise' ? 'Revise' : 'Consider'}:</strong> {reason.text}
        </p>
      ))}
      {prediction !== null && hills > 0 && (
        <p>
          With {Math.round(sheet.climbM ?? 0)} m of climbing an even effort takes {hills} % longer than on the
          flat: the middle of the range here is about {roughDurationText(prediction.middleS * hillRatio)}.
        </p>
      )}
    </section>
  );
};
