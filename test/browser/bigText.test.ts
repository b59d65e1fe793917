import { expect, test } from 'vitest';
import { PREPARE, SCREENS } from '../../src/screens/route.ts';
import { sidewaysPx } from './support/fits.ts';
import { open, SIZES, show } from './support/open.ts';

/** As a runner has it who set the text of the phone to twice its size. */
const TWICE = '200%';

test.each(['phone', 'wrist'] as const)('text of twice the size fits on a %s', async (size) => {
  const { page, close } = await open('#/ready', { size: SIZES[size] });
  const wide: string[] = [];
  for (const hash of ['ready', ...SCREENS, ...PREPARE, 'learn', 'share']) {
    await show(page, `#/${hash}`);
    await page.evaluate((twice) => {
      document.documentElement.style.fontSize = twice;
    }, TWICE);
    const overPx = await sidewaysPx(page);
    if (overPx > 0) wide.push(`${hash}: ${overPx} px`);
  }
  expect(wide).toEqual([]);
  await close();
});
