import { type DoorError, err, ok, type Result } from '../units/result.ts';
import { refuse, show } from './shape.ts';

/** A plan is a page of text; a megabyte is a hundred times the longest sensible one. */
const MAX_PLAN_CHARS = 1_000_000;

/**
 * A text that lacks its closing quote ends with the file: were it no match, each quote within it would be tried anew, and
 * a megabyte of them takes minutes.
 */
const STRINGS_AND_NON_NUMBERS = /"(?:[^"\\]|\\[\s\S])*"?|-?\bInfinity\b|\bNaN\b|\bundefined\b/g;

/** Text in which NaN and Infinity, which are no JSON but which programs write, stand as words in quotes. */
export const nonNumbersQuoted = (text: string): string =>
  text.replace(STRINGS_AND_NON_NUMBERS, (m) => (m.startsWith('"') ? m : `"${m}"`));

const tryParse = (text: string): Result<unknown, string> => {
  try {
    return ok(JSON.parse(text));
  } catch (e) {
    return err(e instanceof Error ? e.message : String(e));
  }
};

/**
 * JSON text to a value of unknown shape, its size checked first.
 * NaN and Infinity are no JSON, but programs write them: `read` then gets them as words, so that the error names the
 * field they stand in; where no field minds, the text is refused as JSON all the same.
 */
export const parseJson = <T>(
  text: string,
  read: (value: unknown) => Result<T, DoorError>,
): Result<T, DoorError> => {
  if (text.length > MAX_PLAN_CHARS) {
    return err({ place: 'the file', expected: 'at most 1 MB of text', found: `${text.length} characters` });
  }
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const value = tryParse(plain);
  if (value.ok) return read(value.value);
  const quoted = tryParse(nonNumbersQuoted(plain));
  if (quoted.ok) {
    const field = read(quoted.value);
    if (!field.ok) return field;
  }
  return plain.trim() === ''
    ? refuse('the file', 'a plan as JSON', undefined)
    : err({
        place: 'the file',
        expected: 'JSON',
        found: `text that is none (${show(value.error).replace(/^"|"$/g, '')})`,
      });
};
