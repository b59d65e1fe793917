import { useComputed, useSignal } from '@preact/signals';
import { plural } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { PastRuns } from '../../session/coursePast.ts';
import { takeCourseFile } from '../../session/courseRead.ts';
import { stationsOf } from '../../session/courseStations.ts';
import { courseViewOf } from '../../session/courseView.ts';
import type { PlanModel } from '../../session/planModel.ts';
import { BadPlan, ExamplePlan, NextStep, Steps } from '../plan/steps.tsx';
import { CourseFacts } from './courseFacts.tsx';
import { CourseMap } from './courseMap.tsx';
import { CourseProfile } from './courseProfile.tsx';
import { DropFile } from './dropFile.tsx';
import { PastRunsList } from './pastRuns.tsx';
import { PlaceTools } from './placeTools.tsx';

export const CourseScreen = ({ model, runs }: { model: PlanModel; runs: PastRuns }) => {
  const trouble = useSignal<string | null>(null);
  const notes = useSignal<readonly string[]>([]);
  const pickedM = useSignal(0);
  /** All places of the course at the point last touched: more than one where it comes by twice. */
  const passesM = useSignal<readonly number[]>([]);
  const view = useComputed(() => (model.course.value === null ? null : courseViewOf(model.course.value)));
  const plan = model.plan.value;

  const take = async (file: File): Promise<void> => {
    const got = await takeCourseFile(file, plan.distanceM);
    trouble.value = got.ok ? null : got.why;
    notes.value = [];
    if (!got.ok) return;
    const { course, waypoints, notes: said } = got.read;
    if (course !== null) model.setCourse(course);
    const line = model.course.value;
    const found = line === null ? [] : stationsOf(waypoints, line);
    const fresh = found.filter((f) => !plan.stations.some((s) => Math.abs(s.atM - f.atM) < 50));
    if (fresh.length > 0) model.change((p) => ({ ...p, stations: [...p.stations, ...fresh] }));
    const nowhere =
      line === null ? [t('Open the course itself first: these places need a line to lie on.')] : [];
    notes.value = [
      ...said,
      ...(course === null && line !== null
        ? [
            t('Places only: {n} of {m} are stations on your course.', {
              n: fresh.length,
              m: waypoints.length,
            }),
          ]
        : []),
      ...(course !== null && fresh.length > 0
        ? [
            t(
              plural(
                fresh.length,
                '{n} station found in the file and put into the plan.',
                '{n} stations found in the file and put into the plan.',
              ),
            ),
          ]
        : []),
      ...(course === null ? nowhere : []),
    ];
    pickedM.value = 0;
    passesM.value = [];
  };

  const shown = view.value;
  const pick = (atM: number, passes: readonly number[] = []): void => {
    pickedM.value = Math.min(plan.distanceM, Math.max(0, atM));
    passesM.value = passes;
  };
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
      {shown !== null && (
        <div class="course-sides">
          <section aria-label={t('The course drawn')}>
            <CourseMap
              view={shown}
              plan={plan}
              pickedM={pickedM.value}
              onPick={(east, north) => {
                const passes = shown.alongAt(east, north);
                pick(passes[0] ?? 0, passes);
              }}
            />
            <CourseProfile view={shown} plan={plan} pickedM={pickedM.value} onPick={(m) => pick(m)} />
          </section>
          <section class="sheet" aria-label={t('Places on the course')}>
            <CourseFacts model={model} view={shown} />
            <PlaceTools
              model={model}
              pickedM={pickedM.value}
              passesM={passesM.value}
              onPick={(m) => pick(m, passesM.value)}
            />
          </section>
        </div>
      )}
      <NextStep here="course" />
    </main>
  );
};
