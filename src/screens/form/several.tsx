interface Props<T extends string | number> {
  readonly label: string;
  /** Where the place of the row says it to those who see. */
  readonly labelUnseen?: boolean;
  /** All there are, in their order. */
  readonly options: readonly T[];
  readonly chosen: readonly T[];
  readonly textOf: (option: T) => string;
  /** In the order of `options`. */
  readonly onChange: (chosen: readonly T[]) => void;
}

/** Any of a few: a row of boxes to tick. */
export const Several = <T extends string | number>(props: Props<T>) => {
  const { label, labelUnseen = false, options, chosen, textOf, onChange } = props;
  const switched = (option: T): readonly T[] =>
    options.filter((other) => chosen.includes(other) !== (other === option));
  return (
    <fieldset class="offers">
      <legend class={labelUnseen ? 'unseen' : ''}>{label}</legend>
      {options.map((option) => (
        <label key={option}>
          <input
            type="checkbox"
            checked={chosen.includes(option)}
            onChange={() => onChange(switched(option))}
          />
          {textOf(option)}
        </label>
      ))}
    </fieldset>
  );
};
