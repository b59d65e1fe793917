import type { BrowserContext, Page } from 'playwright-core';

interface HeadsetWindow {
  headset: Map<string, () => void>;
}

/** A headset whose buttons a test presses; before the page is opened. */
export const pretendHeadset = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    const headset: HeadsetWindow['headset'] = new Map();
    Object.assign(window, { headset });
    navigator.mediaSession.setActionHandler = (action, handler) => {
      if (handler === null) headset.delete(action);
      else headset.set(action, handler as () => void);
    };
  });

/** @param action  as the Media Session API names it: three presses arrive as `previoustrack` */
export const pressHeadset = (page: Page, action: MediaSessionAction): Promise<void> =>
  page.evaluate((name) => (window as unknown as HeadsetWindow).headset.get(name)?.(), action);

/** How many of its buttons the page has taken. */
export const buttonsTaken = (page: Page): Promise<number> =>
  page.evaluate(() => (window as unknown as HeadsetWindow).headset.size);
