import { durationText, roughDurationText } from '../../core/prepare/format.ts';
import { FORMULAS, formulas } from '../../core/prepare/goal/formulas.ts';
import type { GoalMark } from '../../core/prepare/goal/marks.ts';
import { decimal, decimalUpTo, message, plural } from '../../core/units/message.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import { shownNumber, t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import type { GoalSheet } from '../../session/prepare/prepareGoal.ts';
import type { PrepareModel } from '../../session/prepare/prepareModel.ts';
import { distance, pace, shortDistance, span, unitName } from '../format.ts';
import { rich } from '../parts/rich.tsx';
import { Cautions, Sources } from '../plan/fineprint.tsx';
import { BadPlan, ExamplePlan, NextStep, Steps } from '../plan/steps.tsx';
import { GoalForm } from './goalForm.tsx';
import { RangeChart } from './rangeChart.tsx';

export const GoalScreen = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const sheet = model.goal.value;
  const race = plan.plan.value;
  return (
    <main class="goal">
      <Steps here="goal" />
      <header class="lead-in">
        <h1>{t('Goal')}</h1>
        <p>{t('What have you run lately, and what does it say about this race? A range, not a promise.')}</p>
      </header>
      <BadPlan model={plan} />
      <ExamplePlan model={plan} />
      <div class="plan-sides">
        <section aria-label={t('What you know')}>
          <GoalForm model={model} plan={plan} />
        </section>
        <section class="sheet" aria-label={t('What it says')}>
          {sheet.prediction === null || sheet.verdict === null ? (
            <p class="verdict">{t('Fill in a recent result to see which times it points to.')}</p>
          ) : (
            <>
              <p class="verdict" role="status" data-grade={sheet.verdict.grade}>
                {t(sheet.verdict.text)}
              </p>
              <RangeChart prediction={sheet.prediction} goalS={race.goalS} />
              {sheet.prediction.notes.map((note) => (
                <p key={note.text} class="note">
                  {t(note)}
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
      <NextStep here="goal" />
    </main>
  );
};

const Training = ({ sheet }: { sheet: GoalSheet }) =>
  sheet.training === null || sheet.training.weeks === null ? null : (
    <section aria-label={t('What it would take')}>
      <h2>{t('What it would take')}</h2>
      <p>{t(sheet.training.text)}</p>
      <ul>
        {sheet.training.steps.map((step) => (
          <li key={step.text}>{t(step)}</li>
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
    <section aria-label={t('By formula')}>
      <h2>{t('By formula')}</h2>
      {sheet.ownResults > 0 && (
        <p class="note">
          {rich(
            plural(
              sheet.ownResults,
              'One of these comes from your own {runs}.',
              '{n} of these come from your own {runs}.',
            ),
            { runs: <a href="#/runs">{t('runs||noun')}</a> },
          )}
        </p>
      )}
      <div class="scroll-x">
        <table class="plan-table">
          <thead>
            <tr>
              <th scope="col">{t('Formula')}</th>
              {rows.map(({ result }, i) => (
                <th key={i} scope="col">
                  {t('{distance} {unit} in {time}', {
                    distance: shortDistance(result.distanceM, unit, 1),
                    unit: unitName(unit),
                    time: durationText(result.timeS),
                  })}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {FORMULAS.map((name) => (
              <tr key={name}>
                <th scope="row">{t(formulas[name].label)}</th>
                {rows.map(({ timesS }, i) => (
                  <td key={i}>{span(timesS[name])}</td>
                ))}
              </tr>
            ))}
            {isAdded && (
              <tr>
                <th scope="row">{t('Added||time')}</th>
                {rows.map(({ addedPercent }, i) => (
                  <td key={i}>
                    {addedPercent < LEAST_ADDED ? '–' : `${shownNumber(decimal(addedPercent, 1))} %`}
                  </td>
                ))}
              </tr>
            )}
          </tbody>
        </table>
      </div>
      <p class="note">
        {isAdded
          ? t('On a flat course on a normal day. “Added” is for weekly distance and for going long.')
          : t('On a flat course on a normal day.')}
      </p>
    </section>
  );
};

const MARKS = { '5K': message('5K'), '10K': message('10K') };

const markText = ({ name, atM }: GoalMark, unit: DistanceUnit): string => {
  if (name === 'finish') return t('finish||place');
  return name === 'half-way'
    ? t('half-way ({distance} {unit})', { distance: distance(atM, unit, 2), unit: unitName(unit) })
    : t(MARKS[name]);
};

const Meaning = ({ sheet, unit }: { sheet: GoalSheet; unit: 'km' | 'mile' }) => {
  const { meaning } = sheet;
  return (
    <section aria-label={t('What the goal means')}>
      <h2>{t('What the goal means')}</h2>
      <p>
        {rich('{perKm} per km, {perMile} per mile. By your plan:', {
          perKm: <strong class="figure">{pace(meaning.paceSPerKm, 'km')}</strong>,
          perMile: <strong class="figure">{pace(meaning.paceSPerKm, 'mile')}</strong>,
        })}
      </p>
      <div class="scroll-x">
        <table class="plan-table">
          <tbody>
            {meaning.marks.map((mark) => (
              <tr key={mark.name} data-what={mark.name === 'finish' ? 'finish' : 'board'}>
                <th scope="row">{markText(mark, unit)}</th>
                <td>{durationText(mark.timeS)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};

const Reasons = ({ sheet }: { sheet: GoalSheet }) => {
  const { prediction, hillRatio } = sheet;
  const hills = Math.round(1000 * (hillRatio - 1)) / 10;
  return (
    <section aria-label={t('Heat and hills')}>
      <h2>{t('Heat and hills')}</h2>
      {sheet.reasons.length === 0 && (
        <p>
          {sheet.climbM === null
            ? t('Fill in the temperature and open a course with heights to see what they ask of the goal.')
            : t('Nothing in what you gave speaks against the goal.')}
        </p>
      )}
      {sheet.reasons.map((reason) => (
        <p key={reason.kind} class="reason" data-weight={reason.weight}>
          <strong>{reason.weight === 'revise' ? t('Revise:') : t('Consider:')}</strong> {t(reason.text)}
        </p>
      ))}
      {prediction !== null && hills > 0 && (
        <p>
          {t(
            'With {climb} m of climbing an even effort takes {percent} % longer than on the flat: the middle of the range here is about {time}.',
            {
              climb: Math.round(sheet.climbM ?? 0),
              percent: decimalUpTo(hills, 1),
              time: roughDurationText(prediction.middleS * hillRatio),
            },
          )}
        </p>
      )}
    </section>
  );
};
