import { type ReadonlySignal, signal } from '@preact/signals';

/** Whether the screen is kept on, as far as it can be known. `video`: by the fallback, which only seems to work. */
export type ScreenLockState = 'off' | 'held' | 'video' | 'refused';

export interface ScreenLock {
  readonly state: ReadonlySignal<ScreenLockState>;
  /** To be called in a touch: the fallback's video needs one. */
  readonly hold: () => Promise<void>;
  readonly release: () => void;
  /** The system lets go of the lock when the page is hidden: ask again when it is seen. */
  readonly seenAgain: () => Promise<void>;
}

interface NativeLock {
  readonly request: (type: 'screen') => Promise<WakeLockSentinel>;
}

/** The fallback: a video without a picture that plays. nosleep.js takes it only where there is no native lock. */
interface VideoLock {
  readonly enable: () => Promise<unknown>;
  readonly disable: () => void;
}

/**
 * nosleep.js's video, fetched (from the precache) and made only where there is no native lock: few browsers need it, and
 * it is a good part of a first load.
 */
export const noSleepVideo = (): VideoLock => {
  const made = import('nosleep.js').then(({ default: NoSleep }) => new NoSleep());
  return {
    enable: async () => (await made).enable(),
    disable: () => void made.then((video) => video.disable()),
  };
};

/** @param native navigator.wakeLock; undefined in browsers without it, which then get the video */
export const createScreenLock = (native: NativeLock | undefined, makeVideo: () => VideoLock): ScreenLock => {
  const state = signal<ScreenLockState>('off');
  let wanted = false;
  let sentinel: WakeLockSentinel | null = null;
  let video: VideoLock | null = null;

  const request = async (lock: NativeLock): Promise<void> => {
    if (sentinel !== null && !sentinel.released) return;
    try {
      const got = await lock.request('screen');
      if (!wanted) {
        await got.release();
        return;
      }
      sentinel = got;
      state.value = 'held';
      got.addEventListener('release', () => {
        if (sentinel === got) state.value = wanted ? 'refused' : 'off';
      });
    } catch {
      // Low battery mode, a hidden page, or no permission: the run goes on, and the screen says so.
      state.value = 'refused';
    }
  };

  const play = async (): Promise<void> => {
    video ??= makeVideo();
    try {
      await video.enable();
      state.value = wanted ? 'video' : 'off';
    } catch {
      state.value = 'refused';
    }
  };

  return {
    state,
    hold: async () => {
      wanted = true;
      await (native === undefined ? play() : request(native));
    },
    release: () => {
      wanted = false;
      sentinel?.release().catch(() => {});
      sentinel = null;
      video?.disable();
      state.value = 'off';
    },
    seenAgain: async () => {
      if (wanted && native !== undefined) await request(native);
    },
  };
};
