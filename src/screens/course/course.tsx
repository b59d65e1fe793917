import { useComputed, useSignal } from '@preact/signals';
import { plural } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { PastRuns } from '../../session/course/coursePast.ts';
import { type CourseRead, takeCourseFile } from '../../session/course/courseRead.ts';
import { stationsOf } from '../../session/course/courseStations.ts';
import { type CourseView, courseViewOf } from '../../session/course/courseView.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { BadPlan, ExamplePlan, NextStep, Steps } from '../plan/steps.tsx';
import { CourseFacts } from './courseFacts.tsx';
import { CourseMap } from './courseMap.tsx';
import { CourseProfile } from './courseProfile.tsx';
import { DropFile } from './dropFile.tsx';
import { PastRunsList } from './pastRuns.tsx';
import { PlaceTools } from './placeTools.tsx';

/** Of a file's places the ones nearer than this to a station of the plan are that station. */
const SAME_PLACE_M = 50;

/** Puts what was read into the plan. @returns what the runner should know of it */
const putIntoPlan = (model: PlanModel, { course, waypoints, notes }: CourseRead): readonly string[] => {
  if (course !== null) model.setCourse(course);
  const line = model.course.value;
  if (line === null)
    return course === null
      ? [...notes, t('Open the course itself first: these places need a line to lie on.')]
      : notes;
  const { stations } = model.plan.value;
  const fresh = stationsOf(waypoints, line).filter(
    ({ atM }) => !stations.some((s) => Math.abs(s.atM - atM) < SAME_PLACE_M),
  );
  if (fresh.length > 0) model.change((p) => ({ ...p, stations: [...p.stations, ...fresh] }));
  if (course === null)
    return [
      ...notes,
      t('Places only: {n} of {m} are stations on your course.', { n: fresh.length, m: waypoints.length }),
    ];
  if (fresh.length === 0) return notes;
  const found = plural(
    fresh.length,
    '{n} station found in the file and put into the plan.',
    '{n} stations found in the file and put into the plan.',
  );
  return [...notes, t(found)];
};

/** The course drawn, and what can be put at a place of it. */
const Drawn = ({ model, view }: { model: PlanModel; view: CourseView }) => {
  const pickedM = useSignal(0);
  /** All places of the course at the point last touched: more than one where it comes by twice. */
  const passesM = useSignal<readonly number[]>([]);
  const plan = model.plan.value;
  const pick = (atM: number, passes: readonly number[] = []): void => {
    pickedM.value = Math.min(plan.distanceM, Math.max(0, atM));
    passesM.value = passes;
  };
  return (
    <div class="course-sides">
      <section aria-label={t('The course drawn')}>
        <CourseMap
          view={view}
          plan={plan}
          pickedM={pickedM.value}
          onPick={(east, north) => {
            const passes = view.alongAt(east, north);
            pick(passes[0] ?? 0, passes);
          }}
        />
        <CourseProfile view={view} plan={plan} pickedM={pickedM.value} onPick={(m) => pick(m)} />
      </section>
      <section class="sheet" aria-label={t('Places on the course')}>
        <CourseFacts model={model} view={view} />
        <PlaceTools
          model={model}
          pickedM={pickedM.value}
          passesM={passesM.value}
          onPick={(m) => pick(m, passesM.value)}
        />
      </section>
    </div>
  );
};

export const CourseScreen = ({ model, runs }: { model: PlanModel; runs: PastRuns }) => {
  const trouble = useSignal<string | null>(null);
  const notes = useSignal<readonly string[]>([]);
  /** Counts the files: another course is looked at from its beginning. */
  const taken = useSignal(0);
  const view = useComputed(() => (model.course.value === null ? null : courseViewOf(model.course.value)));

  const take = async (file: File): Promise<void> => {
    const got = await takeCourseFile(file, model.plan.value.distanceM);
    trouble.value = got.ok ? null : got.why;
    notes.value = got.ok ? putIntoPlan(model, got.value) : [];
    if (got.ok) taken.value++;
  };

  const shown = view.value;
  return (
    <main class="course">
      <Steps here="course" />
      <header class="lead-in">
        <h1>{t('Course')}</h1>
        <p>
          {t(
            'The line on the ground, from a file of the race or a run of yours. It is read here and goes nowhere.',
          )}
        </p>
      </header>
      <BadPlan model={model} />
      <ExamplePlan model={model} />
      <DropFile onFile={(file) => void take(file)} hasCourse={shown !== null}>
        <PastRunsList runs={runs} onFile={(file) => void take(file)} />
      </DropFile>
      {shown === null && (
        <p class="note">
          {t(
            'Without a course Soundline goes by the signal alone, which is some hundred metres wrong over a half marathon. Pressing at the boards mends most of that.',
          )}
        </p>
      )}
      {trouble.value !== null && (
        <p class="field-error" role="alert">
          {trouble.value}
        </p>
      )}
      {notes.value.map((note) => (
        <p key={note} class="note" role="status">
          {note}
        </p>
      ))}
      {shown !== null && <Drawn key={taken.value} model={model} view={shown} />}
      <NextStep here="course" />
    </main>
  );
};
