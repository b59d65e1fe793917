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
