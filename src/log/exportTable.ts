/** A table as text by RFC 4180: CRLF after each record, quotes where a field needs them, the same count of fields in each. */

const NEEDS_QUOTES = /[",\r\n]/;

const field = (value: string | number | null): string => {
  const text = value === null ? '' : String(value);
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/** @param rows each as long as the head; numbers with a point for the decimal */
export const csvOf = (
  head: readonly string[],
  rows: readonly (readonly (string | number | null)[])[],
): string => [head, ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('');
