import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { warmOutput } from '../../../src/voice/device/warmOutput.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const devices = (enumerateDevices: () => Promise<never[]>): Pick<Navigator, 'mediaDevices'> => ({
  mediaDevices: { enumerateDevices } as unknown as MediaDevices,
});

test('is over with the answer, with a refusal, and without either', async () => {
  const asked = vi.fn(async () => []);
  await warmOutput(devices(asked));
  expect(asked).toHaveBeenCalledTimes(1);
  await warmOutput(devices(() => Promise.reject(new DOMException('no', 'NotAllowedError'))));
  let over = false;
  void warmOutput(devices(() => new Promise(() => {}))).then(() => {
    over = true;
  });
  await vi.advanceTimersByTimeAsync(500);
  expect(over).toBe(false);
  await vi.advanceTimersByTimeAsync(600);
  expect(over).toBe(true);
});

test('a page outside a secure context has no list of devices, and is not kept waiting for it', async () => {
  let over = false;
  void warmOutput({} as Navigator).then(() => {
    over = true;
  });
  await vi.advanceTimersByTimeAsync(1);
  expect(over).toBe(true);
});
