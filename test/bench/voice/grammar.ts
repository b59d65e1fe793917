import type { Sentence, Words } from '../../../src/voice/words/words.ts';
import { everyExpected } from './expected.ts';

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

/** A clip that begins a part of a sentence of its own: after it anything may follow, whatever stood before. */
const JOINTS: ReadonlySet<string> = new Set(['in', 'until']);

/** Sentences, cut once more before each joint. */
const partsOf = (sentences: readonly Sentence[]): readonly (readonly string[])[] =>
  sentences.flatMap((clips) => {
    const parts: string[][] = [[]];
    for (const clip of clips) {
      if (JOINTS.has(clip) && (parts.at(-1)?.length ?? 0) > 0) parts.push([]);
      parts.at(-1)?.push(clip);
    }
    return parts;
  });

/** What each part of each shape of call (kind, form, number of parts) can be. */
const shapesOf = (words: Words): readonly (readonly Tree[])[] => {
  const shapes = new Map<string, readonly Tree[]>();
  for (const saying of everyExpected()) {
    for (const form of ['long', 'short'] as const) {
      const parts = partsOf(words.say(saying, form));
      const shape = `${saying.kind} ${'what' in saying ? saying.what : ''} ${form} ${parts.length}`;
      const slots = shapes.get(shape) ?? parts.map(newTree);
      shapes.set(shape, slots);
      for (const [i, clips] of parts.entries()) {
        const slot = slots[i];
        if (slot) addTo(slot, plainWords(clips.join(' ')));
      }
    }
  }
  return [...shapes.values()];
};

/**
 * A finite-state grammar in the recogniser's own format: a call of one shape is any of its first parts, then any of its
 * second … All shapes are equally likely, and within one all words that may follow. (The same as JSGF, but without the
 * empty steps that make the recogniser twenty times slower.)
 */
const grammarOfShapes = (shapes: readonly (readonly Tree[])[]): string => {
  const make = stateMaker();
  const end = make(true, []);
  const follow = (tree: Tree, then: State): State => {
    const own = [...tree.branches].map(([word, next]) => [word, follow(next, then)] as const);
    return tree.ends ? make(then.ends, [...own, ...then.arcs]) : make(false, own);
  };
  const roots = shapes.map((slots) => slots.reduceRight((then, slot) => follow(slot, then), end));
  const starts = roots.flatMap((root) =>
    root.arcs.map(([word, next]) => ({ word, next, chance: 1 / (roots.length * root.arcs.length) })),
  );
  const reached = new Set<State>(starts.map(({ next }) => next));
  for (const state of reached) for (const [, next] of state.arcs) reached.add(next);
  const numbers = new Map([...reached].map((state, i) => [state, i + 1] as const));
  const last = numbers.size + 1;
  const arc = (from: number, to: number, chance: number, word: string): string =>
    `TRANSITION ${from} ${to} ${chance.toFixed(6)} ${word}`;
  const lines = [
    ...starts.map(({ word, next, chance }) => arc(0, numbers.get(next) ?? last, chance, word)),
    ...[...numbers].flatMap(([state, number]) => {
      const chance = 1 / (state.arcs.length + (state.ends ? 1 : 0));
      return [
        ...state.arcs.map(([word, next]) => arc(number, numbers.get(next) ?? last, chance, word)),
        ...(state.ends ? [arc(number, last, chance, '')] : []),
      ];
    }),
  ];
  return `FSG_BEGIN calls\nNUM_STATES ${last + 1}\nSTART_STATE 0\nFINAL_STATE ${last}\n${lines.join('\n')}\nFSG_END\n`;
};

/** Everything that a runner may hear. */
export const grammarOf = (words: Words): string => grammarOfShapes(shapesOf(words));

/** Just these texts, one of them at a time. */
export const grammarOfTexts = (texts: readonly string[]): string => {
  const tree = newTree();
  for (const text of texts) addTo(tree, plainWords(text));
  return grammarOfShapes([[tree]]);
};
