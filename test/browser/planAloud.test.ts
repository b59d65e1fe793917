import { describe, expect, test } from 'vitest';
import { wordsHeard } from './support/heard.ts';
import { open } from './support/open.ts';

describe('race day', () => {
  test('is told aloud, step by step', async () => {
    const { page, close } = await open('#/day');
    await page.locator('.clock-list li').first().waitFor();
    await page.getByRole('button', { name: 'Hear how it sounds' }).click();
    await page.getByText('All steps').waitFor();
    await expect.poll(() => wordsHeard(page), { timeout: 20_000 }).toContain('breakfast now');
    await close();
  });
});
