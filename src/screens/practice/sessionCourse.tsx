import { useComputed, useSignal } from '@preact/signals';
import type { PracticeCourse } from '../../core/plan/practiceCourse.ts';
import { layCourse } from '../../core/practice/way/lay.ts';
import { t } from '../../languages/text.ts';
import type { PastRuns } from '../../session/course/coursePast.ts';
import { type Taken, takenOf } from '../../session/course/givenFile.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { practiceCourseOfRace, takePracticeCourseFile } from '../../session/practice/practiceCourseRead.ts';
import type { PracticeModel } from '../../session/practice/practiceModel.ts';
import { PastRunsList } from '../course/pastRuns.tsx';
import { distance, unitName } from '../format.ts';
import { PickFile } from '../parts/files.tsx';
import { SmallMap } from './smallMap.tsx';

/** What a session is chosen from: its own settings, the race that is planned, the runs that are kept. */
export interface SessionProps {
  readonly model: PracticeModel;
  readonly race: PlanModel;
  readonly runs: PastRuns;
}

/** What the course is, and how it is told. */
const Chosen = ({ course, model }: { course: PracticeCourse; model: PracticeModel }) => {
  const laid = useComputed(() => (model.course.value === null ? null : layCourse(model.course.value)));
  const first = laid.value?.lines[0];
  if (laid.value === null || first === undefined) return <p>{course.name}</p>;
  const { unit } = model.plan.value;
  const length = { distance: distance(laid.value.lengthM, unit), unit: unitName(unit) };
  return (
    <>
      {course.name !== '' && (
        <p>
          <strong>{course.name}</strong>
        </p>
      )}
      <p>
        {laid.value.lapM === null
          ? t('One way, {distance} {unit}: where it ends, the way is measured by position alone.', length)
          : t(
              'Comes back to its begin after {distance} {unit}, and is run as often as the session lasts.',
              length,
            )}
      </p>
      <SmallMap line={first.lap} name={course.name} />
    </>
  );
};

/** The way that a session is run on: from a file, from the race, from a run that is kept; shown, and taken away again. */
export const SessionCourse = ({ model, race, runs }: SessionProps) => {
  const trouble = useSignal<string | null>(null);
  const course = model.course.value;
  const take = (got: Taken<PracticeCourse>): void => {
    trouble.value = got.ok ? null : got.why;
    if (got.ok) model.setCourse(got.value);
  };
  const takeOfFile = (file: File): void => void takePracticeCourseFile(file).then(take);
  const ofRace = race.courseFile.value;
  return (
    <section class="session-course" aria-label={t('Course of the session')}>
      <h2>{t('On a way that you know')}</h2>
      <p class="note">
        {t(
          'A loop or a road that you know makes legs by distance end nearer to their place in town. Begin anywhere on it, in either direction. Off it the way is measured by position alone; it stays with the session, and on this device.',
        )}
      </p>
      {course !== null && <Chosen course={course} model={model} />}
      {course !== null && model.plan.value.place === 'indoors' && (
        <p class="note">{t('Indoors it is not used.')}</p>
      )}
      {trouble.value !== null && (
        <p class="field-error" role="alert">
          {trouble.value}
        </p>
      )}
      <div class="buttons">
        <PickFile
          label={course === null ? t('Open a course') : t('Another file')}
          about={t('Course file')}
          accept=".gpx,.jsonl,application/gpx+xml"
          onFile={takeOfFile}
        />
        {ofRace !== null && (
          <button
            type="button"
            onClick={() => take(takenOf(practiceCourseOfRace(ofRace, race.plan.value.distanceM)))}
          >
            {t('The course of the race')}
          </button>
        )}
        {course !== null && (
          <button type="button" onClick={() => model.setCourse(null)}>
            {t('Remove the course')}
          </button>
        )}
      </div>
      <PastRunsList runs={runs} onFile={takeOfFile} />
    </section>
  );
};
