import { ITEMS, SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { t } from '../../languages/text.ts';
import type { PrepareModel } from '../../session/prepareModel.ts';
import { Choice, Field } from '../plan/field.tsx';

export const FuelForm = ({ model, error }: { model: PrepareModel; error: string | null }) => {
  const draft = model.draft.value;
  return (
    <form class="plan-form" onSubmit={(event) => event.preventDefault()} aria-label={t('Fuel')}>
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
      <div class="field">
        <label for="fuel-item">{t('What you take')}</label>
        <select
          id="fuel-item"
          value={draft.item}
          onChange={(event) => {
            const item = ITEMS.find((name) => name === event.currentTarget.value);
            if (item) model.set({ item });
          }}
        >
          {ITEMS.map((item) => (
            <option key={item} value={item}>
              {t(SUPPLY_NAMES[item])}
            </option>
          ))}
        </select>
      </div>
      <Field
        label={t('Carbohydrate in one')}
        keys="decimal"
        unit="g"
        value={draft.itemG}
        onChange={(itemG) => model.set({ itemG })}
        error={error}
        hint={t('It stands on the packet.')}
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
    </form>
  );
};
