/** A number as it is to be shown: with so many decimals, in the reader's way of writing numbers. */
export interface Decimal {
  readonly number: number;
  readonly decimals: number;
}

/** What may stand in a place of a message. */
export type Value = string | number | Decimal | Message;

/**
 * A sentence as data: English with named places in braces, and what stands in them. The English text is the name under
 * which other languages keep theirs. So the core says what it means without knowing who reads it.
 */
export interface Message {
  readonly text: string;
  readonly values: Readonly<Record<string, Value>>;
  /** How many there are of the thing, where the form of the sentence hangs on it; `text` is then the form for many. */
  readonly count?: number;
  /** The English form for exactly one. */
  readonly one?: string;
}

/** A sentence; `text` is a plain literal, so that a test can collect all that is ever shown. */
export const message = (text: string, values: Readonly<Record<string, Value>> = {}): Message => ({
  text,
  values,
});

/** A sentence about n things; {n} may stand in both forms. */
export const plural = (
  n: number,
  one: string,
  other: string,
  values: Readonly<Record<string, Value>> = {},
): Message => ({ text: other, one, count: n, values: { n, ...values } });

/** Words one after the other: `water, gel`. At least one. */
export const listed = (words: readonly Message[]): Message => ({
  text: words.map((_, i) => `{${i}}`).join(', '),
  values: Object.fromEntries(words.map((word, i) => [i, word])),
});

export const decimal = (number: number, decimals: number): Decimal => ({ number, decimals });

/** A number with at most so many decimals, without idle zeros: 10, 10.5. */
export const decimalUpTo = (number: number, decimals: number): Decimal => {
  const fixed = Number(number.toFixed(decimals));
  return { number: fixed, decimals: String(fixed).split('.')[1]?.length ?? 0 };
};

/** A number that comes without a word on its decimals is shown with no more than these. */
const MOST_DECIMALS = 6;

/** How a reader's language writes a message; what a language brings. */
export interface Writing {
  readonly sentence: (message: Message) => string;
  readonly number: (value: Decimal) => string;
}

const ENGLISH: Writing = {
  sentence: ({ text, one, count }) => (count === 1 && one !== undefined ? one : text),
  number: ({ number, decimals }) => number.toFixed(decimals),
};

/**
 * The message as a reader sees it. What follows `||` in a text tells two equal English texts apart and is not shown. A
 * place without a value stays as it is, braces and all: seen at once, and nothing breaks.
 */
export const written = (message: Message, writing: Writing = ENGLISH): string => {
  const sentence = writing.sentence(message).split('||', 1)[0] ?? '';
  return sentence.replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = message.values[name];
    if (value === undefined) return place;
    if (typeof value === 'string') return value;
    if (typeof value === 'number')
      return Number.isInteger(value) ? String(value) : writing.number(decimalUpTo(value, MOST_DECIMALS));
    return 'text' in value ? written(value, writing) : writing.number(value);
  });
};
