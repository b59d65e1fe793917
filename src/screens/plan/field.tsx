import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Stands behind the input: `km`, `s per km`. */
  readonly unit?: string;
  readonly error?: string | null;
  readonly hint?: string;
  /** Which keys a phone should show. */
  readonly keys?: 'text' | 'decimal' | 'numeric';
  readonly after?: ComponentChildren;
}

/** A labelled text input with its error beside it. */
export const Field = ({ label, value, onChange, unit, error = null, hint, keys = 'text', after }: Props) => {
  const id = useId();
  const about = error !== null || hint !== undefined ? `${id}-about` : undefined;
  return (
    <div class="field" data-wrong={error !== null}>
      <label for={id}>{label}</label>
      <div class="field-row">
        <input
          id={id}
          type="text"
          inputMode={keys}
          autocomplete="off"
          value={value}
          aria-invalid={error !== null}
          aria-describedby={about}
          onInput={(event) => onChange(event.currentTarget.value)}
        />
        {unit !== undefined && <span class="field-unit">{unit}</span>}
        {after}
      </div>
      {about !== undefined && (
        <p id={about} class={error !== null ? 'field-error' : 'note'}>
          {error ?? hint}
        </p>
      )}
    </div>
  );
};

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly name: string;
  readonly options: readonly (readonly [value: T, text: string])[];
  readonly value: T;
  readonly onChange: (value: T) => void;
}

/** One of a few: radio buttons that look like a row of buttons. */
export const Choice = <T extends string>({ label, name, options, value, onChange }: ChoiceProps<T>) => (
  <fieldset class="choice">
    <legend>{label}</legend>
    {options.map(([option, text]) => (
      <label key={option}>
        <input type="radio" name={name} checked={value === option} onChange={() => onChange(option)} />
        <span>{text}</span>
      </label>
    ))}
  </fieldset>
);
