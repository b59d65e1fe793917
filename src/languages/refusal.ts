import { type Message, message } from '../core/units/message.ts';
import type { DoorError } from '../core/units/result.ts';

/** What a parser says it found, where it says it in words of its own and does not show a piece of the file. */
const FOUND: Readonly<Record<string, Message>> = {
  nothing: message('nothing||found in a file'),
  'an object': message('an object||found in a file'),
  less: message('less||found in a file'),
  'no line': message('no line||found in a file'),
  'no element': message('no element||found in a file'),
  'no track': message('no track||found in a file'),
  'no track, route or waypoint': message('no track, route or waypoint||found in a file'),
  'a packed file (gzip)': message('a packed file (gzip)||found in a file'),
  'a packed file (zip)': message('a packed file (zip)||found in a file'),
  'bytes that are no text': message('bytes that are no text||found in a file'),
};
const PLACES: Readonly<Record<string, Message>> = {
  'the file': message('the file'),
  'the log': message('the log'),
};

/**
 * What was expected, as data: the phrase with its figures, or the phrase's English itself, under which the languages keep
 * it (the phrases of the parsers are collected by test/support/texts.ts).
 */
export const expectedOf = ({ expected, phrase }: DoorError): Message =>
  phrase ?? { text: expected, values: {} };

const COUNTED: readonly (readonly [RegExp, (n: string) => Message])[] = [
  [/^(\d+) characters$/, (n) => message('{n} characters', { n })],
  [
    /^(\d+) without one: a course, no recording$/,
    (n) => message('{n} without one: a course, no recording||points without a time', { n }),
  ],
  [/^a list of (\d+)$/, (n) => message('a list of {n}', { n })],
  [/^text that begins with (.+)$/, (start) => message('text that begins with {start}', { start })],
];

export const foundOf = ({ found }: DoorError): Message | string => {
  for (const [pattern, said] of COUNTED) {
    const seen = pattern.exec(found)?.[1];
    if (seen !== undefined) return said(seen);
  }
  return FOUND[found] ?? found;
};

/** Why an input was refused, as one line for people. */
export const refusal = (error: DoorError): Message =>
  message('{place}: expected {expected}, found {found}', {
    place: PLACES[error.place] ?? error.place,
    expected: expectedOf(error),
    found: foundOf(error),
  });
