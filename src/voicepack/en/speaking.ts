import type { Carrier } from '../carrier.ts';

/** How a clip is spelt for the engine where it would read the words otherwise. */
const SPELT: readonly (readonly [RegExp, string])[] = [[/\bK\b/g, 'kay']];

export const spelt = (clip: string): string =>
  SPELT.reduce((text, [words, spelling]) => text.replace(words, spelling), clip);

/**
 * Which clips never end a sentence, and what follows them when they are recorded: a word like those that will follow, so
 * that they are said on one breath.
 */
const CARRIERS: readonly (readonly [RegExp, Carrier])[] = [
  [/ by$|^about$/, { before: '', after: 'four seconds' }],
  [
    /^(in|at|now at|and|of|split|goal|hold|until|last|own time|rep|heart rate|ceiling)$/,
    { before: '', after: 'four' },
  ],
  [/^(settle at|push to|heading for|finished in|by the plan)$/, { before: '', after: 'four' }],
  [/ hours?$/, { before: '', after: 'four' }],
  [/^point /, { before: '', after: 'kay' }],
  [/ hundred$/, { before: '', after: 'metres' }],
  [/^(K|miles|minutes|seconds)$/, { before: 'five', after: '' }],
  [/^(minute)$/, { before: 'one', after: '' }],
];

export const carrierOf = (clip: string): Carrier =>
  CARRIERS.find(([clips]) => clips.test(clip))?.[1] ?? { before: '', after: '' };
