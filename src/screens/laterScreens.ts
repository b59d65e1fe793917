import { later } from './parts/later.tsx';

/**
 * Half of the script is for the days before and after a race: it comes when it is asked for, and is stored with the rest.
 */
export const GoalScreen = later(() => import('./goal/goal.tsx').then((m) => m.GoalScreen));
export const CourseScreen = later(() => import('./course/course.tsx').then((m) => m.CourseScreen));
export const PlanScreen = later(() => import('./plan/plan.tsx').then((m) => m.PlanScreen));
export const FuelScreen = later(() => import('./fuel/fuel.tsx').then((m) => m.FuelScreen));
export const DayScreen = later(() => import('./day/day.tsx').then((m) => m.DayScreen));
export const PaperScreen = later(() => import('./paper/paper.tsx').then((m) => m.PaperScreen));
export const WhatIfScreen = later(() => import('./whatIf/whatIf.tsx').then((m) => m.WhatIfScreen));
export const PracticeScreen = later(() => import('./practice/practice.tsx').then((m) => m.PracticeScreen));
export const RunsScreen = later(() => import('./runs/runs.tsx').then((m) => m.RunsScreen));
export const ShareScreen = later(() => import('./share/share.tsx').then((m) => m.ShareScreen));
export const ReadyScreen = later(() => import('./ready/ready.tsx').then((m) => m.ReadyScreen));
export const LearnScreen = later(() => import('./learn/learn.tsx').then((m) => m.LearnScreen));
