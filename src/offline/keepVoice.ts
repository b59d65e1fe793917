import { effect, type ReadonlySignal, signal } from '@preact/signals';

/** Where the service worker looks for it too: vite.config.ts. */
const CACHE = 'soundline-voice';

export interface KeepVoiceParts {
  readonly caches: Pick<CacheStorage, 'open'> | undefined;
  /** Path of the sound of the voice in use. */
  readonly path: ReadonlySignal<string>;
  /** Whether every visitor's device stores it anyway. */
  readonly isStored: (path: string) => boolean;
}

/**
 * Stores the sound of the chosen voice for use without a network, and no other one: only English is stored with the page.
 * True when the one in use lies on the device.
 */
export const keepVoice = ({ caches, path, isStored }: KeepVoiceParts): ReadonlySignal<boolean> => {
  const kept = signal(false);
  const keep = async (wanted: string): Promise<boolean> => {
    const cache = await caches?.open(CACHE);
    if (cache === undefined) return false;
    if ((await cache.match(wanted)) === undefined) await cache.add(wanted);
    for (const { url } of await cache.keys()) if (new URL(url).pathname !== wanted) await cache.delete(url);
    return true;
  };
  effect(() => {
    const wanted = path.value;
    kept.value = isStored(wanted);
    if (kept.peek()) return;
    keep(wanted).then(
      (done) => {
        if (path.peek() === wanted) kept.value = done;
      },
      () => {},
    );
  });
  return kept;
};
