import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { keepVoice } from '../../src/offline/keepVoice.ts';

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 5));

/** A cache of addresses alone. */
const cachesWith = (stored: Set<string>, hasNetwork = true) => ({
  open: async () =>
    ({
      match: async (path: string) => (stored.has(path) ? {} : undefined),
      add: async (path: string) => {
        if (!hasNetwork) throw new TypeError('no network');
        stored.add(path);
      },
      keys: async () => [...stored].map((path) => ({ url: `https://here.example${path}` })),
      delete: async (url: string) => stored.delete(new URL(url).pathname),
    }) as unknown as Cache,
});

const isStored = (path: string): boolean => path === '/voice/en.mp3';

describe('the sound of the voice in use', () => {
  it('is stored, and no other one', async () => {
    const stored = new Set(['/voice/de-00000000.mp3', '/voice/fr-00000000.mp3']);
    const path = signal('/voice/de-11111111.mp3');
    const kept = keepVoice({ caches: cachesWith(stored), path, isStored });
    expect(kept.value).toBe(false);
    await settled();
    expect([kept.value, [...stored]]).toEqual([true, ['/voice/de-11111111.mp3']]);
    path.value = '/voice/fr-22222222.mp3';
    expect(kept.value).toBe(false);
    await settled();
    expect([kept.value, [...stored]]).toEqual([true, ['/voice/fr-22222222.mp3']]);
  });

  it('is there at once where it comes with the page', () => {
    const kept = keepVoice({ caches: undefined, path: signal('/voice/en.mp3'), isStored });
    expect(kept.value).toBe(true);
  });

  it('is not said to be stored where it could not be had', async () => {
    const stored = new Set<string>();
    const path = signal('/voice/de-11111111.mp3');
    const kept = keepVoice({ caches: cachesWith(stored, false), path, isStored });
    await settled();
    expect(kept.value).toBe(false);
  });
});
