import { type Message, message } from '../units/message.ts';
import { type DoorError, doorError, err, ok, type Result } from '../units/result.ts';

/**
 * Small readers that put together a parser for a file from outside: each takes what was found and the place where it
 * stood, and gives a value of the right type or the one reason why not. They look only at the fields they are asked
 * for, never walk what they do not know, and never throw, so depth and odd names in a file do no harm.
 */
export type Read<T> = (found: unknown, place: string) => Result<T, DoorError>;

const SHOWN_CHARS = 40;

/** What stood there, short enough for one line. Lists and objects are only named: they may be deep. */
export const show = (found: unknown): string => {
  if (found === undefined) return 'nothing';
  if (Array.isArray(found)) return `a list of ${found.length}`;
  if (typeof found === 'object' && found !== null) return 'an object';
  const text = typeof found === 'string' ? JSON.stringify(found) : String(found);
  return text.length > SHOWN_CHARS ? `${text.slice(0, SHOWN_CHARS)}…` : text;
};

export const refuse = (place: string, expected: string | Message, found: unknown): Result<never, DoorError> =>
  err(doorError(place, expected, show(found)));

/** A finite number for which `holds`; `expected` says the rule in words. */
export const numberThat =
  (expected: string | Message, holds: (n: number) => boolean): Read<number> =>
  (found, place) =>
    typeof found === 'number' && Number.isFinite(found) && holds(found)
      ? ok(found)
      : refuse(place, expected, found);

export const textUpTo =
  (maxChars: number): Read<string> =>
  (found, place) =>
    typeof found === 'string' && found.length <= maxChars
      ? ok(found)
      : refuse(place, message('a text of at most {n} characters', { n: maxChars }), found);

/** One of a fixed set of words, in any case. */
export const oneOf =
  <T extends string>(words: readonly T[]): Read<T> =>
  (found, place) => {
    const word = typeof found === 'string' ? words.find((w) => w === found.trim().toLowerCase()) : undefined;
    return word === undefined ? refuse(place, words.map((w) => `"${w}"`).join(' or '), found) : ok(word);
  };

export const listOf =
  <T>(read: Read<T>, maxItems: number): Read<T[]> =>
  (found, place) => {
    if (!Array.isArray(found)) return refuse(place, 'a list', found);
    if (found.length > maxItems)
      return refuse(place, message('a list of at most {n}', { n: maxItems }), found);
    const values: T[] = [];
    for (const [i, item] of found.entries()) {
      const got = read(item, `${place}[${i}]`);
      if (!got.ok) return got;
      values.push(got.value);
    }
    return ok(values);
  };

/** Left out or null means the default. */
export const orElse =
  <T, D>(read: Read<T>, fallback: D): Read<T | D> =>
  (found, place) =>
    found === undefined || found === null ? ok(fallback) : read(found, place);

/** An object with these fields; fields it does not know are let be. `place` is empty at the top of a file. */
export const fields =
  <T extends object>(readers: { readonly [K in keyof T]: Read<T[K]> }): Read<T> =>
  (found, place) => {
    if (typeof found !== 'object' || found === null || Array.isArray(found)) {
      return refuse(place === '' ? 'the file' : place, 'an object', found);
    }
    const values: Partial<T> = {};
    for (const key of Object.keys(readers) as (keyof T & string)[]) {
      const own = Object.hasOwn(found, key) ? (found as Record<string, unknown>)[key] : undefined;
      const got = readers[key](own, place === '' ? key : `${place}.${key}`);
      if (!got.ok) return got;
      values[key] = got.value;
    }
    return ok(values as T);
  };
