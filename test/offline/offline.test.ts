import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import { createOffline } from '../../src/offline/offline.ts';

const settle = () => new Promise((done) => setTimeout(done, 0));

/** A browser's worker door, with an active worker and perhaps one that waits. */
const rig = (part: { cached: readonly string[]; waiting?: boolean; fails?: boolean; runIsOn?: boolean }) => {
  const posted: unknown[] = [];
  let looked = 0;
  let reloads = 0;
  const decoded = signal(false);
  const rests = signal(false);
  const changed: (() => void)[] = [];
  const registration = Object.assign(new EventTarget(), {
    installing: null,
    waiting: part.waiting ? { postMessage: (m: unknown) => posted.push(m) } : null,
    active: {},
    update: async () => {
      looked++;
    },
  });
  const offline = createOffline({
    workers: {
      register: async () => {
        if (part.fails) throw new TypeError('no');
        return registration as unknown as ServiceWorkerRegistration;
      },
      addEventListener: ((_type: string, run: () => void) => changed.push(run)) as never,
    },
    caches: {
      match: async (path) => (part.cached.includes(String(path)) ? new Response('') : undefined),
    },
    needed: ['/index.html', '/voice/en.mp3'],
    voiceDecoded: decoded,
    voiceRests: rests,
    runIsOn: () => part.runIsOn ?? false,
    reload: () => {
      reloads++;
    },
  });
  return {
    offline,
    decoded,
    rests,
    posted,
    takeOver: () => {
      for (const run of changed) run();
    },
    counts: () => ({ looked, reloads }),
  };
};
const ALL = ['/index.html', '/voice/en.mp3'];

describe('ready offline', () => {
  test('is said only when all is stored and the voice is decoded', async () => {
    const { offline, decoded } = rig({ cached: ALL });
    await settle();
    expect(offline.state.value).toBe('fetching');
    decoded.value = true;
    expect(offline.state.value).toBe('ready');
  });

  test('is not said of a voice that nobody has asked for yet: that is stored', async () => {
    const { offline, rests, decoded } = rig({ cached: ALL });
    rests.value = true;
    expect(offline.state.value).toBe('fetching');
    await settle();
    expect(offline.state.value).toBe('stored');
    rests.value = false;
    expect(offline.state.value).toBe('fetching');
    decoded.value = true;
    expect(offline.state.value).toBe('ready');
  });

  test('is not said where the browser has thrown something away', async () => {
    const { offline, decoded } = rig({ cached: ['/index.html'] });
    decoded.value = true;
    await settle();
    expect(offline.state.value).toBe('failed');
  });

  test('is not said where no worker can be had', async () => {
    const { offline } = rig({ cached: ALL, fails: true });
    await settle();
    expect(offline.state.value).toBe('failed');
  });
});

describe('a newer version', () => {
  test('waits for the runner, and loads the page anew when it has taken over', async () => {
    const { offline, posted, takeOver, counts } = rig({ cached: ALL, waiting: true });
    await settle();
    expect(offline.updateWaits.value).toBe(true);
    takeOver();
    expect(counts().reloads).toBe(0);
    offline.update();
    expect(posted).toEqual([{ type: 'SKIP_WAITING' }]);
    takeOver();
    expect(counts().reloads).toBe(1);
  });

  test('is neither looked for nor taken nor loaded in a run', async () => {
    const { offline, posted, takeOver, counts } = rig({ cached: ALL, waiting: true, runIsOn: true });
    await settle();
    offline.look();
    offline.update();
    takeOver();
    expect(posted).toEqual([]);
    expect(counts()).toEqual({ looked: 0, reloads: 0 });
  });
});
