import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import type { Call } from '../../../src/core/cues/call.ts';
import { message } from '../../../src/core/units/message.ts';
import { createSayAfter } from '../../../src/session/ear/sayAfter.ts';
import { watchSound } from '../../../src/session/ear/soundGap.ts';
import type { SpeakerState } from '../../../src/voice/device/speaker.ts';
import { pretendTime } from '../pretend.ts';

const callAt = (id: number, startMs: number, trueForMs: number): Call => ({
  id,
  saying: {
    kind: 'checkpoint',
    place: { name: 'halfway' },
    timeS: 3120,
    ahead: { side: 'even', seconds: 0, sure: true },
  },
  form: 'short',
  utterance: { text: `call ${id}`, parts: [], durationS: 2 },
  decidedMs: startMs - 500,
  startMs,
  endMs: startMs + 2000,
  expiresMs: startMs + trueForMs,
  atM: null,
  aheadS: null,
  aheadSdS: null,
  distanceM: null,
  why: message('crossing||of a checkpoint'),
});

const rig = () => {
  const time = pretendTime();
  let there = true;
  const said: string[] = [];
  const mouth = createSayAfter({
    ear: {
      say: (utterance, _atMs, latestMs) => {
        if (!there) return 'silent';
        if (latestMs < time.nowMs()) return 'late';
        said.push(utterance.text);
        return 'scheduled';
      },
      takeBack: () => {},
      hush: () => {},
    },
    clock: { nowMs: time.nowMs, pageMs: (ms) => ms },
  });
  return {
    time,
    said,
    mouth,
    /** A phone call takes the sound: found a little later. */
    ring: () => {
      there = false;
      time.pass(600);
      mouth.lost();
    },
    hangUp: () => {
      there = true;
      mouth.back();
    },
    say: (id: number, trueForMs: number) => mouth.say(callAt(id, time.nowMs() + 500, trueForMs)),
  };
};

describe('a call during a phone call', () => {
  test('is said after it when it is still true, once', () => {
    const { time, said, mouth, ring, hangUp, say } = rig();
    ring();
    say(1, 120_000);
    time.pass(40_000);
    expect(said).toEqual([]);
    hangUp();
    expect(said).toEqual(['call 1']);
    expect(mouth.heard.get(1)).toBe('scheduled');
    ring();
    hangUp();
    expect(said).toEqual(['call 1', 'call 1']);
    time.pass(10_000);
    ring();
    hangUp();
    expect(said).toHaveLength(2);
  });

  test('is dropped when it is stale', () => {
    const { time, said, mouth, ring, hangUp, say } = rig();
    ring();
    say(1, 20_000);
    say(2, 60_000);
    time.pass(40_000);
    hangUp();
    expect(said).toEqual(['call 2']);
    expect(mouth.heard.get(1)).toBe('silent');
  });

  test('that cuts another one off has it said again, if it is still true', () => {
    const { time, said, ring, hangUp, say } = rig();
    say(1, 120_000);
    time.pass(1500);
    ring();
    time.pass(20_000);
    hangUp();
    expect(said).toEqual(['call 1', 'call 1']);
  });

  test('leaves alone what was heard out before it', () => {
    const { time, said, ring, hangUp, say } = rig();
    say(1, 120_000);
    time.pass(8000);
    ring();
    time.pass(20_000);
    hangUp();
    expect(said).toEqual(['call 1']);
  });
});

test('the sound that goes and comes is told each time, before the runner is told', async () => {
  const time = pretendTime();
  const state = signal<SpeakerState>('ready');
  const told: (boolean | string)[] = [];
  watchSound(
    state,
    time,
    false,
    (what) => told.push(what),
    (isThere) => told.push(isThere),
  );
  const settle = () => new Promise((done) => setTimeout(done, 0));
  state.value = 'asleep';
  await settle();
  time.pass(45_000);
  state.value = 'ready';
  await settle();
  state.value = 'asleep';
  await settle();
  time.pass(1000);
  state.value = 'ready';
  await settle();
  expect(told).toEqual([false, true, 'soundBack', false, true]);
});
