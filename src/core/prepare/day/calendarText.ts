/** The grammar of RFC 5545 (iCalendar) as far as it is needed: text values, content lines, folding. */

const CRLF = '\r\n';
/** RFC 5545, 3.1: lines SHOULD NOT be longer than 75 octets, the line break apart. */
const MAX_OCTETS = 75;
const REPLACEMENT = '\uFFFD';

/** Octets of a character in UTF-8. */
const octetsOf = (char: string): number => {
  const code = char.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
};

const isLoneSurrogate = (char: string): boolean => {
  const code = char.codePointAt(0) ?? 0;
  return code >= 0xd800 && code <= 0xdfff;
};

/** Control characters that no TEXT may hold: all but the tab (line breaks are escaped before). */
const isForbidden = (char: string): boolean => {
  const code = char.codePointAt(0) ?? 0;
  return (code < 0x20 && code !== 0x09) || code === 0x7f;
};

/**
 * A TEXT value (3.3.11): backslash, semicolon and comma escaped, any line break as \n. Characters that cannot stand in
 * a calendar go: controls are left out, halves of characters become U+FFFD.
 */
export const escapeText = (text: string): string =>
  [...text.replace(/\r\n?/g, '\n')]
    .map((char) => {
      if (char === '\n') return '\\n';
      if (char === '\\' || char === ';' || char === ',') return `\\${char}`;
      if (isLoneSurrogate(char)) return REPLACEMENT;
      return isForbidden(char) ? '' : char;
    })
    .join('');

/** Folds a content line into lines of at most 75 octets, each next one begun with a space; no character is split. */
const fold = (line: string): string => {
  let folded = '';
  let octets = 0;
  for (const char of line) {
    const more = octetsOf(char);
    if (octets + more > MAX_OCTETS) {
      folded += `${CRLF} `;
      octets = 1;
    }
    folded += char;
    octets += more;
  }
  return folded;
};

/** Content lines as a stream: folded, each ended by CRLF. */
export const contentLines = (lines: readonly string[]): string =>
  lines.map((line) => fold(line) + CRLF).join('');
