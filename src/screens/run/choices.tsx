import type { Signal } from '@preact/signals';
import type { RunModel } from '../../session/runModel.ts';

const Check = ({ value, label, note }: { value: Signal<boolean>; label: string; note: string }) => (
  <label class="carry-choice">
    <input
      type="checkbox"
      checked={value.value}
      onChange={(event) => {
        value.value = event.currentTarget.checked;
      }}
    />
    <span>
      {label}
      <span class="note">{note}</span>
    </span>
  </label>
);

/** How the phone is carried and what it may take. */
export const Choices = ({ choices }: { choices: RunModel['choices'] }) => (
  <fieldset class="carry">
    <legend>On the way</legend>
    <Check
      value={choices.pocket}
      label="In a pocket or on an arm"
      note="A guard swallows touches and rain. One finger that rests opens it."
    />
    <Check
      value={choices.buttons}
      label="Use the headset's buttons"
      note="One press marks a board, two ask, three hush; with a pacer in the plan, three say level with them. Your own music stops for it."
    />
  </fieldset>
);
