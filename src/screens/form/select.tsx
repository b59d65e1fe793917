import { useId } from 'preact/hooks';

interface Props<T extends string | number> {
  readonly label: string;
  readonly options: readonly (readonly [value: T, text: string])[];
  readonly value: T;
  readonly onChange: (value: T) => void;
}

/** One of many, by the device's own list. */
export const Select = <T extends string | number>({ label, options, value, onChange }: Props<T>) => {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={String(value)}
        onChange={(event) => {
          const chosen = options.find(([option]) => String(option) === event.currentTarget.value);
          if (chosen) onChange(chosen[0]);
        }}
      >
        {options.map(([option, text]) => (
          <option key={option} value={String(option)}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
};
