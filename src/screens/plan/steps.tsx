import type { PlanModel } from '../../session/planModel.ts';
import { PREPARE, type ScreenName } from '../route.ts';

const NAMES: Readonly<Record<(typeof PREPARE)[number], string>> = {
  goal: 'Goal',
  course: 'Course',
  plan: 'Plan',
  fuel: 'Fuel',
  day: 'Race day',
  paper: 'Paper',
  whatIf: 'What if',
};

/** The way from a result to a race: each step stands alone and can be taken in any order. */
export const Steps = ({ here }: { here: ScreenName }) => (
  <nav class="steps" aria-label="Before the race">
    {PREPARE.map((name) => (
      <a key={name} href={`#/${name}`} aria-current={name === here ? 'page' : undefined}>
        {NAMES[name]}
      </a>
    ))}
  </nav>
);

/** A form that cannot be read takes no changes from elsewhere; said where somebody may try. */
export const BadPlan = ({ model }: { model: PlanModel }) =>
  model.reading.value.ok ? null : (
    <p class="field-error" role="status">
      The plan's form holds something that cannot be read, so nothing can be put into it from here.{' '}
      <a href="#/plan">Mend it first.</a>
    </p>
  );
