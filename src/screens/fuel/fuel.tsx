import type { RacePlan } from '../../core/plan/racePlan.ts';
import { SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { durationText } from '../../core/prepare/format.ts';
import type { MassRange } from '../../core/prepare/fuel/carbohydrate.ts';
import { listed, type Message, message } from '../../core/units/message.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import type { FuelSheet } from '../../session/prepare/prepareFuel.ts';
import type { PrepareModel } from '../../session/prepare/prepareModel.ts';
import { distance, unitName } from '../format.ts';
import { rich } from '../parts/rich.tsx';
import { Cautions, Sources } from '../plan/fineprint.tsx';
import { BadPlan, ExamplePlan, NextStep, Steps } from '../plan/steps.tsx';
import { FuelForm } from './fuelForm.tsx';

const rangeText = ({ gPerKg, grams }: MassRange): Message =>
  grams === null
    ? message('{lower} to {upper} g of carbohydrate for each kg of body mass', {
        lower: gPerKg.lower,
        upper: gPerKg.upper,
      })
    : message('{lower} to {upper} g of carbohydrate ({lowerKg} to {upperKg} g for each kg)', {
        ...grams,
        lowerKg: gPerKg.lower,
        upperKg: gPerKg.upper,
      });

const loadingText = (loading: FuelSheet['loading']): string => {
  if (loading === null) return t('For less than an hour: eat as usual.');
  const { fewest, most } = loading.hours;
  const range = rangeText(loading.perDay);
  return fewest === most
    ? t(
        'The {n} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.',
        { n: most, range },
      )
    : t(
        'From {fewest} to {most} hours before: {range} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.',
        { fewest, most, range },
      );
};

/** What the plan holds to take, with its places. */
const plannedText = (fuel: RacePlan['fuel'], unit: DistanceUnit): string =>
  fuel.length === 0
    ? t('In the plan now: nothing to take. The voice tells you 200 to 300 m ahead.')
    : t('In the plan now: {list} {unit}. The voice tells you 200 to 300 m ahead.', {
        list: listed(
          fuel.map((f) =>
            message('{item} at {place}', { item: SUPPLY_NAMES[f.item], place: distance(f.atM, unit, 1) }),
          ),
        ),
        unit: unitName(unit),
      });

export const FuelScreen = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const sheet = model.fuel.value;
  const race = plan.plan.value;
  const unit = unitName(race.unit);
  return (
    <main class="fuel">
      <Steps here="fuel" />
      <header class="lead-in">
        <h1>{t('Fuel')}</h1>
        <p>{t('What to carry and when to take it, so that water follows. Only what you have practised.')}</p>
      </header>
      <ExamplePlan model={plan} />
      <BadPlan model={plan} />
      <div class="plan-sides">
        <section aria-label={t('How you fuel')}>
          <FuelForm model={model} error={sheet.error} />
        </section>
        <section class="sheet" aria-label={t('Fuel plan')}>
          <h2>{t('On the way')}</h2>
          <p>
            {sheet.during.upper === 0
              ? t('Under an hour nothing is needed on the way.')
              : t(
                  'For {time} of running {lower} to {upper} g of carbohydrate an hour is usual, whatever you weigh.',
                  {
                    time: durationText(sheet.durationS),
                    lower: sheet.during.lower,
                    upper: sheet.during.upper,
                  },
                )}
          </p>
          {sheet.fuel !== null && <Stops sheet={sheet} unit={race.unit} />}
          {sheet.fuel !== null && (
            <div class="buttons">
              <button
                type="button"
                class="main-button"
                onClick={() =>
                  plan.change((p) => ({
                    ...p,
                    fuel: (sheet.fuel?.stops ?? []).map(({ item, atM }) => ({ item, atM: Math.round(atM) })),
                  }))
                }
              >
                {t('Put into the plan')}
              </button>
            </div>
          )}
          <p class="note">{plannedText(race.fuel, race.unit)}</p>
          <h2>{t('Water')}</h2>
          {sheet.drinks.length === 0 ? (
            <p>{t('No water stations in the plan yet. Put them on the course, or into the plan.')}</p>
          ) : (
            <div class="scroll-x">
              <table class="plan-table">
                <tbody>
                  {sheet.drinks.map((drink) => (
                    <tr key={drink.atM}>
                      <th scope="row">
                        {distance(drink.atM, race.unit, 1)} {unit}
                      </th>
                      <td class="words">{t(drink.text)}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
          )}
          <h2>{t('Breakfast')}</h2>
          <p>
            {t('{fewest} to {most} hours before the gun: {range}. {advice}', {
              fewest: sheet.breakfast.minutesBefore.fewest / 60,
              most: sheet.breakfast.minutesBefore.most / 60,
              range: rangeText(sheet.breakfast.carbohydrate),
              advice: sheet.breakfast.text,
            })}
          </p>
          <h2>{t('The days before')}</h2>
          <p>{loadingText(sheet.loading)}</p>
          <Cautions
            keys={sheet.fuel?.cautions ?? ['practised', 'stomach', 'thirst', 'diabetes', 'general']}
          />
          <Sources
            sources={[
              sheet.during.source,
              ...sheet.breakfast.sources,
              ...(sheet.loading ? [sheet.loading.perDay.gPerKg.source] : []),
            ]}
          />
        </section>
      </div>
      <NextStep here="fuel" />
    </main>
  );
};

/** Moved by less than this for the water's sake it is still where it was wanted. */
const MOVED_M = 100;

const Stops = ({ sheet, unit }: { sheet: FuelSheet; unit: 'km' | 'mile' }) => {
  if (sheet.fuel === null) return null;
  const { stops, carried, carriedG, gPerHour, notes } = sheet.fuel;
  return (
    <>
      {stops.length > 0 && (
        <div class="scroll-x">
          <table class="plan-table">
            <thead>
              <tr>
                <th scope="col">{unitName(unit)}</th>
                <th scope="col">{t('Clock')}</th>
                <th scope="col">{t('What')}</th>
                <th scope="col">{t('Water at')}</th>
              </tr>
            </thead>
            <tbody>
              {stops.map((stop) => (
                <tr key={stop.atM}>
                  <th scope="row">
                    {distance(stop.atM, unit, 2)}
                    {Math.abs(stop.atM - stop.wantedM) >= MOVED_M && (
                      <span class="note clock-why">
                        {t('instead of {place}', { place: distance(stop.wantedM, unit, 2) })}
                      </span>
                    )}
                  </th>
                  <td>{durationText(stop.timeS)}</td>
                  <td>{t(SUPPLY_NAMES[stop.item])}</td>
                  <td>{stop.waterAtM === null ? '–' : distance(stop.waterAtM, unit, 2)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <p>
        {rich('To carry: {count}, {grams} g in all, {rate} g an hour.', {
          count: (
            <strong>
              {carried}
              {stops[0] !== undefined && ` × ${t(SUPPLY_NAMES[stops[0].item])}`}
            </strong>
          ),
          grams: String(Math.round(carriedG)),
          rate: String(Math.round(gPerHour)),
        })}
      </p>
      {notes.map((note) => (
        <p key={note.text} class="note">
          {t(note)}
        </p>
      ))}
    </>
  );
};
