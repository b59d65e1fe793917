import { signal } from '@preact/signals';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { Leg, PracticePlan } from '../../../src/core/plan/practicePlan.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import { spoken } from '../../../src/languages/en/spoken.ts';
import { type AloudModel, createAloudModel } from '../../../src/session/aloud/aloudModel.ts';
import { bytesOf } from '../../voice/file/shipped.ts';

const untilPressed: Leg = {
  kind: 'easy',
  extent: { by: 'press' },
  target: { by: 'free' },
  rampS: 0,
  rep: null,
  heartMostBpm: null,
  take: [],
};
const session: PracticePlan = {
  version: 1,
  kind: 'practice',
  name: 'As long as I like',
  unit: 'km',
  place: 'road',
  penClosesMs: null,
  legs: [untilPressed],
};

/** What was asked of the voice's sound. */
const said: string[] = [];
const modelOf = (): AloudModel =>
  createAloudModel({
    plan: { plan: signal(demoPlan), course: signal(null) },
    session: signal(session),
    spoken: signal(spoken),
    speaker: {
      wake: async () => true,
      say: ({ text }) => {
        said.push(text);
        return 'scheduled';
      },
      hush: () => said.push('hush'),
    },
    time: { nowMs: () => 0, every: () => () => undefined },
  });

/** Serves the shipped sounds, as the page's own host does. */
const served = (asked: string[] = []): string[] => {
  vi.stubGlobal('fetch', async (address: string) => {
    asked.push(address);
    return new Response(new Uint8Array(bytesOf(address.replace('/voice/', ''))));
  });
  return asked;
};
afterEach(() => void vi.unstubAllGlobals());

describe('the sound file on the page', () => {
  test('says before what it will be: within three per cent of its bytes, and its length to the second', async () => {
    served();
    const model = modelOf();
    const sheet = model.sheet.value;
    if (!sheet.ok) throw new Error(sheet.error.text);
    const file = await model.mp3();
    expect(Math.abs((file?.size ?? 0) / sheet.value.aboutBytes - 1)).toBeLessThan(0.03);
    expect(model.state.value).toBe('made');
    const text = await model.vtt();
    expect(text).toMatch(/^WEBVTT\n/);
    expect(text?.match(/-->/g)?.length).toBe(sheet.value.lines.length);
  });

  test('follows the choices', async () => {
    const asked = served();
    const model = modelOf();
    const lengthS = (): number => (model.sheet.value.ok ? model.sheet.value.value.lengthS : 0);
    const before = lengthS();
    model.leadS.value = 60;
    expect(lengthS()).toBeCloseTo(before + 50, 6);
    model.loudness.value = 'loud';
    await model.mp3();
    expect(asked).toEqual([`/voice/${spoken.pack.variants.loud.file}`, '/voice/tones.mp3']);
  });

  test('says why a session cannot be told by the clock', async () => {
    const asked = served();
    const model = modelOf();
    model.source.value = 'session';
    expect(model.sheet.value).toMatchObject({
      ok: false,
      error: { text: expect.stringContaining('no clock') },
    });
    expect(await model.mp3()).toBeNull();
    expect(asked).toEqual([]);
  });

  test('says that the voice could not be had, and makes the file when it can', async () => {
    vi.stubGlobal('fetch', async () => new Response(null, { status: 504 }));
    const model = modelOf();
    expect(await model.mp3()).toBeNull();
    expect(model.trouble.value?.text).toContain('could not be loaded');
    expect(model.state.value).toBe('idle');
    served();
    expect(await model.mp3()).toBeInstanceOf(Blob);
    expect(model.trouble.value).toBeNull();
  });

  test('lets one line be heard in place of the one before', async () => {
    const model = modelOf();
    const [line] = model.sheet.value.ok ? model.sheet.value.value.lines.slice(3) : [];
    if (line === undefined) throw new Error('no line');
    said.length = 0;
    await model.listen(line);
    expect(said).toEqual(['hush', line.text]);
  });
});
