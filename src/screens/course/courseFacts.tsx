import { unrollLaps } from '../../core/course/laps.ts';
import type { CourseView } from '../../session/courseView.ts';
import type { PlanModel } from '../../session/planModel.ts';
import { distance, unitName } from '../format.ts';

/** A recording further off than this is another course, or another distance. */
const ODD_SHARE = 0.05;

export const CourseFacts = ({ model, view }: { model: PlanModel; view: CourseView }) => {
  const line = model.course.value;
  const file = model.courseFile.value;
  const { unit } = model.plan.value;
  if (line === null || file === null) return null;
  // Laps count only where the line was really run over again: a lap that closes, and a whole number of them.
  const isLap = unrollLaps(file.points, line.recordedM, line.officialM).length > file.points.length;
  const laps = isLap ? Math.round(line.officialM / line.recordedM) : 1;
  const ratio = line.officialM / (line.recordedM * laps);
  const percent = 100 * (ratio - 1);
  const off = line.recordedM * laps - line.officialM;
  const odd = Math.abs(ratio - 1) > ODD_SHARE;
  return (
    <>
      <h2>{file.name}</h2>
      <dl class="course-facts">
        <dt>Recorded</dt>
        <dd class="figure">
          {distance(line.recordedM, unit, 3)} {unitName(unit)}
          {laps > 1 && `, run ${laps} times`}
        </dd>
        <dt>Official</dt>
        <dd class="figure">
          {distance(line.officialM, unit, 3)} {unitName(unit)}
        </dd>
        <dt>Scaled by</dt>
        <dd class="figure">
          {ratio.toFixed(4)} ({percent >= 0 ? '+' : '−'}
          {Math.abs(percent).toFixed(2)} %)
        </dd>
        <dt>Climb</dt>
        <dd class="figure">
          {view.climbM === null ? 'no heights in the file' : `${Math.round(view.climbM)} m`}
        </dd>
      </dl>
      <p class={odd ? 'field-error' : 'note'}>
        {odd
          ? `The recording is ${Math.round(Math.abs(off))} m ${off > 0 ? 'longer' : 'shorter'} than the race. Is it the right course, and the right distance in the plan?`
          : `The recording is ${Math.round(Math.abs(off))} m ${off > 0 ? 'longer' : 'shorter'} than the race. The race's measured distance counts; the line is fitted to it.`}
      </p>
      <div class="buttons">
        <button type="button" onClick={model.turnCourse}>
          Run it the other way
        </button>
        <button type="button" onClick={model.dropCourse}>
          Remove the course
        </button>
      </div>
    </>
  );
};
