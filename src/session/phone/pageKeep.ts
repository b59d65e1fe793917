/** What keeps small things between visits: localStorage, or what stands in for it. */
export type Keep = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** A storage for as long as the page is open. */
const memory = (): Storage => {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (at) => [...kept.keys()][at] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, String(value)),
    removeItem: (key) => void kept.delete(key),
    clear: () => kept.clear(),
  };
};

/**
 * Where small things are kept between visits. A browser that forbids it (cookies blocked, some private windows) throws at
 * the first look, or has none: then they are kept until the page is closed, and the race goes on.
 */
export const pageKeep = (win: { readonly localStorage: Storage | null }): Storage => {
  try {
    return win.localStorage ?? memory();
  } catch {
    return memory();
  }
};

/** A full or forbidden storage must not stop anybody from planning; the export is there for that. */
export const tryKeep = (run: () => void): boolean => {
  try {
    run();
    return true;
  } catch {
    // Nothing is lost but convenience.
    return false;
  }
};

export const getKept = (keep: Keep, key: string): string | null => {
  try {
    return keep.getItem(key);
  } catch {
    return null;
  }
};
