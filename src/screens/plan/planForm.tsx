import { PRESETS, presetAt } from '../../core/plan/presets.ts';
import { metresPer } from '../../core/units/units.ts';
import { atDistance, type DraftField, inUnit, type PlanDraft } from '../../session/planDraft.ts';
import type { PlanModel } from '../../session/planModel.ts';
import { unitName } from '../format.ts';
import { Company } from './company.tsx';
import { Choice, Field } from './field.tsx';
import { FuelRows, StationRows } from './supplyRows.tsx';

export const PlanForm = ({ model }: { model: PlanModel }) => {
  const draft = model.draft.value;
  const reading = model.reading.value;
  const unit = unitName(draft.unit);
  const set = (change: Partial<PlanDraft>): void => {
    model.draft.value = { ...draft, ...change };
  };
  const errorOf = (field: DraftField, row: number | null = null): string | null =>
    reading.ok ? null : (reading.errors.find((e) => e.field === field && e.row === row)?.text ?? null);
  const preset = presetAt(Number(draft.distance) * metresPer(draft.unit));

  return (
    <form class="plan-form" onSubmit={(event) => event.preventDefault()} aria-label="Race plan">
      <Field label="Name" value={draft.name} onChange={(name) => set({ name })} error={errorOf('name')} />
      <div class="field">
        <label for="preset">Race</label>
        <select
          id="preset"
          value={preset?.name ?? ''}
          onChange={(event) => {
            const chosen = PRESETS.find((p) => p.name === event.currentTarget.value);
            if (chosen) model.draft.value = atDistance(draft, chosen.distanceM);
          }}
        >
          {PRESETS.map((p) => (
            <option key={p.name} value={p.name}>
              {p.name}
            </option>
          ))}
          <option value="">Another distance</option>
        </select>
      </div>
      <Field
        label="Distance"
        keys="decimal"
        unit={unit}
        value={draft.distance}
        onChange={(distance) => set({ distance })}
        error={errorOf('distance')}
      />
      <Field
        label="Goal time"
        value={draft.goal}
        onChange={(goal) => set({ goal })}
        error={errorOf('goal')}
        hint="Hours, minutes, seconds"
      />
      <Choice
        label="Unit"
        name="unit"
        options={[
          ['km', 'Kilometres'],
          ['mile', 'Miles'],
        ]}
        value={draft.unit}
        onChange={(to) => {
          model.draft.value = inUnit(draft, to);
        }}
      />
      <Choice
        label="Goal is by"
        name="goalBy"
        options={[
          ['own', 'My own time'],
          ['gun', 'The gun'],
        ]}
        value={draft.goalBy}
        onChange={(goalBy) => set({ goalBy })}
      />
      <fieldset class="leg">
        <legend>Opening</legend>
        <Field
          label="Until"
          keys="decimal"
          unit={unit}
          value={draft.openingUntil}
          onChange={(openingUntil) => set({ openingUntil })}
          error={errorOf('openingUntil')}
        />
        <Field
          label="Quicker by"
          keys="decimal"
          unit={`s per ${unit}`}
          value={draft.openingQuicker}
          onChange={(openingQuicker) => set({ openingQuicker })}
          error={errorOf('openingQuicker')}
        />
        <Choice
          label="The seconds won here are"
          name="openingWins"
          options={[
            ['kept', 'Kept'],
            ['spent', 'Spent evenly'],
          ]}
          value={draft.openingWins}
          onChange={(openingWins) => set({ openingWins })}
        />
        {reading.ok && reading.notice !== null && (
          <p class="field-error" role="status">
            {reading.notice} <a href="#/whatIf">What if?</a>
          </p>
        )}
        <p class="note">Leave both empty for none.</p>
      </fieldset>
      <fieldset class="leg">
        <legend>Push</legend>
        <Field
          label="From"
          keys="decimal"
          unit={unit}
          value={draft.pushFrom}
          onChange={(pushFrom) => set({ pushFrom })}
          error={errorOf('pushFrom')}
        />
        <Field
          label="Quicker by"
          keys="decimal"
          unit={`s per ${unit}`}
          value={draft.pushQuicker}
          onChange={(pushQuicker) => set({ pushQuicker })}
          error={errorOf('pushQuicker')}
        />
        <p class="note">Offered on the day only if the numbers allow it.</p>
      </fieldset>
      <Field
        label="Checkpoints"
        keys="text"
        unit={unit}
        value={draft.checkpoints}
        onChange={(checkpoints) => set({ checkpoints })}
        error={errorOf('checkpoints')}
        hint="Time and drift are called here. Empty: every 5 km and half-way."
      />
      <Choice
        label="On hills"
        name="pacing"
        options={[
          ['effort', 'Even effort'],
          ['pace', 'Even pace'],
        ]}
        value={draft.pacing}
        onChange={(pacing) => set({ pacing })}
      />
      <Company draft={draft} set={set} errorOf={errorOf} unit={unit} />
      <StationRows draft={draft} set={set} errorOf={errorOf} unit={unit} />
      <FuelRows draft={draft} set={set} errorOf={errorOf} unit={unit} />
    </form>
  );
};
