import { lapsIn } from '../../core/course/laps.ts';
import { decimal } from '../../core/units/message.ts';
import { shownNumber, t } from '../../languages/text.ts';
import type { CourseView } from '../../session/course/courseView.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { distance, unitName } from '../format.ts';

/** A recording further off than this is another course, or another distance. */
const ODD_SHARE = 0.05;

export const CourseFacts = ({ model, view }: { model: PlanModel; view: CourseView }) => {
  const line = model.course.value;
  const file = model.courseFile.value;
  const { unit } = model.plan.value;
  if (line === null || file === null) return null;
  const laps = lapsIn(file.points, line.recordedM, line.officialM);
  const ratio = line.officialM / (line.recordedM * laps);
  const percent = 100 * (ratio - 1);
  const off = line.recordedM * laps - line.officialM;
  const odd = Math.abs(ratio - 1) > ODD_SHARE;
  return (
    <>
      <h2>{file.name}</h2>
      <dl class="course-facts">
        <dt>{t('Recorded')}</dt>
        <dd class="figure">
          {laps > 1
            ? t('{distance} {unit}, run {n} times', {
                distance: distance(line.recordedM, unit, 3),
                unit: unitName(unit),
                n: shownNumber(decimal(laps, Number.isInteger(laps) ? 0 : 2)),
              })
            : `${distance(line.recordedM, unit, 3)} ${unitName(unit)}`}
        </dd>
        <dt>{t('Official')}</dt>
        <dd class="figure">
          {distance(line.officialM, unit, 3)} {unitName(unit)}
        </dd>
        <dt>{t('Scaled by')}</dt>
        <dd class="figure">
          {shownNumber(decimal(ratio, 4))} ({percent >= 0 ? '+' : '−'}
          {shownNumber(decimal(Math.abs(percent), 2))} %)
        </dd>
        <dt>{t('Climb')}</dt>
        <dd class="figure">
          {view.climbM === null ? t('no heights in the file') : `${Math.round(view.climbM)} m`}
        </dd>
      </dl>
      <p class={odd ? 'field-error' : 'note'}>{measureText(off, odd)}</p>
      <div class="buttons">
        <button type="button" onClick={model.turnCourse}>
          {t('Run it the other way')}
        </button>
        <button type="button" onClick={model.dropCourse}>
          {t('Remove the course')}
        </button>
      </div>
    </>
  );
};

const measureText = (offM: number, odd: boolean): string => {
  const n = Math.round(Math.abs(offM));
  if (odd)
    return offM > 0
      ? t(
          'The recording is {n} m longer than the race. Is it the right course, and the right distance in the plan?',
          { n },
        )
      : t(
          'The recording is {n} m shorter than the race. Is it the right course, and the right distance in the plan?',
          { n },
        );
  return offM > 0
    ? t(
        "The recording is {n} m longer than the race. The race's measured distance counts; the line is fitted to it.",
        { n },
      )
    : t(
        "The recording is {n} m shorter than the race. The race's measured distance counts; the line is fitted to it.",
        { n },
      );
};
