const ONES = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const TEENS = [
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

/** Clips reach this far: minutes and seconds need no more. */
const ONE_CLIP_BELOW = 60;

const one = (n: number): string => ONES[n] ?? '';

/**
 * The round tens are said in their digits: 'three zero', never 'thirty'. So 30 and 13, 40 and 14, 50 and 15 share nothing,
 * and no noise behind 'twenty' makes it twenty-eight. Measured with `npm run bench:voice`; common practice on the radio.
 */
const isRound = (n: number): boolean => n % 10 === 0;

/** A whole number from 0 to 99 in words: 'twenty-one', 'three zero'. */
export const numberWords = (n: number): string => {
  if (n < 10) return one(n);
  if (n < 20) return TEENS[n - 10] ?? '';
  return isRound(n) ? `${one(n / 10)} zero` : `${TENS[Math.floor(n / 10)]}-${one(n % 10)}`;
};

/** A number as the two digits after minutes: 'zero five', 'twelve'. */
export const twoDigits = (n: number): string => (n < 10 ? `zero ${one(n)}` : numberWords(n));

/** A number digit by digit: 'one' 'six' 'eight'. */
export const digitClips = (n: number): readonly string[] => [...String(n)].map((digit) => one(Number(digit)));

/** A number from 0 to 999 as clips: one clip up to 59; beyond, which is rare, its parts: 'sixty' 'one'. */
export const numberClips = (n: number): readonly string[] => {
  if (n < ONE_CLIP_BELOW) return [numberWords(n)];
  if (n >= 100)
    return [one(Math.floor(n / 100)), 'hundred', ...(n % 100 > 0 ? ['and', ...numberClips(n % 100)] : [])];
  if (isRound(n)) return [one(n / 10), one(0)];
  return [TENS[Math.floor(n / 10)] ?? '', one(n % 10)];
};

/** A counted thing in its clips: 'one mile', 'twenty-three' 'miles'. */
export const countedClips = (n: number, single: string, many: string): readonly string[] =>
  n === 1 ? [`one ${single}`] : [...numberClips(n), many];
