import { describe, expect, test } from 'vitest';
import type { Input } from '../../../src/core/estimate/input.ts';
import { inputOf, pairSensor } from '../../../src/sensors/bluetooth/bodySensors.ts';
import type { Characteristic, Device, Gatt, LinkState } from '../../../src/sensors/bluetooth/link.ts';

/** A belt that can be out of reach, lose its link and send packets. */
class Belt extends EventTarget implements Device {
  readonly name = 'belt';
  tries = 0;
  inReach = true;
  readonly channel = new (class extends EventTarget implements Characteristic {
    value: DataView = new DataView(new ArrayBuffer(0));
    startNotifications = async (): Promise<Characteristic> => this;
  })();
  readonly gatt: Gatt = {
    connected: false,
    connect: async () => {
      this.tries++;
      if (!this.inReach) throw new Error('out of reach');
      return this.gatt;
    },
    disconnect: () => {},
    getPrimaryService: async () => ({ getCharacteristic: async () => this.channel }),
  };
  send(...bytes: readonly number[]): void {
    this.channel.value = new DataView(Uint8Array.from(bytes).buffer);
    this.channel.dispatchEvent(new Event('characteristicvaluechanged'));
  }
  lose(): void {
    this.dispatchEvent(new Event('gattserverdisconnected'));
  }
}

const settle = async (): Promise<void> => {
  for (let i = 0; i < 8; i++) await Promise.resolve();
};

const pair = async (belt: Belt) => {
  const inputs: Input[] = [];
  const states: LinkState[] = [];
  const waits: { ms: number; then: () => void }[] = [];
  const link = await pairSensor('heart', {
    bluetooth: { requestDevice: async () => belt },
    nowMs: () => 5000,
    after: (ms, then) => {
      waits.push({ ms, then });
      return () => {};
    },
    onInput: (input) => inputs.push(input),
    onState: (_, state) => states.push(state),
  });
  await settle();
  return { link, inputs, states, waits };
};

describe('a heart rate belt', () => {
  test('is heard once it is connected', async () => {
    const belt = new Belt();
    const { inputs, states } = await pair(belt);
    belt.send(0x06, 150);
    expect(states).toEqual(['connecting', 'connected']);
    expect(inputs).toEqual([{ type: 'heart', atMs: 5000, bpm: 150 }]);
  });

  test('is looked for again when it is lost, with growing pauses up to half a minute', async () => {
    const belt = new Belt();
    const { waits, states, inputs } = await pair(belt);
    belt.inReach = false;
    belt.lose();
    for (let i = 0; i < 7; i++) {
      waits.at(-1)?.then();
      await settle();
    }
    expect(waits.map((w) => w.ms)).toEqual([1000, 2000, 4000, 8000, 16_000, 30_000, 30_000, 30_000]);
    belt.inReach = true;
    waits.at(-1)?.then();
    await settle();
    expect(states.at(-1)).toBe('connected');
    belt.send(0x06, 151);
    expect(inputs).toHaveLength(1);
  });

  test('is left alone when it is put away', async () => {
    const belt = new Belt();
    const { link, waits, states } = await pair(belt);
    link?.close();
    belt.lose();
    belt.send(0x06, 150);
    expect(waits).toEqual([]);
    expect(states.at(-1)).toBe('off');
  });

  test('without skin contact has no rate', () => {
    expect(inputOf('heart', new DataView(Uint8Array.of(0x04, 61).buffer), 1)).toEqual({
      type: 'heart',
      atMs: 1,
      bpm: null,
    });
  });
});

test('a runner who chooses no device has none', async () => {
  const got = await pairSensor('footPod', {
    bluetooth: { requestDevice: async () => Promise.reject(new Error('cancelled')) },
    nowMs: () => 0,
    after: () => () => {},
    onInput: () => {},
    onState: () => {},
  });
  expect(got).toBeNull();
});
