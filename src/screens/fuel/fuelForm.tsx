import { ITEMS, SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { t } from '../../languages/text.ts';
import type { PrepareModel } from '../../session/prepare/prepareModel.ts';
import { Choice } from '../form/choice.tsx';
import { Field } from '../form/field.tsx';
import { Form } from '../form/form.tsx';
import { Select } from '../form/select.tsx';

export const FuelForm = ({ model, error }: { model: PrepareModel; error: string | null }) => {
  const draft = model.draft.value;
  return (
    <Form label={t('Fuel')}>
      <Choice
        label={t('Take it')}
        name="fuelHow"
        options={[
          ['halfway', t('Half-way')],
          ['tenMiles', t('At 10 miles')],
          ['rate', t('By the hour')],
        ]}
        value={draft.fuelHow}
        onChange={(fuelHow) => model.set({ fuelHow })}
      />
      {draft.fuelHow === 'rate' && (
        <Field
          label={t('Carbohydrate an hour')}
          keys="decimal"
          unit="g"
          value={draft.gPerHour}
          onChange={(gPerHour) => model.set({ gPerHour })}
        />
      )}
      <Select
        label={t('What you take')}
        options={ITEMS.map((item) => [item, t(SUPPLY_NAMES[item])] as const)}
        value={draft.item}
        onChange={(item) => model.set({ item })}
      />
      <Field
        label={t('Carbohydrate in one')}
        keys="decimal"
        unit="g"
        value={draft.itemG}
        onChange={(itemG) => model.set({ itemG })}
        error={error}
        hint={t('The packet says it.')}
      />
      <Field
        label={t('Body mass')}
        keys="decimal"
        unit="kg"
        value={draft.massKg}
        onChange={(massKg) => model.set({ massKg })}
        hint={t(
          'For breakfast and the days before. It stays on this device; leave it out and figures are for each kg.',
        )}
      />
    </Form>
  );
};
