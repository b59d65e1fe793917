import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { WebVTTParser } from 'webvtt-parser';
import { readSound } from '../support/ffmpegRead.ts';
import { sidewaysPx } from './support/fits.ts';
import { wordsHeard } from './support/heard.ts';
import { open, SIZES } from './support/open.ts';

const PLAN = {
  version: 1,
  kind: 'race',
  name: 'Long quay',
  distanceM: 42_195,
  goalS: 18_000,
  pacing: 'pace',
  unit: 'km',
  checkpointsM: [10_000, 21_097.5, 30_000],
  stations: [{ atM: 4700, offers: ['water'] }],
  fuel: [{ item: 'gel', atM: 9450 }],
};

/** Presses a button and takes the file that it gives. */
const taken = async (page: Page, button: string): Promise<{ name: string; bytes: Buffer }> => {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  const download = await waiting;
  const pieces: Buffer[] = [];
  for await (const piece of await download.createReadStream()) pieces.push(piece as Buffer);
  return { name: download.suggestedFilename(), bytes: Buffer.concat(pieces) };
};

describe('the plan as a sound file', () => {
  test('is made in the page: five hours as an MP3, and the same calls as text', async () => {
    const { page, complaints, close } = await open('#/aloud', { plan: PLAN, size: SIZES.desk });
    await page.getByText('about 18').waitFor();
    const { name, bytes } = await taken(page, 'Save as MP3');
    expect(name).toBe('long-quay.mp3');
    expect(bytes.length).toBeLessThan(30e6);
    // From ten seconds before the start to past the first kilometre.
    const { complaints: heard, samples, facts } = readSound(bytes, ['-t', '500']);
    expect(heard).toBe('');
    expect(facts).toContain('Long quay');
    expect(facts).toMatch(/Duration: 05:00:1/);
    const sounds = [...samples.keys()].filter((i) => Math.abs(samples[i] ?? 0) > 0.01).map((i) => i / 24_000);
    const countdown = sounds.find((s) => s > 5) ?? 0;
    expect(Math.abs(countdown - 7)).toBeLessThan(0.05);
    const firstBoard = 10 + 18_000 / 42.195;
    expect(Math.abs((sounds.find((s) => s > firstBoard - 5) ?? 0) - firstBoard)).toBeLessThan(0.05);

    const words = await taken(page, 'Save the words (WebVTT)');
    expect(words.name).toBe('long-quay.vtt');
    const { cues, errors } = new WebVTTParser({}).parse(words.bytes.toString('utf8'), 'subtitles');
    expect(errors).toEqual([]);
    expect(cues.length).toBe(await page.locator('.aloud-lines > li').count());
    expect(cues.some(({ text }) => text === 'By the plan halfway now.')).toBe(true);
    expect(complaints).toEqual([]);
    await close();
  });

  test('follows what is chosen, and lets a line be heard at once', async () => {
    const { page, complaints, close } = await open('#/aloud', { plan: PLAN });
    const lines = page.locator('.aloud-lines > li');
    await lines.first().waitFor();
    const all = await lines.count();
    await page.getByLabel('Checkpoints alone').check();
    expect(await lines.count()).toBeLessThan(all - 30);
    await page.getByLabel('At the start').check();
    await page.getByText('Start it as you cross the start line.').waitFor();
    expect(await page.getByText('Countdown').count()).toBe(0);
    await page.getByRole('button', { name: 'By the plan halfway now.' }).click();
    await expect.poll(() => wordsHeard(page), { timeout: 20_000 }).toContain('by the plan halfway now');
    expect(await sidewaysPx(page)).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });

  test('says a practice session by the clock too', async () => {
    const { page, complaints, close } = await open('#/aloud', { plan: PLAN });
    await page.getByLabel('The practice session').check();
    await page.getByRole('button', { name: /^Warm-up\./ }).waitFor();
    await page.getByRole('button', { name: /^Session done\./ }).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  test('is given to another app where the browser can', async () => {
    const { page, complaints, close } = await open('#/aloud', {
      plan: PLAN,
      before: (context) =>
        context.addInitScript(() => {
          const given: string[] = [];
          Object.assign(window, { given });
          Object.defineProperty(navigator, 'canShare', { value: () => true });
          Object.defineProperty(navigator, 'share', {
            value: async ({ files }: { files: File[] }) => {
              for (const file of files) given.push(`${file.name} ${file.type} ${file.size > 15e6}`);
            },
          });
        }),
    });
    await page.getByRole('button', { name: 'Give it to another app' }).click();
    const given = (): Promise<string[]> =>
      page.evaluate(() => (window as unknown as { given: string[] }).given);
    await expect.poll(given, { timeout: 10_000 }).toEqual(['long-quay.mp3 audio/mpeg true']);
    expect(complaints).toEqual([]);
    await close();
  });
});
