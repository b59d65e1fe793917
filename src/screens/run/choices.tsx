import type { Signal } from '@preact/signals';
import { t } from '../../languages/text.ts';
import type { RunModel } from '../../session/run/runModel.ts';

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
    <legend>{t('On the way')}</legend>
    <Check
      value={choices.pocket}
      label={t('In a pocket or on an arm')}
      note={t('A guard swallows touches and rain. One finger that rests opens it.')}
    />
    <Check
      value={choices.loud}
      label={t('Loud voice')}
      note={t('For a crowd: harsher, and as loud as it can be.')}
    />
    <Check
      value={choices.buttons}
      label={t("Use the headset's buttons")}
      note={`${t(
        'One press marks a board, two ask, three hush; with a pacer in the plan, three say level with them. Your own music stops for it.',
      )} ${t('Without them your own music plays on, no quieter, and calls sound over it.')}`}
    />
  </fieldset>
);
