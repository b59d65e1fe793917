import { type ReadonlySignal, signal } from '@preact/signals';

/** Chromium's own event, in no standard: the page may ask to be installed. */
interface InstallPrompt extends Event {
  readonly prompt: () => Promise<{ readonly outcome: 'accepted' | 'dismissed' }>;
}

export interface Install {
  /** Runs as an installed app, in a window of its own. */
  readonly installed: boolean;
  /** The browser lets the page ask. */
  readonly canAsk: ReadonlySignal<boolean>;
  /** To be called in a touch. */
  readonly ask: () => Promise<void>;
  /** iPhones and iPads are asked by hand, and there an installed app has a storage of its own. */
  readonly byHand: boolean;
  /** Installed on an iPhone whose screen goes dark all the same: iOS 16.4 to 18.3 grant a screen lock there and ignore it. */
  readonly lockIsWeak: boolean;
}

/** WebKit bug 254545: from here on the lock holds in installed apps too. */
const LOCK_HOLDS_FROM = 18.4;

/** The version of iOS that a browser states; null on anything else. */
export const iosVersion = (userAgent: string): number | null => {
  const found = /(?:iPhone|iPad|iPod).* OS (\d+)_(\d+)/.exec(userAgent);
  return found === null ? null : Number(`${found[1]}.${found[2]}`);
};

export const watchInstall = (win: Window = window): Install => {
  const canAsk = signal(false);
  let held: InstallPrompt | null = null;
  win.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    held = event as InstallPrompt;
    canAsk.value = true;
  });
  const { navigator } = win;
  const installed =
    win.matchMedia('(display-mode: standalone)').matches ||
    (navigator as { standalone?: boolean }).standalone === true;
  return {
    installed,
    canAsk,
    ask: async () => {
      await held?.prompt();
      held = null;
      canAsk.value = false;
    },
    byHand: 'standalone' in navigator,
    lockIsWeak: installed && (iosVersion(navigator.userAgent) ?? Number.POSITIVE_INFINITY) < LOCK_HOLDS_FROM,
  };
};

/** Whether the browser has promised to keep what is stored: asked for, where that can be. */
export const keepStorage = async (storage: StorageManager | undefined): Promise<boolean | null> => {
  if (storage?.persist === undefined) return null;
  try {
    return (await storage.persisted()) || (await storage.persist());
  } catch {
    return null;
  }
};
