import { describe, expect, test } from 'vitest';
import { iosVersion, keepStorage, watchInstall } from '../../src/offline/install.ts';

const IPHONE =
  'Mozilla/5.0 (iPhone; CPU iPhone OS 17_6 like Mac OS X) AppleWebKit/605.1.15 Version/17.6 Mobile/15E148';
const pretendWindow = (standalone: boolean, userAgent: string): Window =>
  Object.assign(new EventTarget(), {
    matchMedia: () => ({ matches: standalone }),
    navigator: { userAgent },
  }) as unknown as Window;

describe('installation', () => {
  test.each([
    [IPHONE, 17.6],
    [IPHONE.replaceAll('17_6', '18_4'), 18.4],
    ['Mozilla/5.0 (Linux; Android 15) Chrome/150.0 Mobile', null],
  ])('reads the version of iOS', (userAgent, version) => {
    expect(iosVersion(userAgent)).toBe(version);
  });

  test('knows the systems whose screen lock does not hold when installed', () => {
    expect(watchInstall(pretendWindow(true, IPHONE)).lockIsWeak).toBe(true);
    expect(watchInstall(pretendWindow(false, IPHONE)).lockIsWeak).toBe(false);
    expect(watchInstall(pretendWindow(true, IPHONE.replaceAll('17_6', '18_4'))).lockIsWeak).toBe(false);
    expect(watchInstall(pretendWindow(true, 'Android')).lockIsWeak).toBe(false);
  });

  test('asks only where the browser lets it, and once', async () => {
    const win = pretendWindow(false, 'Android');
    const install = watchInstall(win);
    expect(install.canAsk.value).toBe(false);
    let asked = 0;
    win.dispatchEvent(
      Object.assign(new Event('beforeinstallprompt'), {
        prompt: async () => {
          asked++;
          return { outcome: 'dismissed' };
        },
      }),
    );
    expect(install.canAsk.value).toBe(true);
    await install.ask();
    await install.ask();
    expect(asked).toBe(1);
    expect(install.canAsk.value).toBe(false);
  });
});

describe('storage', () => {
  const storage = (persisted: boolean, granted: boolean) =>
    ({ persisted: async () => persisted, persist: async () => granted }) as unknown as StorageManager;

  test('is asked to be kept, and what the browser says is passed on', async () => {
    expect(await keepStorage(storage(false, true))).toBe(true);
    expect(await keepStorage(storage(false, false))).toBe(false);
    expect(await keepStorage(storage(true, false))).toBe(true);
    expect(await keepStorage(undefined)).toBeNull();
  });
});
