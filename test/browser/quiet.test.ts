import { expect, test } from 'vitest';
import { open, SIZES } from './support/open.ts';
import { PIER_MILE } from './support/plans.ts';
import { startRun } from './support/runOnPage.ts';

test('how much is said is chosen before a run, and quiet is one press on its face', async () => {
  const { page, close } = await open('#/run', { plan: PIER_MILE, size: SIZES.phone });
  await page.getByLabel('Little').check();
  await page.reload();
  expect(await page.getByLabel('Little').isChecked()).toBe(true);
  await (await startRun(page)).runTo(8, 4);
  const face = page.locator('.face');
  const quiet = page.locator('.quiet-button');
  // Neither of the two buttons lies on the other or on a figure.
  const boxes = await page.locator('.face-figures, .face-buttons > button').evaluateAll((all) =>
    all.map((one) => {
      const { left, right, top, bottom } = one.getBoundingClientRect();
      return { left, right, top, bottom };
    }),
  );
  for (const [i, a] of boxes.entries())
    for (const b of boxes.slice(i + 1))
      expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(true);
  await quiet.click();
  expect(await quiet.getAttribute('aria-pressed')).toBe('true');
  expect(await quiet.textContent()).toMatch(/Speak again \((9|10) min\)/);
  await quiet.click();
  expect(await quiet.getAttribute('aria-pressed')).toBe('false');
  expect(await face.count()).toBe(1);
  await close();
});
