import { message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import type { ResultDraft } from '../../session/prepare/prepareDraft.ts';
import type { PrepareModel } from '../../session/prepare/prepareModel.ts';
import { Field } from '../form/field.tsx';
import { Form } from '../form/form.tsx';
import { Remove } from '../form/remove.tsx';
import { changedAt, withoutAt } from '../form/rows.ts';
import { shortDistance, unitName } from '../format.ts';

const MOST_RESULTS = 6;

export const GoalForm = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const draft = model.draft.value;
  const form = plan.draft.value;
  const reading = plan.reading.value;
  const unit = unitName(form.unit);
  const { errors } = model.goal.value;
  const setRow = (i: number, change: Partial<ResultDraft>): void =>
    model.set({ results: changedAt(draft.results, i, change) });
  const goalError = reading.ok ? null : (reading.errors.find((e) => e.field === 'goal')?.text ?? null);
  return (
    <Form label={t('Results and goal')}>
      {draft.results.map((row, i) => (
        <fieldset class="result" key={i}>
          <legend>{t('Recent result {n}', { n: i + 1 })}</legend>
          <Field
            label={t('Distance')}
            keys="decimal"
            unit={unit}
            value={row.distance}
            onChange={(distance) => setRow(i, { distance })}
          />
          <Field label={t('Time')} value={row.time} onChange={(time) => setRow(i, { time })} />
          <Field
            label={t('Weeks ago')}
            keys="decimal"
            value={row.weeksAgo}
            onChange={(weeksAgo) => setRow(i, { weeksAgo })}
            after={
              draft.results.length > 1 && (
                <Remove
                  label={t('Remove result {n}', { n: i + 1 })}
                  onClick={() => model.set({ results: withoutAt(draft.results, i) })}
                />
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
          {t('Add a result')}
        </button>
      )}
      <p class="note">{t('Races or time trials that you ran all out. Two distances say more than one.')}</p>
      <Field
        label={t('You run in a week')}
        keys="decimal"
        unit={unit}
        value={draft.weekly}
        onChange={(weekly) => model.set({ weekly })}
      />
      <Field
        label={t('Temperature at the race')}
        keys="text"
        unit="°C"
        value={draft.temperatureC}
        onChange={(temperatureC) => model.set({ temperatureC })}
      />
      <Field
        label={t('Your goal')}
        value={form.goal}
        onChange={(goal) => {
          plan.draft.value = { ...form, goal };
        }}
        error={goalError}
        hint={t('For {name}, {distance} {unit}. The plan follows at once.', {
          name: form.name || message('this race'),
          distance: shortDistance(plan.plan.value.distanceM, form.unit, 4),
          unit,
        })}
      />
      <GoalOffers model={model} plan={plan} />
    </Form>
  );
};

/** A goal of the range, put into the plan by a touch; whole half minutes, as people set them. */
const GoalOffers = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const { prediction, hillRatio } = model.goal.value;
  if (prediction === null) return null;
  const offers = [
    [message('Middle of the range: {time}'), prediction.middleS],
    [message('Quick end of the likely range: {time}'), prediction.likely.quickS],
  ] as const;
  return (
    <div class="buttons">
      {offers.map(([offer, flatS]) => {
        const goalS = 30 * Math.ceil((flatS * hillRatio) / 30);
        const hours = `${Math.floor(goalS / 3600)}:${String(Math.floor(goalS / 60) % 60).padStart(2, '0')}`;
        const time = `${hours}:${String(goalS % 60).padStart(2, '0')}`;
        return (
          <button key={offer.text} type="button" onClick={() => plan.change((p) => ({ ...p, goalS }))}>
            {t({ ...offer, values: { time } })}
          </button>
        );
      })}
    </div>
  );
};
