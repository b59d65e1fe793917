import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { withLanguage } from '../../../src/core/plan/planLanguage.ts';
import { spoken as german } from '../../../src/languages/de/spoken.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { spoken as french } from '../../../src/languages/fr/spoken.ts';
import type { Spoken } from '../../../src/languages/spoken.ts';
import { createVoices, languageUnderWay } from '../../../src/session/ear/voices.ts';
import type { Pack } from '../../../src/voice/packs/pack.ts';

const KNOWN: Readonly<Record<string, Spoken>> = { de: german, fr: french };
const SAYING = { kind: 'start', goalS: 6240, pace: { sPerUnit: 296, unit: 'km' } } as const;
const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 5));

const setUp = (
  tag: string,
  more: { underWay?: string | null; lost?: readonly string[]; loud?: boolean } = {},
) => {
  const used: string[] = [];
  const urls: string[] = [];
  const loud = signal(more.loud ?? false);
  const chosen = signal(tag);
  const voices = createVoices({
    english,
    fetch: (wanted) => {
      const spoken = KNOWN[wanted];
      return spoken === undefined ? null : Promise.resolve(spoken);
    },
    speaker: () => ({
      use: async (pack: Pack, url: string) => {
        used.push(pack.language);
        urls.push(url);
        return !(more.lost ?? []).some((lost) => lost === pack.language || url.startsWith(lost));
      },
    }),
    urlOf: ({ pack }, isLoud) => pack.variants[isLoud ? 'loud' : 'normal'].file,
    chosen,
    loud,
    underWay: Promise.resolve(more.underWay ?? null),
  });
  return { voices, chosen, loud, used, urls, said: () => voices.voice.utter(SAYING, 'short').text };
};

describe('the loud voice', () => {
  it('is loaded where it was chosen, and is the sound in use once it is there', async () => {
    const { voices, urls } = setUp('de', { loud: true });
    await voices.first;
    await settled();
    expect(urls).toEqual([german.pack.variants.loud.file]);
    expect(voices.isLoud.value).toBe(true);
  });

  it('follows the choice, but not in mid-run', async () => {
    const { voices, loud, urls } = setUp('en');
    const busy = signal(true);
    await voices.first;
    voices.follow(busy);
    await settled();
    loud.value = true;
    await settled();
    expect(voices.isLoud.value).toBe(false);
    busy.value = false;
    await settled();
    expect(urls.at(-1)).toBe(english.pack.variants.loud.file);
    expect(voices.isLoud.value).toBe(true);
    loud.value = false;
    await settled();
    expect(urls.at(-1)).toBe(english.pack.variants.normal.file);
  });

  it('gives way to the usual one where it cannot be had', async () => {
    const { voices, urls } = setUp('en', { loud: true, lost: ['en-loud'] });
    await voices.first;
    await settled();
    expect(urls.at(-1)).toBe(english.pack.variants.normal.file);
    expect(voices.isLoud.value).toBe(false);
    expect(voices.state.value).toBe('here');
  });
});

describe('the voice', () => {
  it('begins in the chosen language, and loads no other', async () => {
    const { voices, used, said } = setUp('de');
    await voices.first;
    await settled();
    expect(said()).toBe('Die Uhr läuft.');
    expect(voices.state.value).toBe('here');
    expect(used).toEqual(['de']);
  });

  it('goes on in the language of a run under way, whatever is chosen, and follows the choice after it', async () => {
    const { voices, said } = setUp('fr', { underWay: 'de' });
    await voices.first;
    const busy = signal(true);
    voices.follow(busy);
    await settled();
    expect(said()).toBe('Die Uhr läuft.');
    busy.value = false;
    await settled();
    expect(said()).toBe('Le chrono tourne.');
  });

  it('does not change in mid-run', async () => {
    const { voices, chosen, said } = setUp('en');
    const busy = signal(false);
    await voices.first;
    voices.follow(busy);
    await settled();
    busy.value = true;
    chosen.value = 'de';
    await settled();
    expect(said()).toBe('Clock running.');
    busy.value = false;
    await settled();
    expect(said()).toBe('Die Uhr läuft.');
  });

  it('is English where a language has no voice, and says so', async () => {
    const { voices, said } = setUp('nl');
    await voices.first;
    await settled();
    expect([voices.state.value, said()]).toEqual(['none', 'Clock running.']);
  });

  it('is English, words and sound, where the sound of the chosen one cannot be had, and says so', async () => {
    const { voices, used, said } = setUp('de', { lost: ['de'] });
    await voices.first;
    await settled();
    expect([voices.state.value, said(), used]).toEqual(['failed', 'Clock running.', ['de', 'en']]);
  });

  it('keeps what it speaks until the next language is there', async () => {
    const { voices, chosen, said } = setUp('fr', { lost: ['de'] });
    await voices.first;
    voices.follow(signal(false));
    await settled();
    chosen.value = 'de';
    expect(said()).toBe('Le chrono tourne.');
    await settled();
    expect([voices.state.value, said()]).toEqual(['failed', 'Clock running.']);
  });

  it('of a kept run is the one that it was spoken in', async () => {
    const { voices } = setUp('fr');
    const inRun = async (tag: string): Promise<string> =>
      (await voices.ofRun(withLanguage('{"version":1}', tag))).utter(SAYING, 'short').text;
    expect(await inRun('de')).toBe('Die Uhr läuft.');
    expect(await inRun('en')).toBe('Clock running.');
    expect(await inRun('nl')).toBe('Clock running.');
  });
});

describe('the language under way', () => {
  const store = (planFile: string, over: boolean, simulated?: true) => ({
    heads: async () => [{ id: 1, version: 1 as const, planFile, ...(simulated ? { simulated } : {}) }],
    lastBatch: async () => ({ run: 1, lines: [], from: 0, engineMs: 0, wallMs: 0, over }),
  });
  const german = withLanguage('{"version":1}', 'de');

  it('is that of the latest run while that goes on', async () => {
    expect(await languageUnderWay(store(german, false))).toBe('de');
    expect(await languageUnderWay(store(german, true))).toBeNull();
    expect(await languageUnderWay(store(german, false, true))).toBeNull();
  });

  it('is none where there is no store, or one that does not answer', async () => {
    const broken = { heads: () => Promise.reject(new Error('no room')), lastBatch: async () => null };
    expect(await languageUnderWay(broken)).toBeNull();
    const silent = { heads: () => new Promise<never>(() => {}), lastBatch: async () => null };
    expect(await languageUnderWay(silent)).toBeNull();
  });
});
