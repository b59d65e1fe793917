import type { DraftField, PlanDraft } from '../../session/planDraft.ts';
import { Choice, Field } from './field.tsx';
import { TimeRows } from './timeRows.tsx';

interface Props {
  readonly draft: PlanDraft;
  readonly set: (change: Partial<PlanDraft>) => void;
  readonly errorOf: (field: DraftField, row?: number | null) => string | null;
  readonly unit: string;
}

/** Another goal, the pacer, the rival and the race's own cut-offs: whatever else a time is held against. */
export const Company = (props: Props) => (
  <>
    <SecondGoal {...props} />
    <Pacer {...props} />
    <Rival {...props} />
    <CutOffs {...props} />
  </>
);

const SecondGoal = ({ draft, set, errorOf }: Props) => (
  <fieldset class="supplies">
    <legend>Second goal</legend>
    <Choice
      label="It is"
      name="secondKind"
      options={[
        ['safe', 'The safe one'],
        ['dream', 'The dream'],
      ]}
      value={draft.secondKind}
      onChange={(secondKind) => set({ secondKind })}
    />
    <Field
      label="Its time"
      value={draft.secondGoal}
      onChange={(secondGoal) => set({ secondGoal })}
      error={errorOf('secondGoal')}
      hint="The table says what the clock must show for either. Empty: none."
    />
  </fieldset>
);

const Pacer = ({ draft, set, errorOf }: Props) => (
  <fieldset class="supplies">
    <legend>Pacer</legend>
    <Field
      label="Time on the flag"
      value={draft.pacerFlag}
      onChange={(pacerFlag) => set({ pacerFlag })}
      error={errorOf('pacerFlag')}
      hint="In the run, press when level with the pacer: the voice says where they are heading. Empty: none."
    />
    <Choice
      label="The pacer runs by"
      name="pacerBy"
      options={[
        ['gun', 'The gun'],
        ['own', 'Their own time'],
      ]}
      value={draft.pacerBy}
      onChange={(pacerBy) => set({ pacerBy })}
    />
    <p class="note">Most pacers run by the gun. Ask them in the pen.</p>
  </fieldset>
);

const Rival = ({ draft, set, errorOf, unit }: Props) => (
  <fieldset class="supplies">
    <legend>Rival or friend</legend>
    <Field label="Who" value={draft.rivalName} onChange={(rivalName) => set({ rivalName })} />
    <Field
      label="Their finish"
      value={draft.rivalFinish}
      onChange={(rivalFinish) => set({ rivalFinish })}
      error={errorOf('rivalFinish') ?? errorOf('rivalSplits', draft.rivalSplits.length)}
      hint="On the clock of your goal. The gap to them is said after each checkpoint. Empty: nobody."
    />
    {draft.rivalFinish.trim() !== '' && (
      <TimeRows
        rows={draft.rivalSplits}
        field="rivalSplits"
        onChange={(rivalSplits) => set({ rivalSplits })}
        errorOf={errorOf}
        unit={unit}
        name="Split"
        add="Add a split of theirs"
      />
    )}
  </fieldset>
);

const CutOffs = ({ draft, set, errorOf, unit }: Props) => (
  <fieldset class="supplies">
    <legend>Cut-offs of the race</legend>
    <TimeRows
      rows={draft.cutOffs}
      field="cutOffs"
      onChange={(cutOffs) => set({ cutOffs })}
      errorOf={errorOf}
      unit={unit}
      name="Cut-off"
      add="Add a cut-off"
    />
    <p class="note">Counted from the gun. The table shows what is left against them.</p>
  </fieldset>
);
