import type { Words } from '../../../src/voice/words/words.ts';
import { everySpoken } from '../../../src/voicepack/walk.ts';

/** The words of a text as the recogniser writes them: small letters, hyphens and stops gone. */
export const plainWords = (text: string): readonly string[] =>
  text.toLowerCase().replace(/[-.,]/g, ' ').split(/\s+/).filter(Boolean);

/** A state of the grammar: where each word leads, and whether a call may end here. Equal states are one object. */
interface State {
  readonly id: number;
  readonly ends: boolean;
  /** One word may lead to several states. */
  readonly arcs: readonly (readonly [word: string, next: State])[];
}

/** Makes states, each only once. */
const stateMaker = (): ((ends: boolean, arcs: State['arcs']) => State) => {
  const known = new Map<string, State>();
  return (ends, arcs) => {
    const byWord = [...arcs].sort(([a, s], [b, t]) => (a < b ? -1 : a > b ? 1 : s.id - t.id));
    const distinct = byWord.filter(
      ([word, next], i) => word !== byWord[i - 1]?.[0] || next !== byWord[i - 1]?.[1],
    );
    const key = `${ends} ${distinct.map(([word, next]) => `${word}:${next.id}`).join(' ')}`;
    const state = known.get(key) ?? { id: known.size, ends, arcs: distinct };
    known.set(key, state);
    return state;
  };
};

/** Sentences as a tree by their words. */
interface Tree {
  readonly branches: Map<string, Tree>;
  ends: boolean;
}

const newTree = (): Tree => ({ branches: new Map(), ends: false });

const addTo = (tree: Tree, words: readonly string[]): void => {
  let at = tree;
  for (const word of words) {
    const next = at.branches.get(word) ?? newTree();
    at.branches.set(word, next);
    at = next;
  }
  at.ends = true;
};

/** What each sentence of each shape of call (kind, form, number of sentences) can be. */
const shapesOf = (words: Words): readonly (readonly Tree[])[] => {
  const shapes = new Map<string, readonly Tree[]>();
  for (const { saying, form, sentences } of everySpoken(words)) {
    const shape = `${saying.kind} ${'what' in saying ? saying.what : ''} ${form} ${sentences.length}`;
    const slots = shapes.get(shape) ?? sentences.map(newTree);
    shapes.set(shape, slots);
    sentences.forEach((clips, i) => {
      const slot = slots[i];
      if (slot) addTo(slot, plainWords(clips.join(' ')));
    });
  }
  return [...shapes.values()];
};

/**
 * Everything that can be said, as a finite-state grammar in the recogniser's own format: a call of one shape is any of
 * its first sentences, then any of its second … All words that may follow are equally likely. (The same as JSGF, but
 * without the empty steps that make the recogniser twenty times slower.)
 */
export const grammarOf = (words: Words): string => {
  const make = stateMaker();
  const end = make(true, []);
  const follow = (tree: Tree, then: State): State => {
    const own = [...tree.branches].map(([word, next]) => [word, follow(next, then)] as const);
    return tree.ends ? make(then.ends, [...own, ...then.arcs]) : make(false, own);
  };
  const roots = shapesOf(words).map((slots) => slots.reduceRight((then, slot) => follow(slot, then), end));
  const start = make(
    false,
    roots.flatMap((root) => root.arcs),
  );
  const reached = new Set<State>([start]);
  for (const state of reached) for (const [, next] of state.arcs) reached.add(next);
  const numbers = new Map([...reached].map((state, i) => [state, i] as const));
  const last = numbers.size;
  const lines = [...reached].flatMap((state) => [
    ...state.arcs.map(
      ([word, next]) =>
        `TRANSITION ${numbers.get(state)} ${numbers.get(next)} ${(1 / state.arcs.length).toFixed(6)} ${word}`,
    ),
    ...(state.ends ? [`TRANSITION ${numbers.get(state)} ${last} 1.0`] : []),
  ]);
  return `FSG_BEGIN calls\nNUM_STATES ${last + 1}\nSTART_STATE 0\nFINAL_STATE ${last}\n${lines.join('\n')}\nFSG_END\n`;
};
