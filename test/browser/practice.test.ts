import { afterEach, describe, expect, test } from 'vitest';
import { findings } from './support/axe.ts';
import { sidewaysPx } from './support/fits.ts';
import { giveFile } from './support/giveFile.ts';
import { type Opened, open, SIZES, show } from './support/open.ts';
import { heardWords, spokenCalls } from './support/spoken.ts';
import { leftOfReviews, leftOfRuns } from './support/stored.ts';
import { tapped } from './support/tap.ts';

/** Three short legs, by the clock alone. */
const SHORT = {
  version: 1,
  kind: 'practice',
  name: 'Short and indoors',
  place: 'indoors',
  legs: [
    { kind: 'warm-up', for: { timeS: 10 }, target: { effort: 'easy' } },
    { kind: 'work', for: { timeS: 10 }, target: { effort: 'hard' } },
  ],
};

let opened: Opened | null = null;
afterEach(async () => {
  await opened?.close();
  opened = null;
});

describe('a practice session on the page', () => {
  test('is counted in, done, kept, looked at, handed out and deleted', { timeout: 120_000 }, async () => {
    opened = await open('#/practice', { size: SIZES.phone });
    const { page, complaints } = opened;
    await giveFile(page, 'Open a session', 'short.json', JSON.stringify(SHORT));
    await page.getByRole('heading', { name: 'Short and indoors' }).waitFor();
    await page.getByRole('button', { name: 'Switch on' }).click();
    await page.getByRole('button', { name: 'Start' }).click();
    await page.getByRole('heading', { name: 'warm-up' }).waitFor();
    await page.getByRole('heading', { name: 'work' }).waitFor({ timeout: 20_000 });
    await page.getByText('Session done').waitFor({ timeout: 30_000 });
    await page.getByRole('button', { name: 'Done' }).click({ timeout: 20_000 });

    await page.getByRole('link', { name: 'Past runs' }).click();
    await page
      .getByRole('button', { name: /Short and indoors, practice/ })
      .first()
      .click();
    await page.getByText('Done in 0:20').waitFor();
    expect(await findings(page)).toEqual([]);
    await expect.poll(() => page.locator('.behind tbody tr').count()).toBe(2);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Run with its log' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('short-and-indoors.run.jsonl');

    await page.getByRole('button', { name: 'All runs' }).click();
    await page.getByRole('button', { name: /^Delete Short/ }).click();
    await page.getByRole('button', { name: 'Delete for good' }).click();
    await page.getByText('No runs yet').waitFor();
    expect(await leftOfRuns(page)).toEqual([0, 0, 0]);
    expect(await leftOfReviews(page)).toBe(0);
    expect(complaints).toEqual([]);
  });

  test('goes on when its page was closed in the middle', { timeout: 60_000 }, async () => {
    opened = await open('#/practice', { size: SIZES.phone });
    const { page } = opened;
    const legs = [{ kind: 'easy', for: { timeS: 600 } }];
    await giveFile(page, 'Open a session', 'long.json', JSON.stringify({ ...SHORT, name: 'Long', legs }));
    await page.getByRole('button', { name: 'Switch on' }).click();
    await page.getByRole('button', { name: 'Start' }).click();
    await page.getByText('9:5').first().waitFor();
    expect(await findings(page)).toEqual([]);
    await page.waitForTimeout(3000);
    await page.reload();
    await page.getByRole('heading', { name: 'easy' }).waitFor();
    await page.getByText(/^9:[345]\d$/).waitFor();
  });

  test.each(['phone', 'desk'] as const)('nothing of it runs off the side on a %s', async (size) => {
    opened = await open('#/practice', { size: SIZES[size] });
    const { page } = opened;
    for (const address of ['#/practice', '#/runs']) {
      await show(page, address);
      expect(await sidewaysPx(page)).toBe(0);
    }
  });
});

describe('a GPX track from anywhere', () => {
  const track = (): string => {
    const points = Array.from({ length: 400 }, (_, i) => {
      const time = new Date(1_800_000_000_000 + 3000 * i).toISOString();
      return `<trkpt lat="${(53.5 + i * 9e-5).toFixed(6)}" lon="7.25"><time>${time}</time></trkpt>`;
    });
    return `<?xml version="1.0"?><gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>Along the dyke</name><trkseg>${points.join('')}</trkseg></trk></gpx>`;
  };

  test('is a run to review: what came of it, drawings with a table behind each, calls with their reasons', {
    timeout: 60_000,
  }, async () => {
    opened = await open('#/runs', { size: SIZES.desk });
    const { page, complaints } = opened;
    await giveFile(page, 'Open a run: log or GPX', 'dyke.gpx', track());
    await page
      .getByRole('button', { name: /Along the dyke/ })
      .first()
      .click();
    // Nobody planned its opening nor its finish: time, where it was won and lost, and the halves.
    await expect.poll(() => page.locator('.five-lines li').count()).toBe(3);
    await expect.poll(() => page.locator('canvas').count()).toBeGreaterThanOrEqual(2);
    expect(await page.locator('.behind').count()).toBeGreaterThanOrEqual(2);
    expect(await findings(page)).toEqual([]);
    await page.locator('.said-calls summary').first().click();
    await page.getByText('Why:').first().waitFor();
    await page.getByRole('button', { name: 'Hear this call' }).first().click();
    await page.locator('[data-sounds="true"]').waitFor({ timeout: 10_000 });
    expect(complaints).toEqual([]);
  });

  test('a stretch of it is heard again: the very calls, at true speed, the time between at the chosen rate', {
    timeout: 120_000,
  }, async () => {
    opened = await open('#/runs', { size: SIZES.phone });
    const { page } = opened;
    await giveFile(page, 'Open a run: log or GPX', 'dyke.gpx', track());
    await page
      .getByRole('button', { name: /Along the dyke/ })
      .first()
      .click();
    await page.locator('.five-lines').waitFor();
    const options = page.locator('.hear select').first().locator('option');
    const shown = (await options.allTextContents()).slice(0, 2).map((text) => {
      const [when, ...words] = text.split(' ');
      const [min, s] = (when ?? '').split(':').map(Number);
      return { atS: 60 * (min ?? 0) + (s ?? 0), words: words.join(' ') };
    });
    await page.locator('.hear select').nth(1).selectOption('1');
    await page.locator('.hear select').nth(2).selectOption('60');
    const before = (await tapped(page)).started.length;
    await page.getByRole('button', { name: 'Hear it again' }).click();
    await page.getByRole('button', { name: /^Stop at/ }).waitFor();
    await page.getByRole('button', { name: 'Hear it again' }).waitFor({ timeout: 90_000 });
    const calls = spokenCalls((await tapped(page)).started.slice(before)).filter((c) => c.words !== '');
    expect(calls.map((c) => heardWords(c.words))).toEqual(shown.map((c) => heardWords(c.words)));
    const [first, second] = calls;
    const raceS = (shown[1]?.atS ?? 0) - (shown[0]?.atS ?? 0);
    const betweenS = (second?.beginS ?? 0) - (first?.endS ?? 0);
    // Sixty times as fast, and no two at once.
    expect(betweenS).toBeGreaterThanOrEqual(0);
    expect(betweenS).toBeLessThan(raceS / 60 + 1.5);
  });
});
