import { ITEMS, OFFERS, SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { t } from '../../languages/text.ts';
import { Field } from '../form/field.tsx';
import { Remove } from '../form/remove.tsx';
import { changedAt, withoutAt } from '../form/rows.ts';
import { Select } from '../form/select.tsx';
import { Several } from '../form/several.tsx';
import type { PlanFields } from './planFields.ts';

export const StationRows = ({ draft, set, errorOf, unit }: PlanFields) => (
  <fieldset class="supplies">
    <legend>{t('Stations on the course')}</legend>
    {draft.stations.map((station, i) => (
      <div class="supply" key={i}>
        <Field
          label={t('Station {n} at', { n: i + 1 })}
          keys="decimal"
          unit={unit}
          value={station.at}
          onChange={(at) => set({ stations: changedAt(draft.stations, i, { at }) })}
          error={errorOf('stations', i)}
          after={
            <Remove
              label={t('Remove station {n}', { n: i + 1 })}
              onClick={() => set({ stations: withoutAt(draft.stations, i) })}
            />
          }
        />
        <Several
          label={t('Station {n} offers', { n: i + 1 })}
          labelUnseen
          options={OFFERS}
          chosen={station.offers}
          textOf={(offer) => t(SUPPLY_NAMES[offer])}
          onChange={(offers) => set({ stations: changedAt(draft.stations, i, { offers }) })}
        />
      </div>
    ))}
    <button
      type="button"
      onClick={() => set({ stations: [...draft.stations, { at: '', offers: ['water'] }] })}
    >
      {t('Add a station')}
    </button>
  </fieldset>
);

export const FuelRows = ({ draft, set, errorOf, unit }: PlanFields) => (
  <fieldset class="supplies">
    <legend>{t('What you carry')}</legend>
    {draft.fuel.map((fuel, i) => (
      <div class="supply" key={i}>
        <Select
          label={t('Item {n}', { n: i + 1 })}
          options={ITEMS.map((item) => [item, t(SUPPLY_NAMES[item])] as const)}
          value={fuel.item}
          onChange={(item) => set({ fuel: changedAt(draft.fuel, i, { item }) })}
        />
        <Field
          label={t('Item {n} at', { n: i + 1 })}
          keys="decimal"
          unit={unit}
          value={fuel.at}
          onChange={(at) => set({ fuel: changedAt(draft.fuel, i, { at }) })}
          error={errorOf('fuel', i)}
          after={
            <Remove
              label={t('Remove item {n}', { n: i + 1 })}
              onClick={() => set({ fuel: withoutAt(draft.fuel, i) })}
            />
          }
        />
      </div>
    ))}
    <button type="button" onClick={() => set({ fuel: [...draft.fuel, { item: 'gel', at: '' }] })}>
      {t('Add a gel')}
    </button>
    <p class="note">
      {t(
        'Take in the race only what you have practised with. General information, not medical advice: ask a doctor where food, heat or your heart worry you.',
      )}
    </p>
  </fieldset>
);
