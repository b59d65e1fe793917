import { later } from './parts/later.tsx';

/**
 * Half of the script is for the days before and after a race: it comes when it is asked for, and is stored with the rest.
 */
export const CourseScreen = later(() => import('./course/course.tsx').then((m) => m.CourseScreen));
export const PlanScreen = later(() => import('./plan/plan.tsx').then((m) => m.PlanScreen));
export const PracticeScreen = later(() => import('./practice/practice.tsx').then((m) => m.PracticeScreen));
export const RunsScreen = later(() => import('./runs/runs.tsx').then((m) => m.RunsScreen));
export const ShareScreen = later(() => import('./share/share.tsx').then((m) => m.ShareScreen));
export const ReadyScreen = later(() => import('./ready/ready.tsx').then((m) => m.ReadyScreen));
