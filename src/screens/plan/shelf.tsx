import type { PlanModel } from '../../session/planModel.ts';
import { distance, span, unitName } from '../format.ts';

/** Plans that are put aside; one of them in the form at a time. */
export const PlanShelf = ({ model }: { model: PlanModel }) => {
  const { plans, stored, remove } = model.shelf;
  return (
    <fieldset class="supplies">
      <legend>Plans put aside</legend>
      {plans.value.map(({ id, plan }) => (
        <div class="shelf-row" key={id}>
          <span>
            <strong>{plan.name}</strong>
            <span class="note">
              {' '}
              {distance(plan.distanceM, plan.unit, 1)} {unitName(plan.unit)} in {span(plan.goalS)}
            </span>
          </span>
          <span class="buttons">
            <button
              type="button"
              onClick={() => model.swap(id)}
              aria-label={`Take ${plan.name}, ${span(plan.goalS)}`}
            >
              Take
            </button>
            <button
              type="button"
              class="small-button"
              aria-label={`Remove ${plan.name}, ${span(plan.goalS)}`}
              onClick={() => remove(id)}
            >
              ×
            </button>
          </span>
        </div>
      ))}
      <div class="buttons">
        <button type="button" onClick={model.putAside}>
          Put a copy aside
        </button>
      </div>
      <p class="note">
        {stored.value
          ? 'Kept on this device, course included. Taking one puts the plan in the form here in its stead.'
          : 'The storage of this browser is full or forbidden: save the plan as a file.'}
      </p>
    </fieldset>
  );
};
