import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Utterance } from '../../../src/core/cues/voicePort.ts';
import type { AudioClock } from '../../../src/voice/device/audioClock.ts';
import type { Output } from '../../../src/voice/device/howlerDevice.ts';
import { createSounding } from '../../../src/voice/device/sounding.ts';

/** A device that writes down what it is told. */
const device = () => {
  const started: number[] = [];
  let stopped = 0;
  class Source {
    connect(): void {}
    start(atS: number): void {
      started.push(atS);
    }
    stop(): void {
      stopped++;
    }
  }
  vi.stubGlobal('AudioBufferSourceNode', Source);
  let nowS = 0;
  const clock: AudioClock = {
    nowS: () => nowS,
    plainTimeS: (ms) => ms / 1000,
    contextTimeS: (ms) => ms / 1000,
  };
  const sprite = { duration: 1 } as AudioBuffer;
  const store = {
    pack: { language: 'en', sampleRateHz: 1000, clips: { one: [0, 500] } },
    sprite,
    shiftS: 0,
    tone: () => sprite,
  } as unknown as Parameters<ReturnType<typeof createSounding>['set']>[0];
  const sounding = createSounding();
  const utterance: Utterance = {
    text: 'one',
    durationS: 2,
    parts: [{ sound: { tone: 'marker' }, offsetS: 0 }] as unknown as Utterance['parts'],
  };
  return {
    started,
    stopped: () => stopped,
    at: (s: number) => {
      nowS = s;
    },
    say: (atS: number, latestS: number) =>
      sounding.set(store, {} as Output, () => clock, {
        utterance,
        atPageMs: 1000 * atS,
        latestPageMs: 1000 * latestS,
      }),
    stop: sounding.stop,
  };
};

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('what is set to sound', () => {
  let its: ReturnType<typeof device>;
  beforeEach(() => {
    its = device();
  });

  test('begins at its time, and after the one before it where that is not over', () => {
    its.say(10, 12);
    its.say(11, 15);
    expect(its.started).toEqual([10, 12]);
  });

  test('is late, and not set, where its turn comes after its time', () => {
    its.say(10, 12);
    expect(its.say(10, 11)).toBe('late');
    expect(its.started).toEqual([10]);
  });

  test('can be taken back as long as it has not begun, and stopped at any time', () => {
    its.say(10, 12);
    its.say(20, 22);
    its.at(11);
    its.stop(11);
    expect(its.stopped()).toBe(1);
    its.stop();
    expect(its.stopped()).toBe(2);
    // The way is free again.
    its.say(12, 13);
    expect(its.started.at(-1)).toBe(12);
  });

  test('is let go of when it was said: a thousand calls leave the last alone', () => {
    for (let call = 0; call < 1000; call++) {
      its.at(90 * call);
      its.say(90 * call + 1, 90 * call + 2);
    }
    its.stop();
    expect(its.stopped()).toBe(1);
  });
});
