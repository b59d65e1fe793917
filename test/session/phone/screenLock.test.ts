import { describe, expect, test } from 'vitest';
import { createScreenLock } from '../../../src/session/phone/screenLock.ts';

const nativeRig = () => {
  let refuse = false;
  const sentinels: (EventTarget & { released: boolean; release: () => Promise<void> })[] = [];
  const native = {
    request: async () => {
      if (refuse) throw new DOMException('battery low', 'NotAllowedError');
      const target = new EventTarget();
      const sentinel = Object.assign(target, {
        released: false,
        type: 'screen' as const,
        onrelease: null,
        release: async () => {
          sentinel.released = true;
          target.dispatchEvent(new Event('release'));
        },
      });
      sentinels.push(sentinel);
      return sentinel as unknown as WakeLockSentinel;
    },
  };
  return {
    sentinels,
    refuseFromNow: () => {
      refuse = true;
    },
    lock: createScreenLock(native, () => {
      throw new Error('no video where there is a lock');
    }),
  };
};

describe('the screen lock', () => {
  test('says held only while it is', async () => {
    const { lock, sentinels } = nativeRig();
    expect(lock.state.value).toBe('off');
    await lock.hold();
    expect(lock.state.value).toBe('held');
    await sentinels[0]?.release();
    expect(lock.state.value).toBe('refused');
  });

  test('is asked for again when the page is seen again, once', async () => {
    const { lock, sentinels } = nativeRig();
    await lock.hold();
    await sentinels[0]?.release();
    await lock.seenAgain();
    await lock.seenAgain();
    expect(sentinels).toHaveLength(2);
    expect(lock.state.value).toBe('held');
  });

  test('is not asked for again after it was given back', async () => {
    const { lock, sentinels } = nativeRig();
    await lock.hold();
    lock.release();
    await lock.seenAgain();
    expect(sentinels).toHaveLength(1);
    expect(sentinels[0]?.released).toBe(true);
    expect(lock.state.value).toBe('off');
  });

  test('says refused where the system refuses, and nothing is thrown', async () => {
    const { lock, refuseFromNow } = nativeRig();
    refuseFromNow();
    await lock.hold();
    expect(lock.state.value).toBe('refused');
  });

  test('leaves no lock behind that was granted after it was given back', async () => {
    const { lock, sentinels } = nativeRig();
    const holding = lock.hold();
    lock.release();
    await holding;
    expect(sentinels.every((s) => s.released)).toBe(true);
    expect(lock.state.value).toBe('off');
  });

  test('falls back to a video only without a native lock', async () => {
    const calls: string[] = [];
    const lock = createScreenLock(undefined, () => ({
      enable: async () => calls.push('play'),
      disable: () => calls.push('pause'),
    }));
    await lock.hold();
    expect(lock.state.value).toBe('video');
    lock.release();
    expect(calls).toEqual(['play', 'pause']);
  });

  test('says so where even the video is refused', async () => {
    const lock = createScreenLock(undefined, () => ({
      enable: () => Promise.reject(new Error('no touch')),
      disable: () => {},
    }));
    await lock.hold();
    expect(lock.state.value).toBe('refused');
  });
});
