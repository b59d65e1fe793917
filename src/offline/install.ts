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
}

export const watchInstall = (win: Window = window): Install => {
  const canAsk = signal(false);
  let held: InstallPrompt | null = null;
  win.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    held = event as InstallPrompt;
    canAsk.value = true;
  });
  const { navigator } = win;
  return {
    installed:
      win.matchMedia('(display-mode: standalone)').matches ||
      (navigator as { standalone?: boolean }).standalone === true,
    canAsk,
    ask: async () => {
      await held?.prompt();
      held = null;
      canAsk.value = false;
    },
    byHand: 'standalone' in navigator,
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
