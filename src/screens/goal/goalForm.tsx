import type { PlanModel } from '../../session/planModel.ts';
import type { ResultDraft } from '../../session/prepareDraft.ts';
import type { PrepareModel } from '../../session/prepareModel.ts';
import { unitName } from '../format.ts';
import { Field } from '../plan/field.tsx';

const MOST_RESULTS = 6;

export const GoalForm = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const draft = model.draft.value;
  const form = plan.draft.value;
  const reading = plan.reading.value;
  const unit = unitName(form.unit);
  const { errors } = model.goal.value;
  const setRow = (i: number, change: Partial<ResultDraft>): void =>
    model.set({ results: draft.results.map((row, j) => (j === i ? { ...row, ...change } : row)) });
  const goalError = reading.ok ? null : (reading.errors.find((e) => e.field === 'goal')?.text ?? null);
  return (
    <form class="plan-form" onSubmit={(event) => event.preventDefault()} aria-label="Results and goal">
      {draft.results.map((row, i) => (
        <fieldset class="result" key={i}>
          <legend>Recent result {i + 1}</legend>
          <Field
            label="Distance"
            keys="decimal"
            unit={unit}
            value={row.distance}
            onChange={(distance) => setRow(i, { distance })}
          />
          <Field label="Time" value={row.time} onChange={(time) => setRow(i, { time })} />
          <Field
            label="Weeks ago"
            keys="decimal"
            value={row.weeksAgo}
            onChange={(weeksAgo) => setRow(i, { weeksAgo })}
            after={
              draft.results.length > 1 && (
                <button
                  type="button"
                  class="small-button"
                  aria-label={`Remove result ${i + 1}`}
                  onClick={() => model.set({ results: draft.results.filter((_, j) => j !== i) })}
                >
                  ×
                </button>
              )
            }
          />
          {errors[i] != null && (
            <p class="field-error" role="alert">
              {errors[i]}
            </p>
          )}
        </fieldset>
      ))}
      {draft.results.length < MOST_RESULTS && (
        <button
          type="button"
          onClick={() => model.set({ results: [...draft.results, { distance: '', time: '', weeksAgo: '' }] })}
        >
          Add a result
        </button>
      )}
      <p class="note">Races or time trials that you ran all out. Two distances say more than one.</p>
      <Field
        label="You run in a week"
        keys="decimal"
        unit={unit}
        value={draft.weekly}
        onChange={(weekly) => model.set({ weekly })}
      />
      <Field
        label="Temperature at the race"
        keys="text"
        unit="°C"
        value={draft.temperatureC}
        onChange={(temperatureC) => model.set({ temperatureC })}
      />
      <Field
        label="Your goal"
        value={form.goal}
        onChange={(goal) => {
          plan.draft.value = { ...form, goal };
        }}
        error={goalError}
        hint={`For ${form.name || 'this race'}, ${form.distance} ${unit}. It stands in the plan at once.`}
      />
      <GoalOffers model={model} plan={plan} />
    </form>
  );
};

/** A goal of the range, put into the plan by a touch; whole half minutes, as people set them. */
const GoalOffers = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const { prediction, hillRatio } = model.goal.value;
  if (prediction === null) return null;
  const offers = [
    ['Middle of the range', prediction.middleS],
    ['Quick end of the likely range', prediction.likely.quickS],
  ] as const;
  return (
    <div class="buttons">
      {offers.map(([name, flatS]) => {
        const goalS = 30 * Math.ceil((flatS * hillRatio) / 30);
        return (
          <button key={name} type="button" onClick={() => plan.change((p) => ({ ...p, goalS }))}>
            {name}: {Math.floor(goalS / 3600)}:{String(Math.floor(goalS / 60) % 60).padStart(2, '0')}:
            {String(goalS % 60).padStart(2, '0')}
          </button>
        );
      })}
    </div>
  );
};
