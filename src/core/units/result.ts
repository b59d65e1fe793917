import { type Message, written } from './message.ts';

/** What a parser at the door returns: a value that holds no nonsense, or an error that names the place. */
export type Result<T, E> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

export const ok = <T>(value: T): Result<T, never> => ({ ok: true, value });
export const err = <E>(error: E): Result<never, E> => ({ ok: false, error });

/** Why an input was refused. */
export interface DoorError {
  /** Where in the input: `goalS`, `checkpointsM[2]`, `line 17`. */
  readonly place: string;
  /** What was expected there, as a phrase: `a number above 0`. */
  readonly expected: string;
  /** The same phrase as data, where figures stand in it. */
  readonly phrase?: Message;
  /** What stood there, shortened for print. */
  readonly found: string;
}

/** The error; a phrase with figures is given as a message. */
export const doorError = (place: string, expected: string | Message, found: string): DoorError =>
  typeof expected === 'string'
    ? { place, expected, found }
    : { place, expected: written(expected), phrase: expected, found };

/** One clear line for people. */
export const sayDoorError = (e: DoorError): string => `${e.place}: expected ${e.expected}, found ${e.found}`;
