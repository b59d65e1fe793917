import { useComputed, useSignal } from '@preact/signals';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { type PlanSheet, planSheetOf } from '../../session/planCurve.ts';
import type { PlanModel } from '../../session/planModel.ts';
import { pace, span, unitName } from '../format.ts';
import { fileNameOf, OpenFile, saveFile } from '../parts/files.tsx';
import { PlanCurve } from './planCurve.tsx';
import { PlanForm } from './planForm.tsx';
import { CutOffs, PlanTable } from './planSheet.tsx';
import { PlanShelf } from './shelf.tsx';
import { Steps } from './steps.tsx';

export const PlanScreen = ({ model }: { model: PlanModel }) => {
  const sheet = useComputed(() => planSheetOf(model.plan.value, model.course.value));
  const plan = model.plan.value;
  return (
    <main class="plan">
      <Steps here="plan" />
      <header class="lead-in">
        <h1>Plan</h1>
        <p>
          What you mean to do, kerb to kerb. Your clock is held against it at every step:{' '}
          <strong class="figure">{pace((1000 * plan.goalS) / plan.distanceM, plan.unit)}</strong> per{' '}
          {unitName(plan.unit)} makes the goal.
        </p>
      </header>
      <div class="plan-sides plan-three">
        <section aria-label="Your plan">
          <UndoBar model={model} />
          <PlanForm model={model} />
          <PlanShelf model={model} />
          <PlanFiles model={model} />
        </section>
        <section class="plan-sheet plan-curve" aria-label="The plan as a curve">
          {!model.reading.value.ok && (
            <p class="field-error" role="status">
              Shown is the last plan that could be read.
            </p>
          )}
          <PlanCurve plan={plan} sheet={sheet.value} />
          <PlanBrings plan={plan} sheet={sheet.value} />
        </section>
        <section class="plan-sheet" aria-label="Schedule">
          <PlanTable sheet={sheet.value} plan={plan} />
          <CutOffs sheet={sheet.value} unit={plan.unit} />
        </section>
      </div>
    </main>
  );
};

const UndoBar = ({ model }: { model: PlanModel }) => (
  <div class="buttons undo-bar">
    <button type="button" disabled={!model.canUndo.value} onClick={model.undo}>
      Undo
    </button>
  </div>
);

/** What each leg brings, in seconds: so that nobody has to work it out. */
const PlanBrings = ({ plan, sheet }: { plan: RacePlan; sheet: PlanSheet }) => {
  const { opening, push, openingWins } = plan;
  const wonS = opening === null ? 0 : (opening.quickerSPerKm * opening.untilM) / 1000;
  const pushS = push === null ? 0 : (push.quickerSPerKm * (plan.distanceM - push.fromM)) / 1000;
  const seconds = (s: number): string => `${Math.round(Math.abs(s))} s`;
  return (
    <p class="note">
      {opening !== null &&
        `The opening ${wonS < 0 ? 'leaves' : 'wins'} ${seconds(wonS)}, ${openingWins === 'spent' ? (wonS < 0 ? 'made up evenly after it' : 'given back evenly after it') : wonS < 0 ? 'not made up' : 'kept to the line'}. `}
      {push !== null && `The push brings ${seconds(pushS)}. `}
      The plan ends at {span(sheet.schedule.timeAtS(plan.distanceM))}.
    </p>
  );
};

const PlanFiles = ({ model }: { model: PlanModel }) => {
  const trouble = useSignal<string | null>(null);
  const course = model.courseFile.value;
  const line = model.course.value;
  const off = line === null ? 0 : line.recordedM - line.officialM;
  return (
    <fieldset class="supplies">
      <legend>Course and files</legend>
      {course !== null && line !== null && (
        <p>
          Course: <em>{course.name}</em>. Its recording measures {Math.round(Math.abs(off))} m{' '}
          {off >= 0 ? 'more' : 'less'} than the race; the race's distance counts.
        </p>
      )}
      {course === null && (
        <p class="note">With the course as GPX, Soundline knows where on it you are, tunnels included.</p>
      )}
      <div class="buttons">
        <OpenFile
          label={course === null ? 'Open a course (GPX)' : 'Another course (GPX)'}
          accept=".gpx,application/gpx+xml"
          onText={(text, name) => {
            trouble.value = model.importCourse(text, name);
          }}
        />
        {course !== null && (
          <button type="button" onClick={model.dropCourse}>
            Without a course
          </button>
        )}
        <OpenFile
          label="Open a plan"
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
          Save the plan
        </button>
      </div>
      <p class="note">
        A plan file is plain JSON; what may stand in it says{' '}
        <a href="/schema/race-plan.v1.json">its published schema</a>.
      </p>
      {trouble.value !== null && (
        <p class="field-error" role="alert">
          {trouble.value}
        </p>
      )}
    </fieldset>
  );
};
