import { PRESETS, presetAt } from '../../core/plan/presets.ts';
import { metresPer } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
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
  const paceStep = draft.unit === 'km' ? t('s per km') : t('s per mi');
  const set = (change: Partial<PlanDraft>): void => {
    model.draft.value = { ...draft, ...change };
  };
  const errorOf = (field: DraftField, row: number | null = null): string | null =>
    reading.ok ? null : (reading.errors.find((e) => e.field === field && e.row === row)?.text ?? null);
  const preset = presetAt(Number(draft.distance) * metresPer(draft.unit));

  return (
    <form class="plan-form" onSubmit={(event) => event.preventDefault()} aria-label={t('Race plan')}>
      <Field
        label={t('Name')}
        value={draft.name}
        onChange={(name) => set({ name })}
        error={errorOf('name')}
      />
      <div class="field">
        <label for="preset">{t('Race')}</label>
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
              {t(p.label)}
            </option>
          ))}
          <option value="">{t('Another distance')}</option>
        </select>
      </div>
      <Field
        label={t('Distance')}
        keys="decimal"
        unit={unit}
        value={draft.distance}
        onChange={(distance) => set({ distance })}
        error={errorOf('distance')}
      />
      <Field
        label={t('Goal time')}
        value={draft.goal}
        onChange={(goal) => set({ goal })}
        error={errorOf('goal')}
        hint={t('Hours, minutes, seconds')}
      />
      <Choice
        label={t('Unit')}
        name="unit"
        options={[
          ['km', t('Kilometres')],
          ['mile', t('Miles')],
        ]}
        value={draft.unit}
        onChange={(to) => {
          model.draft.value = inUnit(draft, to);
        }}
      />
      <Choice
        label={t('Goal is by')}
        name="goalBy"
        options={[
          ['own', t('My own time')],
          ['gun', t('The gun')],
        ]}
        value={draft.goalBy}
        onChange={(goalBy) => set({ goalBy })}
      />
      <fieldset class="leg">
        <legend>{t('Opening')}</legend>
        <Field
          label={t('Until||place')}
          keys="decimal"
          unit={unit}
          value={draft.openingUntil}
          onChange={(openingUntil) => set({ openingUntil })}
          error={errorOf('openingUntil')}
        />
        <Field
          label={t('Quicker by')}
          keys="decimal"
          unit={paceStep}
          value={draft.openingQuicker}
          onChange={(openingQuicker) => set({ openingQuicker })}
          error={errorOf('openingQuicker')}
        />
        <Choice
          label={t('The seconds won here are')}
          name="openingWins"
          options={[
            ['kept', t('Kept||seconds')],
            ['spent', t('Spent evenly')],
          ]}
          value={draft.openingWins}
          onChange={(openingWins) => set({ openingWins })}
        />
        {reading.ok && reading.notice !== null && (
          <p class="field-error" role="status">
            {reading.notice} <a href="#/whatIf">{t('What if?')}</a>
          </p>
        )}
        <p class="note">{t('Leave both empty for none.')}</p>
      </fieldset>
      <fieldset class="leg">
        <legend>{t('Push||noun')}</legend>
        <Field
          label={t('From||place')}
          keys="decimal"
          unit={unit}
          value={draft.pushFrom}
          onChange={(pushFrom) => set({ pushFrom })}
          error={errorOf('pushFrom')}
        />
        <Field
          label={t('Quicker by')}
          keys="decimal"
          unit={paceStep}
          value={draft.pushQuicker}
          onChange={(pushQuicker) => set({ pushQuicker })}
          error={errorOf('pushQuicker')}
        />
        <p class="note">{t('Offered on the day only if the numbers allow it.')}</p>
      </fieldset>
      <Field
        label={t('Checkpoints')}
        keys="text"
        unit={unit}
        value={draft.checkpoints}
        onChange={(checkpoints) => set({ checkpoints })}
        error={errorOf('checkpoints')}
        hint={t('Time and drift are called here. Empty: every 5 km and half-way.')}
      />
      <Choice
        label={t('On hills')}
        name="pacing"
        options={[
          ['effort', t('Even effort')],
          ['pace', t('Even pace')],
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
