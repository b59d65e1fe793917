/** One cue of a text track: seconds from the begin of the sound, and plain text. */
export interface VttCue {
  readonly fromS: number;
  readonly toS: number;
  readonly text: string;
}

const two = (n: number): string => String(n).padStart(2, '0');

/** 1:02:03.456 as WebVTT writes it: 01:02:03.456. */
const stamp = (timeS: number): string => {
  const ms = Math.round(timeS * 1000);
  const s = Math.floor(ms / 1000);
  return `${two(Math.floor(s / 3600))}:${two(Math.floor(s / 60) % 60)}:${two(s % 60)}.${String(ms % 1000).padStart(3, '0')}`;
};

/** Signs that would be read as markup, and breaks that would end the cue. */
const plain = (text: string): string =>
  text.replace(/\s+/g, ' ').trim().replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** A WebVTT file (W3C, WebVTT: The Web Video Text Tracks Format; from memory, checked with a parser of others). */
export const vttOf = (title: string, cues: readonly VttCue[]): string =>
  [
    'WEBVTT',
    '',
    // A comment may not hold the arrow of the times; `plain` writes it in other signs.
    `NOTE ${plain(title)}`,
    '',
    ...cues.flatMap(({ fromS, toS, text }, i) => [
      String(i + 1),
      `${stamp(fromS)} --> ${stamp(Math.max(toS, fromS + 0.001))}`,
      plain(text),
      '',
    ]),
  ].join('\n');
