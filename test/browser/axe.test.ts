import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findings } from './support/axe.ts';
import { type Opened, open, SIZES, show } from './support/open.ts';
import { PIER_MILE } from './support/plans.ts';
import { roadRunner } from './support/roadRunner.ts';
import { endRun, holdUntil } from './support/runOnPage.ts';

const SCREENS = [
  '#/rehearse',
  '#/goal',
  '#/course',
  '#/plan',
  '#/fuel',
  '#/day',
  '#/paper',
  '#/aloud',
  '#/whatIf',
  '#/practice',
  '#/runs',
  '#/ready',
  '#/learn',
  '#/share',
  '#/run',
];

describe('axe-core finds nothing', () => {
  describe('on', () => {
    let opened: Opened;
    beforeAll(async () => {
      opened = await open('#/rehearse', { plan: PIER_MILE });
    });
    afterAll(() => opened?.close());

    test.each(SCREENS)('%s', async (hash) => {
      const { page } = opened;
      await show(page, hash);
      if (hash === '#/share') await page.locator('svg.code').waitFor();
      expect(await findings(page)).toEqual([]);
    });
  });

  test('in the check, on the way from the start to the end of a run, and on a wrist', async () => {
    const { page, close } = await open('#/ready', { plan: PIER_MILE });
    const runner = await roadRunner(page);
    await page.getByRole('button', { name: 'Begin the check' }).click();
    await runner.stand(1);
    expect(await findings(page)).toEqual([]);
    await page.goto(`${new URL(page.url()).origin}/#/run`);
    await page.getByLabel('In a pocket or on an arm').check();
    await page.getByRole('button', { name: 'Switch on' }).click();
    await runner.stand(1);
    expect(await findings(page)).toEqual([]);
    await page.getByRole('button', { name: /^Start/ }).click();
    await page.locator('.guard').waitFor();
    expect(await findings(page)).toEqual([]);
    await holdUntil(page.locator('.guard'), page.locator('.guard'), 'detached');
    await page.setViewportSize(SIZES.wrist);
    expect(await findings(page)).toEqual([]);
    await page.setViewportSize(SIZES.phone);
    await endRun(page);
    await page.getByRole('heading', { name: 'Stopped' }).waitFor();
    expect(await findings(page)).toEqual([]);
    await close();
  });
});
