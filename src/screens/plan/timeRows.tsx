import type { Message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { DraftField, TimeRow } from '../../session/plan/planDraft.ts';
import { Field } from '../form/field.tsx';
import { Remove } from '../form/remove.tsx';
import { changedAt, withoutAt } from '../form/rows.ts';
import type { PlanFields } from './planFields.ts';

interface Props extends Pick<PlanFields, 'errorOf' | 'unit'> {
  readonly rows: readonly TimeRow[];
  readonly field: DraftField;
  readonly onChange: (rows: readonly TimeRow[]) => void;
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
  const set = (i: number, change: Partial<TimeRow>): void => onChange(changedAt(rows, i, change));
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
            after={<Remove label={numbered(words.remove, i)} onClick={() => onChange(withoutAt(rows, i))} />}
          />
        </div>
      ))}
      <button type="button" onClick={() => onChange([...rows, { at: '', time: '' }])}>
        {t(words.add)}
      </button>
    </>
  );
};
