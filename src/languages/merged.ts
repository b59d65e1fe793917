import type { Catalogue } from './text.ts';

/** The parts of a language's texts, as the modules of a folder, in one. */
export const merged = (parts: Readonly<Record<string, Readonly<Record<string, Catalogue>>>>): Catalogue =>
  Object.fromEntries(
    Object.values(parts)
      .flatMap((part) => Object.values(part))
      .flatMap((texts) => Object.entries(texts)),
  );
