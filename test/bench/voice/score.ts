/** How one said word came through: heard, mistaken for another, or lost; words heard that were not said stand before. */
export interface Aligned {
  readonly said: string;
  /** Null where the word was lost. */
  readonly heard: string | null;
  /** Words heard before this one that nobody said. */
  readonly addedBefore: number;
}

/** The alignment with the fewest mistakes (Levenshtein), and the words added after the last one. */
export const align = (
  said: readonly string[],
  heard: readonly string[],
): { readonly words: readonly Aligned[]; readonly addedAtEnd: number } => {
  const cost = Array.from({ length: said.length + 1 }, (_, i) =>
    Array.from({ length: heard.length + 1 }, (_, j) => (i === 0 ? j : j === 0 ? i : 0)),
  );
  const costAt = (i: number, j: number): number => cost[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 1; i <= said.length; i++) {
    for (let j = 1; j <= heard.length; j++) {
      const same = said[i - 1] === heard[j - 1] ? 0 : 1;
      const row = cost[i];
      if (row) row[j] = Math.min(costAt(i - 1, j - 1) + same, costAt(i - 1, j) + 1, costAt(i, j - 1) + 1);
    }
  }
  const words: Aligned[] = [];
  let i = said.length;
  let j = heard.length;
  let added = 0;
  let addedAtEnd: number | null = null;
  while (i > 0 || j > 0) {
    const same = i > 0 && j > 0 && said[i - 1] === heard[j - 1] ? 0 : 1;
    const paired = i > 0 && j > 0 && costAt(i, j) === costAt(i - 1, j - 1) + same;
    const lost = !paired && i > 0 && costAt(i, j) === costAt(i - 1, j) + 1;
    if (!paired && !lost) {
      added++;
      j--;
      continue;
    }
    const before = words[0];
    if (before) words[0] = { ...before, addedBefore: added };
    else addedAtEnd = added;
    added = 0;
    words.unshift({ said: said[i - 1] ?? '', heard: paired ? (heard[j - 1] ?? null) : null, addedBefore: 0 });
    i--;
    if (paired) j--;
  }
  const first = words[0];
  if (first) words[0] = { ...first, addedBefore: added };
  return { words, addedAtEnd: addedAtEnd ?? added };
};

/** Mistakes in an alignment: lost, mistaken and added words. */
export const mistakes = ({ words, addedAtEnd }: ReturnType<typeof align>): number =>
  words.reduce((sum, word) => sum + word.addedBefore + (word.heard === word.said ? 0 : 1), addedAtEnd);
