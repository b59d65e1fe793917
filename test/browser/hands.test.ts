import { describe, expect, test } from 'vitest';
import { open, SIZES, voiceLoaded } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';
import { tapped } from './support/tap.ts';

const PLAN = { version: 1, kind: 'race', name: 'Pier mile', distanceM: 1600, goalS: 400, pacing: 'pace' };

describe('by the keyboard alone', () => {
  test('a rehearsal is begun, asked, paused and ended', async () => {
    const { page, close } = await open('', { size: SIZES.desk });
    await voiceLoaded(page);
    const focused = () => page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');
    for (let i = 0; i < 8 && (await focused()) !== 'Hear the demo race'; i++)
      await page.keyboard.press('Tab');
    expect(await focused()).toBe('Hear the demo race');
    const outline = await page.evaluate(
      () => getComputedStyle(document.activeElement as Element).outlineStyle,
    );
    expect(outline).not.toBe('none');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Pause' }).waitFor();
    await page.getByRole('button', { name: 'Ask' }).focus();
    await page.keyboard.press('Space');
    await expect
      .poll(async () => (await tapped(page)).started.length, { timeout: 10_000 })
      .toBeGreaterThan(0);
    await page.getByRole('button', { name: 'End' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Hear the demo race' }).waitFor();
    await close();
  });

  test('the rate is chosen with the arrows', async () => {
    const { page, close } = await open('');
    await page.getByLabel('20×').focus();
    await page.keyboard.press('ArrowRight');
    expect(await page.getByLabel('60×').isChecked()).toBe(true);
    await close();
  });
});

describe('the face of a run is one button', () => {
  const onTheRoad = async () => {
    const opened = await open('#/run', { plan: PLAN });
    const runner = await roadRunner(opened.page);
    await opened.page.getByRole('button', { name: 'Switch on' }).click();
    await runner.stand(1);
    await opened.page.getByRole('button', { name: 'Start' }).click();
    await runner.runTo(20, 4);
    return opened;
  };
  const stop = async ({ page }: Awaited<ReturnType<typeof onTheRoad>>) => {
    await page.locator('.hold-button').click({ delay: 1700 });
    await page.getByRole('button', { name: 'Hold again: end the run' }).click({ delay: 1700 });
    await page.getByRole('heading', { name: 'Stopped' }).waitFor();
    return page.locator('.call').evaluateAll((calls) => calls.map((c) => c.getAttribute('data-kind')));
  };

  test('held by a finger it answers; tapped it marks a board', async () => {
    const opened = await onTheRoad();
    await opened.page.locator('.pad').click({ delay: 900, position: { x: 100, y: 200 } });
    // Said in full, so that the next is not in its way.
    await opened.page.waitForTimeout(5000);
    await opened.page.locator('.pad').click({ position: { x: 300, y: 300 } });
    await opened.page.waitForTimeout(3000);
    const kinds = await stop(opened);
    expect(kinds.filter((k) => k === 'answer')).toHaveLength(1);
    // At 20 m of a mile race no board makes sense, and the runner is told.
    expect(kinds.filter((k) => k === 'marker')).toHaveLength(1);
    await opened.close();
  });

  test('held by a key it answers as well', async () => {
    const opened = await onTheRoad();
    await opened.page.locator('.pad').focus();
    await opened.page.keyboard.press('Space', { delay: 900 });
    await opened.page.waitForTimeout(500);
    expect((await stop(opened)).filter((k) => k === 'answer')).toHaveLength(1);
    await opened.close();
  });
});
