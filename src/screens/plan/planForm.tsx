import { PRESETS, presetAt } from '../../core/plan/presets.ts';
import { metresPer } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import { atDistance, type DraftField, inUnit, type PlanDraft } from '../../session/plan/planDraft.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { Choice } from '../form/choice.tsx';
import { Field } from '../form/field.tsx';
import { Form } from '../form/form.tsx';
import { Select } from '../form/select.tsx';
import { unitName } from '../format.ts';
import { Company, hasCompany } from './company.tsx';
import type { PlanFields } from './planFields.ts';
import { FuelRows, StationRows } from './supplyRows.tsx';

const fieldsOf = (model: PlanModel): PlanFields => {
  const draft = model.draft.value;
  const reading = model.reading.value;
  return {
    draft,
    set: (change: Partial<PlanDraft>): void => {
      model.draft.value = { ...draft, ...change };
    },
    errorOf: (field: DraftField, row: number | null = null): string | null =>
      reading.ok ? null : (reading.errors.find((e) => e.field === field && e.row === row)?.text ?? null),
    unit: unitName(draft.unit),
  };
};

/** What makes a plan: with a race and a goal it is one. */
export const PlanEssentials = ({ model }: { model: PlanModel }) => {
  const { draft, set, errorOf, unit } = fieldsOf(model);
  const preset = presetAt(Number(draft.distance) * metresPer(draft.unit));

  return (
    <Form label={t('Race plan')}>
      <Field
        label={t('Name')}
        value={draft.name}
        onChange={(name) => set({ name })}
        error={errorOf('name')}
      />
      <Select
        label={t('Race')}
        options={[...PRESETS.map((p) => [p.name, t(p.label)] as const), ['', t('Another distance')] as const]}
        value={preset?.name ?? ''}
        onChange={(name) => {
          const chosen = PRESETS.find((p) => p.name === name);
          if (chosen) model.draft.value = atDistance(draft, chosen.distanceM);
        }}
      />
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
    </Form>
  );
};

/** What a plan may hold besides: how the race is begun and ended, what is called and taken where, who else runs. */
export const PlanDetails = ({ model }: { model: PlanModel }) => {
  const fields = fieldsOf(model);
  const { draft, set, errorOf, unit } = fields;
  const reading = model.reading.value;
  const paceStep = draft.unit === 'km' ? t('s per km') : t('s per mi');
  return (
    <Form label={t('What may be left out')}>
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
      <Opening {...fields} paceStep={paceStep} notice={reading.ok ? reading.notice : null} />
      <Push {...fields} paceStep={paceStep} />
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
      <StationRows {...fields} />
      <FuelRows {...fields} />
      <details class="more" open={hasCompany(draft)}>
        <summary>{t('Second goal, pacer, rival, cut-offs')}</summary>
        <Company {...fields} />
      </details>
    </Form>
  );
};

interface LegFields extends PlanFields {
  /** Of a pace: `s per km`. */
  readonly paceStep: string;
}

/** @param notice  what the form has to say of the opening */
const Opening = (props: LegFields & { readonly notice: string | null }) => {
  const { draft, set, errorOf, unit, paceStep, notice } = props;
  return (
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
      {notice !== null && (
        <p class="field-error" role="status">
          {notice} <a href="#/whatIf">{t('What if?')}</a>
        </p>
      )}
      <p class="note">{t('Leave both empty for none.')}</p>
    </fieldset>
  );
};

const Push = ({ draft, set, errorOf, unit, paceStep }: LegFields) => (
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
);
