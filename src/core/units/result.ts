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
  /** What stood there, shortened for print. */
  readonly found: string;
}

/** One clear line for people. */
export const sayDoorError = (e: DoorError): string => `${e.place}: expected ${e.expected}, found ${e.found}`;
