import { computed, signal } from '@preact/signals';
import {
  type Decimal,
  type Message,
  message,
  type Value,
  type Writing,
  written,
} from '../core/units/message.ts';

/** One text of a language: one form, or one for each plural category of the language (Unicode CLDR) that differs. */
export type Entry = string | Partial<Record<Intl.LDMLPluralRule, string>>;

/** A language's texts for the screens, by the English text. */
export type Catalogue = Readonly<Record<string, Entry>>;

interface Reading {
  /** BCP 47 tag. */
  readonly language: string;
  readonly catalogue: Catalogue;
}

const reading = signal<Reading>({ language: 'en', catalogue: {} });

/** The tag of the language that the screens are in. */
export const screenLanguage = computed(() => reading.value.language);

/** The screens are in this language from now on; what is on show is drawn anew. */
export const readIn = (language: string, catalogue: Catalogue): void => {
  reading.value = { language, catalogue };
};

/** How a language writes a message: its own form where the catalogue has one, else the English. */
const writingOf = ({ language, catalogue }: Reading): Writing => {
  let plurals: Intl.PluralRules | null = null;
  const numbers = new Map<number, Intl.NumberFormat>();
  const numberWith = (decimals: number): Intl.NumberFormat => {
    const known = numbers.get(decimals);
    if (known !== undefined) return known;
    const made = new Intl.NumberFormat(language, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: false,
    });
    numbers.set(decimals, made);
    return made;
  };
  return {
    sentence: ({ text, one, count }) => {
      const entry = catalogue[text];
      if (entry === undefined) return count === 1 && one !== undefined ? one : text;
      if (typeof entry === 'string') return entry;
      plurals ??= new Intl.PluralRules(language);
      return entry[plurals.select(count ?? 0)] ?? entry.other ?? text;
    },
    number: ({ number, decimals }) =>
      // English numbers are as the script writes them; the first use of Intl takes a slow phone a tenth of a second.
      language === 'en' ? number.toFixed(decimals) : numberWith(decimals).format(number),
  };
};

const writing = computed(() => writingOf(reading.value));

/** A text or a message in the language of the screens. A component that shows it follows a change of language. */
export const t = (text: string | Message, values: Readonly<Record<string, Value>> = {}): string =>
  written(typeof text === 'string' ? message(text, values) : text, writing.value);

/** A number with so many decimals as the language of the screens writes it: 21.1, or 21,1. */
export const shownNumber = (value: Decimal): string => writing.value.number(value);
