import { durationText } from '../../core/prepare/format.ts';
import type { MassRange } from '../../core/prepare/fuel/carbohydrate.ts';
import type { PlanModel } from '../../session/planModel.ts';
import type { FuelSheet } from '../../session/prepareFuel.ts';
import type { PrepareModel } from '../../session/prepareModel.ts';
import { distance, unitName } from '../format.ts';
import { Cautions, Sources } from '../plan/fineprint.tsx';
import { BadPlan, Steps } from '../plan/steps.tsx';
import { FuelForm } from './fuelForm.tsx';

const rangeText = ({ gPerKg, grams }: MassRange): string =>
  grams === null
    ? `${gPerKg.lower} to ${gPerKg.upper} g of carbohydrate for each kg of body mass`
    : `${grams.lower} to ${grams.upper} g of carbohydrate (${gPerKg.lower} to ${gPerKg.upper} g for each kg)`;

export const FuelScreen = ({ model, plan }: { model: PrepareModel; plan: PlanModel }) => {
  const sheet = model.fuel.value;
  const race = plan.plan.value;
  const unit = unitName(race.unit);
  return (
    <main class="fuel">
      <Steps here="fuel" />
      <header class="lead-in">
        <h1>Fuel</h1>
        <p>What to carry and when to take it, so that water follows. Only what you have practised.</p>
      </header>
      <BadPlan model={plan} />
      <div class="plan-sides">
        <section aria-label="How you fuel">
          <FuelForm model={model} error={sheet.error} />
        </section>
        <section class="sheet" aria-label="Fuel plan">
          <h2>On the way</h2>
          <p>
            {sheet.during.upper === 0
              ? 'Under an hour nothing is needed on the way.'
              : `For ${durationText(sheet.durationS)} of running ${sheet.during.lower} to ${sheet.during.upper} g of carbohydrate an hour is usual, whatever you weigh.`}
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
                Put into the plan
              </button>
            </div>
          )}
          <p class="note">
            In the plan now:{' '}
            {race.fuel.length === 0
              ? 'nothing to take.'
              : `${race.fuel.map((f) => `${f.item} at ${distance(f.atM, race.unit, 1)}`).join(', ')} ${unit}.`}{' '}
            The voice tells you 200 to 300 m ahead.
          </p>
          <h2>Water</h2>
          {sheet.drinks.length === 0 ? (
            <p>No water stations in the plan yet. Put them on the course, or into the plan.</p>
          ) : (
            <table class="plan-table">
              <tbody>
                {sheet.drinks.map((drink) => (
                  <tr key={drink.atM}>
                    <th scope="row">
                      {distance(drink.atM, race.unit, 1)} {unit}
                    </th>
                    <td class="words">{drink.text}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
          <h2>Breakfast</h2>
          <p>
            {sheet.breakfast.minutesBefore.fewest / 60} to {sheet.breakfast.minutesBefore.most / 60} hours
            before the gun: {rangeText(sheet.breakfast.carbohydrate)}. {sheet.breakfast.text}
          </p>
          <h2>The days before</h2>
          <p>
            {sheet.loading === null
              ? 'For less than an hour: eat as usual.'
              : `${sheet.loading.hours.fewest === sheet.loading.hours.most ? `The ${sheet.loading.hours.most} hours before` : `From ${sheet.loading.hours.fewest} to ${sheet.loading.hours.most} hours before`}: ${rangeText(sheet.loading.perDay)} in each 24 hours, all meals together, and little running. That is a lot of food: try it before a long run first.`}
          </p>
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
    </main>
  );
};

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
                <th scope="col">Clock</th>
                <th scope="col">What</th>
                <th scope="col">Water at</th>
              </tr>
            </thead>
            <tbody>
              {stops.map((stop) => (
                <tr key={stop.atM}>
                  <th scope="row">{distance(stop.atM, unit, 2)}</th>
                  <td>{durationText(stop.timeS)}</td>
                  <td>{stop.item}</td>
                  <td>{stop.waterAtM === null ? '–' : distance(stop.waterAtM, unit, 2)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <p>
        To carry: <strong>{carried}</strong>, {Math.round(carriedG)} g in all, {Math.round(gPerHour)} g an
        hour.
      </p>
      {notes.map((note) => (
        <p key={note} class="note">
          {note}
        </p>
      ))}
    </>
  );
};
