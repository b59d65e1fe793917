import type { Catalogue } from '../text.ts';
import { aloud } from './screen/aloud.ts';
import { calls } from './screen/calls.ts';
import { course } from './screen/course.ts';
import { day } from './screen/day.ts';
import { files } from './screen/files.ts';
import { fuel } from './screen/fuel.ts';
import { goal } from './screen/goal.ts';
import { learn } from './screen/learn.ts';
import { paper } from './screen/paper.ts';
import { parts } from './screen/parts.ts';
import { plan } from './screen/plan.ts';
import { practice } from './screen/practice.ts';
import { prepare } from './screen/prepare.ts';
import { ready } from './screen/ready.ts';
import { rehearse } from './screen/rehearse.ts';
import { review } from './screen/review.ts';
import { run } from './screen/run.ts';
import { runs } from './screen/runs.ts';
import { share } from './screen/share.ts';
import { whatIf } from './screen/whatIf.ts';

/** The texts of the screens, by the part of the page that says them first. */
export const screen: Catalogue = {
  ...aloud,
  ...calls,
  ...course,
  ...day,
  ...files,
  ...fuel,
  ...goal,
  ...learn,
  ...paper,
  ...parts,
  ...plan,
  ...practice,
  ...prepare,
  ...ready,
  ...rehearse,
  ...review,
  ...run,
  ...runs,
  ...share,
  ...whatIf,
};
