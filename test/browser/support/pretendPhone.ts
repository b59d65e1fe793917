import type { BrowserContext, Page } from 'playwright-core';

/** What a test may do to a page's phone, on the page's window. Set in before the page's own scripts. */
interface Phone {
  readonly hide: () => void;
  readonly show: () => void;
  /** Moves the wall clock, not the monotonic one. */
  readonly setClock: (byMs: number) => void;
  /** No room for any write from here on, or room again. */
  readonly fill: (full: boolean) => void;
  /** What a phone call does to the sound, and its end. */
  readonly ring: (on: boolean) => void;
}

const install = (): void => {
  let visibility: DocumentVisibilityState = 'visible';
  Object.defineProperty(document, 'visibilityState', { get: () => visibility });
  const become = (next: DocumentVisibilityState): void => {
    visibility = next;
    document.dispatchEvent(new Event('visibilitychange'));
  };
  const wallNow = Date.now.bind(Date);
  let byMs = 0;
  Date.now = () => wallNow() + byMs;
  let full = false;
  const { add } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.add = function (...given: Parameters<typeof add>) {
    if (full) throw new DOMException('no room', 'QuotaExceededError');
    return add.apply(this, given);
  };
  const contexts: AudioContext[] = [];
  const { resume } = AudioContext.prototype;
  let ringing = false;
  AudioContext.prototype.resume = function () {
    if (!contexts.includes(this)) contexts.push(this);
    // As during a call: asking for the sound is refused.
    return ringing ? Promise.reject(new DOMException('interrupted', 'InvalidStateError')) : resume.call(this);
  };
  const phone: Phone = {
    hide: () => become('hidden'),
    show: () => become('visible'),
    setClock: (ms) => {
      byMs += ms;
    },
    fill: (on) => {
      full = on;
    },
    ring: (on) => {
      ringing = on;
      const howler = (window as unknown as { Howler?: { ctx?: AudioContext } }).Howler;
      const all = new Set([...contexts, ...(howler?.ctx ? [howler.ctx] : [])]);
      for (const context of all) if (on) void context.suspend();
    },
  };
  Object.assign(window, { phone });
};

export const pretendPhone = (context: BrowserContext): Promise<unknown> => context.addInitScript(install);

export const phoneOf = (page: Page) => ({
  hide: () => page.evaluate(() => (window as unknown as { phone: Phone }).phone.hide()),
  show: () => page.evaluate(() => (window as unknown as { phone: Phone }).phone.show()),
  setClock: (byMs: number) =>
    page.evaluate((ms) => (window as unknown as { phone: Phone }).phone.setClock(ms), byMs),
  fill: (full: boolean) =>
    page.evaluate((on) => (window as unknown as { phone: Phone }).phone.fill(on), full),
  ring: (on: boolean) => page.evaluate((now) => (window as unknown as { phone: Phone }).phone.ring(now), on),
});
