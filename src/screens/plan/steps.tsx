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
