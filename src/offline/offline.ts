import { computed, type ReadonlySignal, signal } from '@preact/signals';

/**
 * `absent`: this browser keeps nothing for later. `fetching`: on its way. `stored`: the page, its script and the voice are
 * on the device, and nobody has asked for the voice yet. `ready`: it is decoded as well. `failed`: something could not be
 * had; reload with a network.
 */
export type OfflineState = 'absent' | 'fetching' | 'stored' | 'ready' | 'failed';

export interface Offline {
  readonly state: ReadonlySignal<OfflineState>;
  /** A newer version lies on the device and waits. */
  readonly updateWaits: ReadonlySignal<boolean>;
  /** Takes the newer version, which loads the page anew. Does nothing during a run. */
  readonly update: () => void;
  /** Looks for a newer version, unless a run is on. */
  readonly look: () => void;
}

export interface OfflineParts {
  readonly workers: Pick<ServiceWorkerContainer, 'register' | 'addEventListener'> | undefined;
  readonly caches: Pick<CacheStorage, 'match'> | undefined;
  /** What must lie on the device before anything is called ready, as paths. */
  readonly needed: readonly string[];
  readonly voiceDecoded: ReadonlySignal<boolean>;
  /** The voice is on the device, and is decoded when it is asked for. */
  readonly voiceRests: ReadonlySignal<boolean>;
  readonly runIsOn: () => boolean;
  readonly reload: () => void;
  /** When to begin: storing some sixty files should not hold up the first picture. */
  readonly begin?: (run: () => void) => void;
}

const WORKER = '/sw.js';

/** Registers the service worker. It waits when it is new: a page never changes under a runner. */
export const createOffline = (parts: OfflineParts): Offline => {
  const { workers, caches } = parts;
  const cached = signal<OfflineState>(workers === undefined || caches === undefined ? 'absent' : 'fetching');
  const updateWaits = signal(false);
  let registration: ServiceWorkerRegistration | null = null;
  let asked = false;

  /** What a browser says of a cache it may have thrown away is worth a look. */
  const check = async (): Promise<void> => {
    const found = await Promise.all(
      parts.needed.map((path) => caches?.match(path, { ignoreSearch: true, ignoreVary: true })),
    );
    cached.value = found.every((response) => response !== undefined) ? 'ready' : 'failed';
  };

  const follow = (worker: ServiceWorker | null, isFirst: boolean): void => {
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed' && !isFirst) updateWaits.value = true;
      if (worker.state === 'activated') void check();
      // Activated workers end so as well, when a newer one takes over.
      if (worker.state === 'redundant' && isFirst && cached.value === 'fetching') cached.value = 'failed';
    });
  };

  const begin = async (): Promise<void> => {
    if (workers === undefined || caches === undefined) return;
    try {
      registration = await workers.register(WORKER);
      const { installing, waiting, active } = registration;
      updateWaits.value = waiting !== null && active !== null;
      follow(installing, active === null);
      registration.addEventListener('updatefound', () =>
        follow(registration?.installing ?? null, registration?.active == null),
      );
      if (active !== null) await check();
    } catch {
      cached.value = 'failed';
    }
  };

  workers?.addEventListener('controllerchange', () => {
    if (asked && !parts.runIsOn()) parts.reload();
  });
  (parts.begin ?? ((run) => run()))(() => void begin());

  return {
    state: computed(() => {
      if (cached.value !== 'ready' || parts.voiceDecoded.value) return cached.value;
      return parts.voiceRests.value ? 'stored' : 'fetching';
    }),
    updateWaits,
    update: () => {
      if (parts.runIsOn()) return;
      asked = true;
      registration?.waiting?.postMessage({ type: 'SKIP_WAITING' });
    },
    look: () => {
      if (!parts.runIsOn()) registration?.update().catch(() => {});
    },
  };
};
