import type { Weekday } from '../../core/prepare/day/civil.ts';
import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import type { PrepareModel } from '../../session/prepare/prepareModel.ts';
import { Field } from '../form/field.tsx';
import { Form } from '../form/form.tsx';
import { Select } from '../form/select.tsx';
import { Several } from '../form/several.tsx';
import { unitName, weekdayName } from '../format.ts';

const DAYS: readonly Weekday[] = [0, 1, 2, 3, 4, 5, 6];

export const DayForm = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const draft = model.draft.value;
  const { errors } = model.day.value;
  return (
    <Form label={t('Race day')}>
      <Field
        label={t('Date of the race')}
        type="date"
        value={draft.date}
        onChange={(date) => model.set({ date })}
      />
      <Field
        label={t('The gun goes at')}
        type="time"
        value={draft.start}
        onChange={(start) => model.set({ start })}
        error={errors.start ?? null}
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
      <Several
        label={t('On which days you run')}
        options={DAYS}
        chosen={draft.runDays}
        textOf={(day) => weekdayName(day, 'short')}
        onChange={(runDays) => {
          if (runDays.length > 0) model.set({ runDays });
        }}
      />
      <Select
        label={t('Your long run is on')}
        options={DAYS.map((day) => [day, weekdayName(day, 'long')] as const)}
        value={draft.longRunDay}
        onChange={(longRunDay) => model.set({ longRunDay })}
      />
    </Form>
  );
};
