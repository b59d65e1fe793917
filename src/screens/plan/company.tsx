import { message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { PlanDraft } from '../../session/plan/planDraft.ts';
import { Choice } from '../form/choice.tsx';
import { Field } from '../form/field.tsx';
import type { PlanFields } from './planFields.ts';
import { type RowWords, TimeRows } from './timeRows.tsx';

const SPLIT: RowWords = {
  at: message('Split {n} at'),
  time: message('Split {n} time'),
  remove: message('Remove split {n}'),
  add: message('Add a split of theirs'),
};
const CUT_OFF: RowWords = {
  at: message('Cut-off {n} at'),
  time: message('Cut-off {n} time'),
  remove: message('Remove cut-off {n}'),
  add: message('Add a cut-off'),
};

/** Whether the plan holds any of it; who has none need not scroll past the fields. */
export const hasCompany = (draft: PlanDraft): boolean =>
  [draft.secondGoal, draft.pacerFlag, draft.rivalFinish].some((text) => text.trim() !== '') ||
  draft.cutOffs.length > 0;

/** Another goal, the pacer, the rival and the race's own cut-offs: whatever else a time is held against. */
export const Company = (props: PlanFields) => (
  <>
    <SecondGoal {...props} />
    <Pacer {...props} />
    <Rival {...props} />
    <CutOffs {...props} />
  </>
);

const SecondGoal = ({ draft, set, errorOf }: PlanFields) => (
  <fieldset class="supplies">
    <legend>{t('Second goal')}</legend>
    <Choice
      label={t('It is')}
      name="secondKind"
      options={[
        ['safe', t('The safe one')],
        ['dream', t('The dream')],
      ]}
      value={draft.secondKind}
      onChange={(secondKind) => set({ secondKind })}
    />
    <Field
      label={t('Its time')}
      value={draft.secondGoal}
      onChange={(secondGoal) => set({ secondGoal })}
      error={errorOf('secondGoal')}
      hint={t('The table says what the clock must show for either. Empty: none.')}
    />
  </fieldset>
);

const Pacer = ({ draft, set, errorOf }: PlanFields) => (
  <fieldset class="supplies">
    <legend>{t('Pacer')}</legend>
    <Field
      label={t('Time on the flag')}
      value={draft.pacerFlag}
      onChange={(pacerFlag) => set({ pacerFlag })}
      error={errorOf('pacerFlag')}
      hint={t(
        'In the run, press when level with the pacer: the voice says where they are heading. Empty: none.',
      )}
    />
    <Choice
      label={t('The pacer runs by')}
      name="pacerBy"
      options={[
        ['gun', t('The gun')],
        ['own', t('Their own time')],
      ]}
      value={draft.pacerBy}
      onChange={(pacerBy) => set({ pacerBy })}
    />
    <p class="note">{t('Most pacers run by the gun. Ask them in the pen.')}</p>
  </fieldset>
);

const Rival = ({ draft, set, errorOf, unit }: PlanFields) => (
  <fieldset class="supplies">
    <legend>{t('Rival or friend')}</legend>
    <Field label={t('Who')} value={draft.rivalName} onChange={(rivalName) => set({ rivalName })} />
    <Field
      label={t('Their finish')}
      value={draft.rivalFinish}
      onChange={(rivalFinish) => set({ rivalFinish })}
      error={errorOf('rivalFinish') ?? errorOf('rivalSplits', draft.rivalSplits.length)}
      hint={t('On the clock of your goal. The gap to them is said after each checkpoint. Empty: nobody.')}
    />
    {draft.rivalFinish.trim() !== '' && (
      <TimeRows
        rows={draft.rivalSplits}
        field="rivalSplits"
        onChange={(rivalSplits) => set({ rivalSplits })}
        errorOf={errorOf}
        unit={unit}
        words={SPLIT}
      />
    )}
  </fieldset>
);

const CutOffs = ({ draft, set, errorOf, unit }: PlanFields) => (
  <fieldset class="supplies">
    <legend>{t('Cut-offs of the race')}</legend>
    <TimeRows
      rows={draft.cutOffs}
      field="cutOffs"
      onChange={(cutOffs) => set({ cutOffs })}
      errorOf={errorOf}
      unit={unit}
      words={CUT_OFF}
    />
    <p class="note">{t('Counted from the gun. The table shows what is left against them.')}</p>
  </fieldset>
);
