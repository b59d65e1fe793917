import type { Message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { DraftField, TimeRow } from '../../session/planDraft.ts';
import { Field } from './field.tsx';

interface Props {
  readonly rows: readonly TimeRow[];
  readonly field: DraftField;
  readonly onChange: (rows: readonly TimeRow[]) => void;
  readonly errorOf: (field: DraftField, row?: number | null) => string | null;
  readonly unit: string;
  readonly words: RowWords;
}

/** What is said of a row; its number goes into {n}. */
export interface RowWords {
  readonly at: Message;
  readonly time: Message;
  readonly remove: Message;
  readonly add: Message;
}

const numbered = (text: Message, i: number): string => t({ ...text, values: { n: i + 1 } });

/** Places with a time each. */
export const TimeRows = ({ rows, field, onChange, errorOf, unit, words }: Props) => {
  const set = (i: number, change: Partial<TimeRow>): void =>
    onChange(rows.map((row, j) => (j === i ? { ...row, ...change } : row)));
  return (
    <>
      {rows.map((row, i) => (
        <div class="time-row" key={i}>
          <Field
            label={numbered(words.at, i)}
            keys="decimal"
            unit={unit}
            value={row.at}
            onChange={(at) => set(i, { at })}
            error={errorOf(field, i)}
          />
          <Field
            label={numbered(words.time, i)}
            value={row.time}
            onChange={(time) => set(i, { time })}
            after={
              <button
                type="button"
                class="small-button"
                aria-label={numbered(words.remove, i)}
                onClick={() => onChange(rows.filter((_, j) => j !== i))}
              >
                ×
              </button>
            }
          />
        </div>
      ))}
      <button type="button" onClick={() => onChange([...rows, { at: '', time: '' }])}>
        {t(words.add)}
      </button>
    </>
  );
};
