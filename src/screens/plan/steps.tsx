import { type Message, message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/planModel.ts';
import { PREPARE, type ScreenName } from '../route.ts';

const NAMES: Readonly<Record<(typeof PREPARE)[number], Message>> = {
  goal: message('Goal'),
  course: message('Course'),
  plan: message('Plan||noun'),
  fuel: message('Fuel'),
  day: message('Race day'),
  paper: message('Paper'),
  aloud: message('Sound file'),
  whatIf: message('What if'),
};

/** The way from a result to a race: each step stands alone and can be taken in any order. */
export const Steps = ({ here }: { here: ScreenName }) => (
  <nav class="steps" aria-label={t('Before the race')}>
    {PREPARE.map((name) => (
      <a key={name} href={`#/${name}`} aria-current={name === here ? 'page' : undefined}>
        {t(NAMES[name])}
      </a>
    ))}
  </nav>
);

/** A form that cannot be read takes no changes from elsewhere; said where somebody may try. */
export const BadPlan = ({ model }: { model: PlanModel }) =>
  model.reading.value.ok ? null : (
    <p class="field-error" role="status">
      {t("The plan's form holds something that cannot be read, so nothing can be put into it from here.")}{' '}
      <a href="#/plan">{t('Mend it first.')}</a>
    </p>
  );
