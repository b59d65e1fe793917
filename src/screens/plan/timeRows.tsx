import type { DraftField, TimeRow } from '../../session/planDraft.ts';
import { Field } from './field.tsx';

interface Props {
  readonly rows: readonly TimeRow[];
  readonly field: DraftField;
  readonly onChange: (rows: readonly TimeRow[]) => void;
  readonly errorOf: (field: DraftField, row?: number | null) => string | null;
  readonly unit: string;
  /** What one row is called: `Cut-off`. */
  readonly name: string;
  readonly add: string;
}

/** Places with a time each. */
export const TimeRows = ({ rows, field, onChange, errorOf, unit, name, add }: Props) => {
  const set = (i: number, change: Partial<TimeRow>): void =>
    onChange(rows.map((row, j) => (j === i ? { ...row, ...change } : row)));
  return (
    <>
      {rows.map((row, i) => (
        <div class="time-row" key={i}>
          <Field
            label={`${name} ${i + 1} at`}
            keys="decimal"
            unit={unit}
            value={row.at}
            onChange={(at) => set(i, { at })}
            error={errorOf(field, i)}
          />
          <Field
            label={`${name} ${i + 1} time`}
            value={row.time}
            onChange={(time) => set(i, { time })}
            after={
              <button
                type="button"
                class="small-button"
                aria-label={`Remove ${name.toLowerCase()} ${i + 1}`}
                onClick={() => onChange(rows.filter((_, j) => j !== i))}
              >
                ×
              </button>
            }
          />
        </div>
      ))}
      <button type="button" onClick={() => onChange([...rows, { at: '', time: '' }])}>
        {add}
      </button>
    </>
  );
};
