import { useComputed, useSignal } from '@preact/signals';
import { planSheetOf } from '../../session/planCurve.ts';
import type { PlanModel } from '../../session/planModel.ts';
import { pace, unitName } from '../format.ts';
import { fileNameOf, OpenFile, saveFile } from '../parts/files.tsx';
import { PlanCurve } from './planCurve.tsx';
import { PlanForm } from './planForm.tsx';
import { PlanTable } from './planSheet.tsx';

export const PlanScreen = ({ model }: { model: PlanModel }) => {
  const sheet = useComputed(() => planSheetOf(model.plan.value, model.course.value));
  const plan = model.plan.value;
  return (
    <main class="plan">
      <header class="lead-in">
        <h1>Plan</h1>
        <p>
          What you mean to do, kerb to kerb. Your clock is held against it at every step:{' '}
          <strong class="figure">{pace((1000 * plan.goalS) / plan.distanceM, plan.unit)}</strong> per{' '}
          {unitName(plan.unit)} makes the goal.
        </p>
      </header>
      <div class="plan-sides">
        <section aria-label="Your plan">
          <PlanForm model={model} />
          <PlanFiles model={model} />
        </section>
        <section class="plan-sheet" aria-label="Schedule">
          {!model.reading.value.ok && (
            <p class="field-error" role="status">
              Shown is the last plan that could be read.
            </p>
          )}
          <PlanCurve plan={plan} sheet={sheet.value} />
          <PlanTable sheet={sheet.value} unit={plan.unit} />
        </section>
      </div>
    </main>
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
      {trouble.value !== null && (
        <p class="field-error" role="alert">
          {trouble.value}
        </p>
      )}
    </fieldset>
  );
};
