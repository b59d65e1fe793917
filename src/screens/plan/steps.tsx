import { useSignal } from '@preact/signals';
import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { SCREEN_NAMES } from '../names.ts';
import { HEAR_MINE, PREPARE, type ScreenName } from '../route.ts';

/** The way from a result to a race: each step stands alone and can be taken in any order. */
export const Steps = ({ here }: { here: ScreenName }) => (
  <nav class="steps" aria-label={t('Before the race')}>
    {PREPARE.map((name) => (
      <a key={name} href={`#/${name}`} aria-current={name === here ? 'page' : undefined}>
        {t(SCREEN_NAMES[name])}
      </a>
    ))}
  </nav>
);

/** At the foot of each step: on. After the last one the plan can be heard. */
export const NextStep = ({ here }: { here: (typeof PREPARE)[number] }) => {
  const next = PREPARE[PREPARE.indexOf(here) + 1];
  return (
    <p class="next-step">
      <a class="button" href={next === undefined ? HEAR_MINE : `#/${next}`}>
        {next === undefined ? t('Hear my race') : t('Next: {step}', { step: SCREEN_NAMES[next] })}
      </a>
    </p>
  );
};

/** The page comes with the plan of the demo: said wherever somebody may take it for their own. */
export const ExamplePlan = ({ model }: { model: PlanModel }) => {
  const isDone = useSignal(false);
  if (!model.isExample.value)
    return isDone.value ? (
      <p class="note" role="status">
        {t('Yours now, without stations and gels. Undo stands under Plan.')}
      </p>
    ) : null;
  return (
    <div class="example">
      <p>{t('This is the plan of the demo race, with its stations and gels.')}</p>
      <button
        type="button"
        disabled={!model.reading.value.ok}
        onClick={() => {
          isDone.value = true;
          model.makeOwn();
        }}
      >
        {t('Make it my own')}
      </button>
    </div>
  );
};

/** A form that cannot be read takes no changes from elsewhere; said where somebody may try. */
export const BadPlan = ({ model }: { model: PlanModel }) =>
  model.reading.value.ok ? null : (
    <p class="field-error" role="status">
      {t("The plan's form holds something that cannot be read, so nothing can be put into it from here.")}{' '}
      <a href="#/plan">{t('Mend it first.')}</a>
    </p>
  );
