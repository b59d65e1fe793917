/** How a clip is spelt for the engine where it would read the words otherwise. */
const SPELLED: readonly (readonly [RegExp, string])[] = [[/\bK\b/g, 'kay']];

export const pronounced = (clip: string): string =>
  SPELLED.reduce((text, [words, spelling]) => text.replace(words, spelling), clip);
