import type { Words } from '../voice/words/words.ts';
import { everySpoken } from './walk.ts';

/** Where in a sentence a clip stands, over everything that can be said. */
export type Role = 'alone' | 'opener' | 'leader' | 'closer' | 'middle';

/**
 * Each clip of a language and its role, in the order of the alphabet: always first and never last is an opener, never last
 * a leader, always last and never first a closer; alone is what is a sentence and otherwise stands at one end; else middle.
 */
export const rolesOf = (words: Words): ReadonlyMap<string, Role> => {
  const first = new Set<string>();
  const last = new Set<string>();
  const notFirst = new Set<string>();
  const notLast = new Set<string>();
  for (const { sentences } of everySpoken(words))
    for (const clips of sentences)
      clips.forEach((clip, i) => {
        (i === 0 ? first : notFirst).add(clip);
        (i === clips.length - 1 ? last : notLast).add(clip);
      });
  const roleOf = (clip: string): Role => {
    if (!last.has(clip)) return notFirst.has(clip) ? 'leader' : 'opener';
    if (notFirst.has(clip) && notLast.has(clip)) return 'middle';
    return first.has(clip) ? 'alone' : 'closer';
  };
  return new Map([...new Set([...first, ...notFirst])].sort().map((clip) => [clip, roleOf(clip)]));
};
