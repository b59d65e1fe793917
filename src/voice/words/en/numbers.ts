const SMALL = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** A whole number from 0 to 999 in words: 'twenty-one', 'one hundred and five'. */
export const numberWords = (n: number): string => {
  if (n < 20) return SMALL[n] ?? '';
  if (n < 100) return n % 10 === 0 ? (TENS[n / 10] ?? '') : `${TENS[Math.floor(n / 10)]}-${SMALL[n % 10]}`;
  const hundreds = `${SMALL[Math.floor(n / 100)]} hundred`;
  return n % 100 === 0 ? hundreds : `${hundreds} and ${numberWords(n % 100)}`;
};

/** 'one second', 'two seconds'. */
export const counted = (n: number, one: string, many: string): string =>
  `${numberWords(n)} ${n === 1 ? one : many}`;

/** Up to here a number is one clip: minutes and seconds need no more. */
const ONE_CLIP_BELOW = 60;

/** A number from 0 to 999 as clips: 'fifty-nine'; beyond 59, which is rare, in its parts: 'sixty' 'one'. */
export const numberClips = (n: number): readonly string[] => {
  if (n < ONE_CLIP_BELOW) return [numberWords(n)];
  if (n >= 100)
    return [
      `${SMALL[Math.floor(n / 100)]} hundred`,
      ...(n % 100 > 0 ? ['and', ...numberClips(n % 100)] : []),
    ];
  return [TENS[Math.floor(n / 10)] ?? '', ...(n % 10 > 0 ? [numberWords(n % 10)] : [])];
};

/**
 * Up to here a number and its unit are one clip, since joins cost understanding; beyond it the pack would grow too long
 * and they are two.
 */
const WHOLE_CLIP_UP_TO = 10;

/** A counted thing as clips: one clip for small counts, number and thing apart for large ones. */
export const countedClips = (n: number, one: string, many: string): readonly string[] =>
  n <= WHOLE_CLIP_UP_TO ? [counted(n, one, many)] : [...numberClips(n), many];
