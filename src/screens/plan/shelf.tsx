import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { Remove } from '../form/remove.tsx';
import { distance, span, unitName } from '../format.ts';

/** Plans that are put aside; one of them in the form at a time. */
export const PlanShelf = ({ model }: { model: PlanModel }) => {
  const { plans, stored, remove } = model.shelf;
  return (
    <fieldset class="supplies">
      <legend>{t('Plans put aside')}</legend>
      {plans.value.map(({ id, plan }) => (
        <div class="shelf-row" key={id}>
          <span>
            <strong>{plan.name}</strong>
            <span class="note">
              {' '}
              {t('{distance} {unit} in {time}', {
                distance: distance(plan.distanceM, plan.unit, 1),
                unit: unitName(plan.unit),
                time: span(plan.goalS),
              })}
            </span>
          </span>
          <span class="buttons">
            <button
              type="button"
              onClick={() => model.swap(id)}
              aria-label={t('Take {name}, {time}', { name: plan.name, time: span(plan.goalS) })}
            >
              {t('Take||a plan')}
            </button>
            <Remove
              label={t('Remove {name}, {time}', { name: plan.name, time: span(plan.goalS) })}
              onClick={() => remove(id)}
            />
          </span>
        </div>
      ))}
      <div class="buttons">
        <button type="button" onClick={model.putAside}>
          {t('Put a copy aside')}
        </button>
      </div>
      <p class="note">
        {stored.value
          ? t('Kept on this device, course included. Taking one puts the plan in the form here in its stead.')
          : t('The storage of this browser is full or forbidden: save the plan as a file.')}
      </p>
    </fieldset>
  );
};
