import { ITEMS, OFFERS, type Offer, SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { t } from '../../languages/text.ts';
import type { DraftField, PlanDraft } from '../../session/planDraft.ts';
import { Field } from './field.tsx';

interface Props {
  readonly draft: PlanDraft;
  readonly set: (change: Partial<PlanDraft>) => void;
  readonly errorOf: (field: DraftField, row?: number | null) => string | null;
  readonly unit: string;
}

const replaced = <T,>(list: readonly T[], i: number, item: T): T[] =>
  list.map((old, j) => (j === i ? item : old));
const without = <T,>(list: readonly T[], i: number): T[] => list.filter((_, j) => j !== i);

/** Offers in the order of the list, with one switched. */
const switched = (offers: readonly Offer[], offer: Offer): Offer[] =>
  OFFERS.filter((o) => (o === offer ? !offers.includes(o) : offers.includes(o)));

export const StationRows = ({ draft, set, errorOf, unit }: Props) => (
  <fieldset class="supplies">
    <legend>{t('Stations on the course')}</legend>
    {draft.stations.map((station, i) => (
      <div class="supply" key={i}>
        <Field
          label={t('Station {n} at', { n: i + 1 })}
          keys="decimal"
          unit={unit}
          value={station.at}
          onChange={(at) => set({ stations: replaced(draft.stations, i, { ...station, at }) })}
          error={errorOf('stations', i)}
          after={
            <button
              type="button"
              class="small-button"
              aria-label={t('Remove station {n}', { n: i + 1 })}
              onClick={() => set({ stations: without(draft.stations, i) })}
            >
              ×
            </button>
          }
        />
        <fieldset class="offers">
          <legend class="unseen">{t('Station {n} offers', { n: i + 1 })}</legend>
          {OFFERS.map((offer) => (
            <label key={offer}>
              <input
                type="checkbox"
                checked={station.offers.includes(offer)}
                onChange={() =>
                  set({
                    stations: replaced(draft.stations, i, {
                      ...station,
                      offers: switched(station.offers, offer),
                    }),
                  })
                }
              />
              {t(SUPPLY_NAMES[offer])}
            </label>
          ))}
        </fieldset>
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

export const FuelRows = ({ draft, set, errorOf, unit }: Props) => (
  <fieldset class="supplies">
    <legend>{t('What you carry')}</legend>
    {draft.fuel.map((fuel, i) => (
      <div class="supply" key={i}>
        <div class="field">
          <label for={`fuel-${i}`}>{t('Item {n}', { n: i + 1 })}</label>
          <select
            id={`fuel-${i}`}
            value={fuel.item}
            onChange={(event) => {
              const item = ITEMS.find((name) => name === event.currentTarget.value);
              if (item) set({ fuel: replaced(draft.fuel, i, { ...fuel, item }) });
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
          label={t('Item {n} at', { n: i + 1 })}
          keys="decimal"
          unit={unit}
          value={fuel.at}
          onChange={(at) => set({ fuel: replaced(draft.fuel, i, { ...fuel, at }) })}
          error={errorOf('fuel', i)}
          after={
            <button
              type="button"
              class="small-button"
              aria-label={t('Remove item {n}', { n: i + 1 })}
              onClick={() => set({ fuel: without(draft.fuel, i) })}
            >
              ×
            </button>
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
