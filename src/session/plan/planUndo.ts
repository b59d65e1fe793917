import { effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';

/** Steps that can be taken back. */
const MOST_STEPS = 100;

export interface Undo {
  readonly canUndo: ReadonlySignal<boolean>;
  readonly undo: () => void;
}

/** The one field that differs, or null where it is none or several. */
const changedField = (a: object, b: object): string | null => {
  const keys = Object.keys(b).filter((k) => Reflect.get(a, k) !== Reflect.get(b, k));
  return keys.length === 1 ? (keys[0] ?? null) : null;
};

/** Takes back changes of a form. Letters typed into one text field after each other are one step. */
export const createUndo = <T extends object>(form: Signal<T>): Undo => {
  const canUndo = signal(false);
  const past: T[] = [];
  let last = form.peek();
  let lastField: string | null = null;
  let undoing = false;
  effect(() => {
    const now = form.value;
    if (now === last) return;
    const field = changedField(last, now);
    const isText = field !== null && typeof Reflect.get(now, field) === 'string';
    if (!undoing && !(isText && field === lastField)) past.push(last);
    if (past.length > MOST_STEPS) past.shift();
    lastField = !undoing && isText ? field : null;
    last = now;
    canUndo.value = past.length > 0;
  });
  return {
    canUndo,
    undo: () => {
      const before = past.pop();
      if (before === undefined) return;
      undoing = true;
      form.value = before;
      undoing = false;
    },
  };
};
