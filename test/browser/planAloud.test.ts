import { describe, expect, test } from 'vitest';
import { open } from './support/open.ts';
import { spokenCalls } from './support/spoken.ts';
import { tapped } from './support/tap.ts';

describe('race day', () => {
  test('is told aloud, step by step', async () => {
    const { page, close } = await open('#/day');
    await page.locator('.clock-list li').first().waitFor();
    await page.getByRole('button', { name: 'Hear how it sounds' }).click();
    await page.getByText('All steps').waitFor();
    const said = async (): Promise<string[]> =>
      spokenCalls((await tapped(page)).started).map((call) => call.words);
    await expect.poll(said, { timeout: 20_000 }).toContain('breakfast now');
    await close();
  });
});
