import { useComputed, useSignal } from '@preact/signals';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { goalMeaning } from '../../core/prepare/goal/marks.ts';
import { message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import { type PlanSheet, planSheetOf } from '../../session/plan/planCurve.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { pace, span } from '../format.ts';
import { fileNameOf, OpenFile, saveFile } from '../parts/files.tsx';
import { rich } from '../parts/rich.tsx';
import { HEAR_MINE } from '../route.ts';
import { PlanCurve } from './planCurve.tsx';
import { PlanDetails, PlanEssentials } from './planForm.tsx';
import { CutOffs, PlanTable } from './planSheet.tsx';
import { PlanShelf } from './shelf.tsx';
import { ExamplePlan, NextStep, Steps } from './steps.tsx';

export const PlanScreen = ({ model }: { model: PlanModel }) => {
  const sheet = useComputed(() => planSheetOf(model.plan.value, model.course.value));
  const plan = model.plan.value;
  const goalPace = <strong class="figure">{pace((1000 * plan.goalS) / plan.distanceM, plan.unit)}</strong>;
  return (
    <main class="plan">
      <Steps here="plan" />
      <header class="lead-in">
        <h1>{t('Plan||noun')}</h1>
        <p>
          {plan.unit === 'km'
            ? rich(
                'What you mean to run, from the line to the finish. An even {pace} per km makes the goal.',
                { pace: goalPace },
              )
            : rich(
                'What you mean to run, from the line to the finish. An even {pace} per mi makes the goal.',
                { pace: goalPace },
              )}
        </p>
      </header>
      <ExamplePlan model={model} />
      <div class="plan-sides plan-three">
        <section aria-label={t('Your plan')}>
          <PlanEssentials model={model} />
        </section>
        <section class="plan-sheet plan-curve" aria-label={t('The plan as a curve')}>
          {!model.reading.value.ok && (
            <p class="field-error" role="status">
              {t('Shown is the last plan that could be read.')}
            </p>
          )}
          <PlanCurve plan={plan} sheet={sheet.value} />
          <PlanBrings plan={plan} sheet={sheet.value} />
          <KeyTimes plan={plan} sheet={sheet.value} />
          <p class="note">
            {t('Kept on this device as you type. Everything else here may be left out.')}{' '}
            <a href={HEAR_MINE}>{t('Hear my race')}</a>
          </p>
          <UndoBar model={model} />
        </section>
        <section aria-label={t('What may be left out')}>
          <PlanDetails model={model} />
          <PlanShelf model={model} />
          <PlanFiles model={model} />
        </section>
        <section class="plan-sheet" aria-label={t('Schedule')}>
          <PlanTable sheet={sheet.value} plan={plan} />
          <CutOffs sheet={sheet.value} unit={plan.unit} />
        </section>
      </div>
      <NextStep here="plan" />
    </main>
  );
};

const MARKS = { '5K': message('5K'), '10K': message('10K'), 'half-way': message('half-way||place') };

/** The times that are asked for first, beside the curve; the whole table is further down on a phone. */
const KeyTimes = ({ plan, sheet }: { plan: RacePlan; sheet: PlanSheet }) => (
  <dl class="key-times">
    {goalMeaning(plan.distanceM, plan.goalS, sheet.schedule.timeAtS).marks.map(({ name, timeS }) => (
      <div key={name}>
        <dt>{name === 'finish' ? t('finish||place') : t(MARKS[name])}</dt>
        <dd class="figure">{span(timeS)}</dd>
      </div>
    ))}
  </dl>
);

const UndoBar = ({ model }: { model: PlanModel }) => (
  <div class="buttons undo-bar">
    <button type="button" disabled={!model.canUndo.value} onClick={model.undo}>
      {t('Undo')}
    </button>
  </div>
);

/** What each leg brings, in seconds: so that nobody has to work it out. */
const PlanBrings = ({ plan, sheet }: { plan: RacePlan; sheet: PlanSheet }) => {
  const { opening, push, openingWins } = plan;
  const wonS = opening === null ? 0 : (opening.quickerSPerKm * opening.untilM) / 1000;
  const pushS = push === null ? 0 : (push.quickerSPerKm * (plan.distanceM - push.fromM)) / 1000;
  const parts = [
    ...(opening === null ? [] : [openingText(wonS, openingWins === 'spent')]),
    ...(push === null ? [] : [t('The push brings {n} s.', { n: Math.round(Math.abs(pushS)) })]),
    endsText(sheet.schedule.timeAtS(plan.distanceM), plan.goalS),
  ];
  return <p class="note">{parts.join(' ')}</p>;
};

/** Why a plan for 1:44:00 ends at 1:43:39 is the first thing that its reader asks. */
const endsText = (finishS: number, goalS: number): string => {
  const n = Math.round(goalS - finishS);
  const values = { time: span(finishS), n: Math.abs(n), goal: span(goalS) };
  if (n === 0) return t('The plan ends at {time}.', values);
  return n > 0
    ? t('The plan ends at {time}: {n} s in hand on the goal of {goal}.', values)
    : t('The plan ends at {time}: {n} s over the goal of {goal}.', values);
};

const openingText = (wonS: number, spent: boolean): string => {
  const n = Math.round(Math.abs(wonS));
  if (wonS < 0)
    return spent
      ? t('The opening leaves {n} s, made up evenly after it.', { n })
      : t('The opening leaves {n} s, not made up.', { n });
  return spent
    ? t('The opening wins {n} s, given back evenly after it.', { n })
    : t('The opening wins {n} s, kept to the line.', { n });
};

const PlanFiles = ({ model }: { model: PlanModel }) => {
  const trouble = useSignal<string | null>(null);
  const course = model.courseFile.value;
  const line = model.course.value;
  const off = line === null ? 0 : line.recordedM - line.officialM;
  const measured = { name: <em>{course?.name}</em>, n: String(Math.round(Math.abs(off))) };
  return (
    <fieldset class="supplies">
      <legend>{t('Course and files')}</legend>
      {course !== null && line !== null && (
        <p>
          {off >= 0
            ? rich(
                "Course: {name}. Its recording measures {n} m more than the race; the race's distance counts.",
                measured,
              )
            : rich(
                "Course: {name}. Its recording measures {n} m less than the race; the race's distance counts.",
                measured,
              )}
        </p>
      )}
      {course === null && (
        <p class="note">
          {t('With the course as GPX, Soundline knows where on it you are, tunnels included.')}
        </p>
      )}
      <div class="buttons">
        <OpenFile
          label={course === null ? t('Open a course (GPX)') : t('Another course (GPX)')}
          accept=".gpx,application/gpx+xml"
          onText={(text, name) => {
            void model.importCourse(text, name).then((said) => {
              trouble.value = said;
            });
          }}
        />
        {course !== null && (
          <button type="button" onClick={model.dropCourse}>
            {t('Without a course')}
          </button>
        )}
        <OpenFile
          label={t('Open a plan')}
          accept=".json,application/json"
          onText={(text) => {
            trouble.value = model.importPlan(text);
          }}
        />
        <button
          type="button"
          onClick={() =>
            saveFile(fileNameOf(model.plan.value.name, 'json'), 'application/json', model.planFile())
          }
        >
          {t('Save the plan')}
        </button>
        <a class="button" href="#/share">
          {t('Hand it to another phone')}
        </a>
      </div>
      <p class="note">
        {rich('A plan file is plain JSON; what may stand in it says {schema}.', {
          schema: <a href="/schema/race-plan.v1.json">{t('its published schema')}</a>,
        })}
      </p>
      {trouble.value !== null && (
        <p class="field-error" role="alert">
          {trouble.value}
        </p>
      )}
    </fieldset>
  );
};
