import { type ReadonlySignal, signal } from '@preact/signals';
import { parseJson } from '../../core/plan/json.ts';
import { type PracticeCourse, practiceCourse, practiceCourseText } from '../../core/plan/practiceCourse.ts';
import { getKept, type Keep, tryKeep } from '../phone/pageKeep.ts';

/** The way that sessions are run on, kept between visits until another is chosen or it is removed. */
export interface CourseChoice {
  readonly course: ReadonlySignal<PracticeCourse | null>;
  readonly set: (course: PracticeCourse | null) => void;
}

const KEY = 'soundline.practiceCourse';

const kept = (keep: Keep): PracticeCourse | null => {
  const got = parseJson(getKept(keep, KEY) ?? 'null', (value) => practiceCourse(value, 'course'));
  return got.ok ? got.value : null;
};

export const createCourseChoice = (keep: Keep): CourseChoice => {
  const course = signal(kept(keep));
  return {
    course,
    set: (next) => {
      course.value = next;
      tryKeep(() => {
        if (next === null) keep.removeItem(KEY);
        else keep.setItem(KEY, practiceCourseText(next));
      });
    },
  };
};
