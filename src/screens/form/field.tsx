import type { ComponentChildren, TargetedInputEvent } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { writtenNumber } from './writtenNumber.ts';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** A date or a time comes by the device's own picker. */
  readonly type?: 'text' | 'date' | 'time';
  /** Stands behind the input: `km`, `s per km`. */
  readonly unit?: string;
  readonly error?: string | null;
  readonly hint?: string;
  /** Which keys a phone should show. */
  readonly keys?: 'text' | 'decimal' | 'numeric';
  readonly after?: ComponentChildren;
}

/** A labelled input with its error beside it. */
export const Field = (props: Props) => {
  const { label, value, onChange, type = 'text', unit, error = null, hint, keys = 'text', after } = props;
  const id = useId();
  // What is being typed stays as it is typed; what stood there is written as its reader writes it.
  const typed = useRef<string | null>(null);
  const shown = keys === 'decimal' && value !== typed.current ? writtenNumber(value) : value;
  const about = error !== null || hint !== undefined ? `${id}-about` : undefined;
  const input = {
    id,
    autocomplete: 'off',
    value: shown,
    'aria-invalid': error !== null,
    'aria-describedby': about,
    onInput: (event: TargetedInputEvent<HTMLInputElement>) => {
      typed.current = event.currentTarget.value;
      onChange(typed.current);
    },
  } as const;
  return (
    <div class="field" data-wrong={error !== null}>
      <label for={id}>{label}</label>
      <div class="field-row">
        {type === 'text' ? (
          <input type="text" inputMode={keys} {...input} />
        ) : (
          <input type={type} {...input} />
        )}
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
