import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { open, SIZES } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const PLAN = { version: 1, kind: 'race', name: 'Pier mile', distanceM: 1600, goalS: 400, pacing: 'pace' };

/** What axe-core 4.14 finds, one line a finding. Run over the debugger's door, which the page's policy does not shut. */
const findings = async (page: Page): Promise<string[]> => {
  await page.evaluate(AXE);
  const { violations } = await page.evaluate(() =>
    (window as unknown as { axe: { run: (on: Document) => Promise<AxeResults> } }).axe.run(document),
  );
  return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 120)}`));
};

const SCREENS = [
  '',
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
  test.each(SCREENS)('on %s', async (path) => {
    const { page, close } = await open(path, { plan: PLAN });
    if (path === '#/share') await page.locator('svg.code').waitFor();
    expect(await findings(page)).toEqual([]);
    await close();
  });

  test('in the check, on the way from the start to the end of a run, and on a wrist', async () => {
    const { page, close } = await open('#/ready', { plan: PLAN });
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
    await page.locator('.guard').click({ delay: 1500 });
    await page.setViewportSize(SIZES.wrist);
    expect(await findings(page)).toEqual([]);
    await page.setViewportSize(SIZES.phone);
    await page.locator('.hold-button').click({ delay: 1700 });
    await page.getByRole('button', { name: 'Hold again: end the run' }).click({ delay: 1700 });
    await page.getByRole('heading', { name: 'Stopped' }).waitFor();
    expect(await findings(page)).toEqual([]);
    await close();
  });
});
