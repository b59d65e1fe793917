import { type Message, written } from '../../src/core/units/message.ts';

/** A value with its messages as the English text that they come to. */
export type English<T> = T extends Message
  ? string
  : T extends (...args: never[]) => unknown
    ? T
    : T extends object
      ? { [K in keyof T]: English<T[K]> }
      : T;

const isMessage = (value: object): value is Message => 'text' in value && 'values' in value;

const read = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(read);
  if (typeof value !== 'object' || value === null) return value;
  if (isMessage(value)) return written(value);
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, read(part)]));
};

/** Reads every message in a value: what an English runner sees of it. */
export const english = <T>(value: T): English<T> => read(value) as English<T>;

/** The function with every message of its answer read. */
export const inEnglish =
  <Args extends unknown[], T>(of: (...args: Args) => T) =>
  (...args: Args): English<T> =>
    english(of(...args));
