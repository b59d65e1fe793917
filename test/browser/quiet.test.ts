import { expect, test } from 'vitest';
import { open, SIZES } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';

const PLAN = { version: 1, kind: 'race', name: 'Pier mile', distanceM: 1600, goalS: 400, pacing: 'pace' };

test('how much is said is chosen before a run, and quiet is one press on its face', async () => {
  const { page, close } = await open('#/run', { plan: PLAN, size: SIZES.phone });
  await page.getByLabel('Little').check();
  await page.reload();
  expect(await page.getByLabel('Little').isChecked()).toBe(true);
  const runner = await roadRunner(page);
  await page.getByRole('button', { name: 'Switch on' }).click();
  await runner.stand(1);
  await page.getByRole('button', { name: 'Start' }).click();
  await runner.runTo(10, 4);
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
