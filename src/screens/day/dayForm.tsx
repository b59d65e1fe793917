import { useId } from 'preact/hooks';
import type { Weekday } from '../../core/prepare/day/civil.ts';
import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/planModel.ts';
import type { PrepareModel } from '../../session/prepareModel.ts';
import { unitName, weekdayName } from '../format.ts';
import { Field } from '../plan/field.tsx';

const DAYS: readonly Weekday[] = [0, 1, 2, 3, 4, 5, 6];

interface PickProps {
  readonly label: string;
  readonly type: 'date' | 'time';
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly error?: string | undefined;
}

/** A date or a time, with the device's own picker. */
const Pick = ({ label, type, value, onChange, error }: PickProps) => {
  const id = useId();
  return (
    <div class="field" data-wrong={error !== undefined}>
      <label for={id}>{label}</label>
      <div class="field-row">
        <input id={id} type={type} value={value} onInput={(event) => onChange(event.currentTarget.value)} />
      </div>
      {error !== undefined && <p class="field-error">{error}</p>}
    </div>
  );
};

export const DayForm = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const draft = model.draft.value;
  const { errors } = model.day.value;
  return (
    <form class="plan-form" onSubmit={(event) => event.preventDefault()} aria-label={t('Race day')}>
      <Pick
        label={t('Date of the race')}
        type="date"
        value={draft.date}
        onChange={(date) => model.set({ date })}
      />
      <Pick
        label={t('The gun goes at')}
        type="time"
        value={draft.start}
        onChange={(start) => model.set({ start })}
        error={errors.start}
      />
      <Field
        label={t('The pen closes before the gun')}
        keys="numeric"
        unit="min"
        value={draft.penClosesMin}
        onChange={(penClosesMin) => model.set({ penClosesMin })}
        error={errors.penClosesMin ?? null}
      />
      <Field
        label={t('Travel, door to race')}
        keys="numeric"
        unit="min"
        value={draft.travelMin}
        onChange={(travelMin) => model.set({ travelMin })}
        error={errors.travelMin ?? null}
      />
      <Field
        label={t('Temperature at the start')}
        unit="°C"
        value={draft.temperatureC}
        onChange={(temperatureC) => model.set({ temperatureC })}
      />
      <Field
        label={t('You run in a week')}
        keys="decimal"
        unit={unitName(plan.plan.value.unit)}
        value={draft.weekly}
        onChange={(weekly) => model.set({ weekly })}
      />
      <fieldset class="offers days">
        <legend>{t('On which days you run')}</legend>
        {DAYS.map((day) => (
          <label key={day}>
            <input
              type="checkbox"
              checked={draft.runDays.includes(day)}
              onChange={() => {
                const runDays = DAYS.filter((d) =>
                  d === day ? !draft.runDays.includes(d) : draft.runDays.includes(d),
                );
                if (runDays.length > 0) model.set({ runDays });
              }}
            />
            {weekdayName(day, 'short')}
          </label>
        ))}
      </fieldset>
      <div class="field">
        <label for="long-day">{t('Your long run is on')}</label>
        <select
          id="long-day"
          value={String(draft.longRunDay)}
          onChange={(event) => {
            const day = DAYS.find((d) => String(d) === event.currentTarget.value);
            if (day !== undefined) model.set({ longRunDay: day });
          }}
        >
          {DAYS.map((day) => (
            <option key={day} value={String(day)}>
              {weekdayName(day, 'long')}
            </option>
          ))}
        </select>
      </div>
    </form>
  );
};
