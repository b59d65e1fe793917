import { screenLanguage } from '../../languages/text.ts';

/** The reader's own region where the screens are in a language of theirs: a date in British English stays British. */
const locale = (): string =>
  navigator.languages.find((tag) => tag.toLowerCase().split('-', 1)[0] === screenLanguage.value) ??
  screenLanguage.value;

/** The month is a word: 6/12 is another day on either side of the Atlantic. */
/** A day, from epoch ms, in local time. */
export const shownDay = (ms: number): string =>
  new Date(ms).toLocaleDateString(locale(), { dateStyle: 'medium' });

/** A day and a time of day, from epoch ms, in local time. */
export const shownMoment = (ms: number): string =>
  new Date(ms).toLocaleString(locale(), { dateStyle: 'medium', timeStyle: 'short' });
