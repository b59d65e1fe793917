import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { TONES, type Tone } from '../../src/core/cues/voicePort.ts';
import { TONE_TEXTS } from '../../src/screens/learn/toneTexts.ts';
import { toneDurationS } from '../../src/voice/tones/family.ts';
import { vibrationOf } from '../../src/voice/tones/vibration.ts';
import { findings } from './support/axe.ts';
import { sidewaysPx } from './support/fits.ts';
import { type Opened, open, SIZES, voiceLoaded } from './support/open.ts';
import { tapped } from './support/tap.ts';

let opened: Opened | null = null;
afterEach(async () => {
  await opened?.close();
  opened = null;
});

/** A device that vibrates, and keeps how. */
const wrist = async (path: string, size: { width: number; height: number } = SIZES.phone) => {
  opened = await open(path, {
    size,
    before: (context) =>
      context.addInitScript(() => {
        const felt: number[][] = [];
        Object.assign(window, { felt });
        navigator.vibrate = (pattern: VibratePattern | Iterable<number>) => {
          felt.push(typeof pattern === 'number' ? [pattern] : [...pattern]);
          return true;
        };
      }),
  });
  return opened;
};

const feltOn = (page: Page): Promise<number[][]> =>
  page.evaluate(() => (window as unknown as { felt: number[][] }).felt);

/** The names as the page has them: without the note for translators. */
const nameOf = (tone: Tone): string => TONE_TEXTS[tone].name.text.split('||')[0] ?? '';

/** The tones that sounded, told by their lengths. */
const tonesHeard = async (page: Page): Promise<(Tone | undefined)[]> =>
  (await tapped(page)).started.map(({ bufferS }) =>
    TONES.find((tone) => Math.abs(toneDurationS(tone) - bufferS) < 0.005),
  );

describe('the page of the tones', () => {
  test('plays each tone and lets it be felt', async () => {
    const { page, complaints } = await wrist('#/learn');
    await page.getByRole('heading', { name: 'The tones' }).waitFor();
    await voiceLoaded(page);
    for (const [i, tone] of TONES.entries()) {
      await page.locator(`[data-tone=${tone}]`).getByRole('button', { name: 'Play' }).click();
      await expect.poll(async () => (await tonesHeard(page)).length).toBe(i + 1);
    }
    expect(await tonesHeard(page)).toEqual([...TONES]);
    expect(await feltOn(page)).toEqual(TONES.map((tone) => [...vibrationOf(tone)]));
    await page.locator('[data-tone=lost]').getByRole('button', { name: 'Feel' }).click();
    expect((await feltOn(page)).at(-1)).toEqual([...vibrationOf('lost')]);
    expect(await tonesHeard(page)).toHaveLength(TONES.length);
    expect(complaints).toEqual([]);
  });

  test('asks in a quiz what was heard, says what was right, and which to hear again', async () => {
    const { page, complaints } = await wrist('#/learn');
    await page.getByRole('heading', { name: 'The tones' }).waitFor();
    await voiceLoaded(page);
    await page.getByRole('button', { name: 'Begin the quiz' }).click();
    const choices = page.locator('.tone-choices button');
    for (let i = 0; i < 8; i++) {
      await page.getByText(`Tone ${i + 1} of 8`).waitFor();
      await expect.poll(async () => (await tonesHeard(page)).length).toBe(i + 1);
      const tone = (await tonesHeard(page)).at(-1) ?? 'leg';
      const names = await choices.allTextContents();
      expect(names).toHaveLength(4);
      expect(names).toContain(nameOf(tone));
      // The first one is got wrong.
      const said = i === 0 ? (names.find((name) => name !== nameOf(tone)) ?? '') : nameOf(tone);
      await choices.filter({ hasText: new RegExp(`^${said}$`) }).click();
      const verdict = i === 0 ? `No, that was ${nameOf(tone)}.` : `Right: ${nameOf(tone)}.`;
      await page.getByText(verdict).waitFor();
      if (i === 0) expect(await findings(page)).toEqual([]);
      await page.getByRole('button', { name: i < 7 ? 'Next tone' : 'How I did' }).click();
    }
    await page.getByText('7 of 8 right. Hear these again:').waitFor();
    expect(await page.locator('.tone-quiz .buttons').first().locator('button').count()).toBe(2);
    await page.getByRole('button', { name: 'Another quiz' }).click();
    await page.getByText('Tone 1 of 8').waitFor();
    expect(complaints).toEqual([]);
  });

  test('is found from the run, and sets tones alone for it', async () => {
    const { page } = await wrist('#/run');
    await page.getByRole('link', { name: 'Learn the tones' }).click();
    await page.getByLabel('Tones alone in my runs').check();
    await page.getByRole('link', { name: 'To the run' }).click();
    await expect.poll(() => page.getByRole('radio', { name: /^Tones alone/ }).isChecked()).toBe(true);
    expect(await page.evaluate(() => localStorage.getItem('soundline.choices'))).toContain('"tones"');
  });

  test.each(Object.entries(SIZES))('fits on a %s', async (_name, size) => {
    const { page } = await wrist('#/learn', size);
    await page.getByRole('heading', { name: 'The tones' }).waitFor();
    expect(await sidewaysPx(page)).toBe(0);
    expect(await findings(page)).toEqual([]);
  });
});
