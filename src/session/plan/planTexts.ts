/** Numbers as people type them. */

/** `1:44:00`, `41:30`, or whole minutes as `104`. Null where it is no time. */
export const secondsOf = (text: string): number | null => {
  const parts = text.trim().split(':');
  if (parts.length > 3 || !parts.every((p) => /^\d{1,4}$/.test(p.trim()))) return null;
  const numbers = parts.map(Number);
  if (numbers.slice(1).some((n) => n >= 60)) return null;
  if (numbers.length === 1) return (numbers[0] ?? 0) * 60;
  return numbers.reduce((sum, n) => sum * 60 + n, 0);
};

/** Nobody runs a whole race at this, metres a second. */
const TOO_QUICK_MPS = 12;
const MIN_S = 60;

/** As `secondsOf`, of a whole race: `1:45` over a half marathon are hours and minutes, as nobody runs it in 105 s. */
export const finishSecondsOf = (text: string, distanceM: number): number | null => {
  const seconds = secondsOf(text);
  const isShort = text.split(':').length === 2;
  return seconds !== null && isShort && distanceM > seconds * TOO_QUICK_MPS ? seconds * MIN_S : seconds;
};

/** A number with a point or a comma before its decimals; null where it is none. */
export const numberOf = (text: string): number | null => {
  const plain = text.trim().replace(',', '.');
  return /^-?\d+(\.\d*)?$|^-?\.\d+$/.test(plain) ? Number(plain) : null;
};

/** Texts of places: `5, 10, 15`, `5 10 15`, `5,10,15`; with blanks between them a comma inside is a decimal one. */
export const placesOf = (text: string): string[] => {
  const list = /[;\s]/.test(text.trim())
    ? text.split(/[;\s]+/).map((t) => t.replace(/,$/, ''))
    : text.split(',');
  return list.filter((t) => t.trim() !== '');
};
