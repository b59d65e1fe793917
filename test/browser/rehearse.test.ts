import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { heardOut } from './support/heard.ts';
import { type Opened, open, SIZES, voiceLoaded } from './support/open.ts';
import { heardWords, spokenCalls } from './support/spoken.ts';
import { tapped } from './support/tap.ts';

/** Quieter than this nobody hears; the voice's quietest clip is far above it, MP3 silence far below. */
const AUDIBLE_RMS = 0.01;
const SILENT_RMS = 0.001;
/** Length of a block of the tap, with room for the graph's own. */
const BLOCK_S = 0.05;

describe('the rehearsal, by one press', () => {
  let opened: Opened;

  beforeEach(async () => {
    opened = await open('', { size: SIZES.desk });
    await voiceLoaded(opened.page);
  });
  afterEach(() => opened.close());

  /** The demo at the highest rate, until its fourth call begins. */
  const hearFour = async (): Promise<void> => {
    const { page } = opened;
    await page.getByLabel('60×').check();
    await page.getByRole('button', { name: 'Hear the demo race' }).click();
    await page.locator('.call').nth(3).waitFor({ timeout: 50_000 });
  };

  test('plays the demo race: what is shown as said is what sounds, set ahead on the audio clock, one call at a time', async () => {
    const { page } = opened;
    await hearFour();
    const shown = (await page.locator('.call .call-words').allInnerTexts()).reverse();
    const { started, blocks } = await tapped(page);
    const calls = spokenCalls(started);
    expect(calls.slice(0, shown.length).map((c) => heardWords(c.words))).toEqual(shown.map(heardWords));

    // The fourth has just begun; those before it were heard out.
    for (const call of calls.slice(0, 3)) {
      for (const source of call.sources) {
        const inside = blocks.filter(
          (b) => b.atS > source.whenS - BLOCK_S && b.atS < source.whenS + (source.lengthS ?? 0),
        );
        expect(Math.max(...inside.map((b) => b.rms))).toBeGreaterThan(AUDIBLE_RMS);
      }
    }
    const spoken = (atS: number): boolean =>
      calls.some((c) => atS > c.beginS - 2 * BLOCK_S && atS < c.endS + 2 * BLOCK_S);
    const between = blocks.filter((b) => !spoken(b.atS));
    expect(between.length).toBeGreaterThan(10);
    expect(Math.max(...between.map((b) => b.rms))).toBeLessThan(SILENT_RMS);

    for (const { sources, beginS } of calls) {
      expect(sources.every((s) => s.whenS > s.nowS)).toBe(true);
      expect(sources.every((s) => s.nowS <= beginS)).toBe(true);
      sources.slice(1).forEach((s, i) => {
        const before = sources[i];
        expect(s.whenS).toBeGreaterThanOrEqual((before?.whenS ?? 0) + (before?.lengthS ?? 0));
      });
    }
    for (const [i, call] of calls.slice(1).entries())
      expect(call.beginS).toBeGreaterThan(calls[i]?.endS ?? 0);
    expect(opened.complaints).toEqual([]);
  });

  test('answers at once when asked, and is silent while paused', async () => {
    const { page } = opened;
    await page.getByLabel('60×').check();
    await page.getByRole('button', { name: 'Hear the demo race' }).click();
    await page.locator('.call').nth(0).waitFor({ timeout: 30_000 });
    await heardOut(page);
    await page.getByRole('button', { name: 'Ask' }).click();
    await page.locator('.call[data-kind="answer"]').waitFor({ timeout: 15_000 });
    await page.getByRole('button', { name: 'Pause' }).click();
    const clock = page.locator('.figures .figure').first();
    const shown = await clock.textContent();
    const before = (await tapped(page)).started.length;
    await page.waitForTimeout(1500);
    expect((await tapped(page)).started.length).toBe(before);
    expect(await clock.textContent()).toBe(shown);
    await page.getByRole('button', { name: 'Go on' }).click();
    await expect.poll(() => clock.textContent(), { timeout: 10_000 }).not.toBe(shown);
  });
});
