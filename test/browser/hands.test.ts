import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { buttonsTaken, pressHeadset, pretendHeadset } from './support/headset.ts';
import { answered } from './support/heard.ts';
import { open, SIZES, voiceLoaded } from './support/open.ts';
import { PIER_MILE } from './support/plans.ts';
import { endRun, holdUntil, kindsCalled, startRun } from './support/runOnPage.ts';
import { tapped } from './support/tap.ts';

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
    const opened = await open('#/run', { plan: PIER_MILE });
    const runner = await startRun(opened.page);
    await runner.runTo(8, 4);
    return opened;
  };
  const calledUntilStopped = async (page: Page) => {
    await endRun(page);
    return kindsCalled(page);
  };

  test('held by a finger it answers; tapped it marks a board', async () => {
    const { page, close } = await onTheRoad();
    const pad = page.locator('.pad');
    // Heard out, so that the next is not in its way.
    await answered(page, () => pad.click({ delay: 900, position: { x: 100, y: 200 } }));
    await answered(page, () => pad.click({ position: { x: 300, y: 300 } }));
    const kinds = await calledUntilStopped(page);
    expect(kinds.filter((k) => k === 'answer')).toHaveLength(1);
    // So near the start of a mile no board makes sense, and the runner is told.
    expect(kinds.filter((k) => k === 'marker')).toHaveLength(1);
    await close();
  });

  test('held by a key it answers as well', async () => {
    const { page, close } = await onTheRoad();
    await page.locator('.pad').focus();
    await answered(page, () => page.keyboard.press('Space', { delay: 900 }));
    expect((await calledUntilStopped(page)).filter((k) => k === 'answer')).toHaveLength(1);
    await close();
  });
});

describe('in a pocket', () => {
  const inPocket = async () => {
    const opened = await open('#/run', { plan: PIER_MILE });
    await opened.page.getByLabel('In a pocket or on an arm').check();
    await startRun(opened.page);
    await opened.page.locator('.guard').waitFor();
    return opened;
  };

  test('a hundred touches and drops do nothing; one finger that rests opens it; it closes by itself', async () => {
    const { page, close, complaints } = await inPocket();
    const size = { width: 360, height: 740 };
    for (let i = 0; i < 100; i++)
      await page.mouse.click((i * 37) % size.width, (i * 91) % size.height, { delay: i % 10 === 0 ? 60 : 0 });
    // Cloth that presses for long, and slides: far enough at once that a busy machine does not make it a finger at rest.
    await page.mouse.move(100, 600);
    await page.mouse.down();
    for (let i = 0; i < 20; i++) {
      await page.mouse.move(130 + 10 * i, 600);
      await page.waitForTimeout(100);
    }
    await page.mouse.up();
    const guard = page.locator('.guard');
    expect(await guard.count()).toBe(1);
    expect(await page.locator('.hold-button[data-down="true"]').count()).toBe(0);
    await holdUntil(guard, guard, 'detached');
    await guard.waitFor({ timeout: 20_000 });
    expect(complaints).toEqual([]);
    await close();
  });

  test('two fingers at once are no runner', async () => {
    const { page, close } = await inPocket();
    const cdp = await page.context().newCDPSession(page);
    const points = [
      { x: 100, y: 300, id: 1 },
      { x: 220, y: 420, id: 2 },
    ];
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: points });
    await page.waitForTimeout(2000);
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    expect(await page.locator('.guard').count()).toBe(1);
    await close();
  });

  test('neither the back button nor another address takes the face away', async () => {
    const { page, close } = await inPocket();
    await page.evaluate(() => {
      location.hash = '#/plan';
    });
    await page.waitForTimeout(300);
    expect(new URL(page.url()).hash).toBe('#/run');
    expect(await page.locator('.face .sounding').count()).toBe(1);
    await close();
  });
});

describe('the buttons of a headset', () => {
  test('mark, ask and hush, and the lock screen shows the drift and what comes next', async () => {
    const { page, close } = await open('#/run', {
      plan: { ...PIER_MILE, checkpointsM: [1000] },
      before: pretendHeadset,
    });
    await page.getByLabel("Use the headset's buttons").check();
    const runner = await startRun(page);
    await runner.runTo(8, 4);
    const shown = () =>
      page.evaluate(() => [navigator.mediaSession.metadata?.title, navigator.mediaSession.metadata?.artist]);
    await expect
      .poll(shown, { timeout: 8000 })
      .toEqual([expect.stringMatching(/^(On plan|\d+ s (ahead|behind))$/), 'checkpoint in 1.0 km']);
    const playing = () => page.evaluate(() => navigator.mediaSession.playbackState);
    expect(await playing()).toBe('playing');
    for (const action of ['nexttrack', 'pause', 'previoustrack'] as const)
      await answered(page, () => pressHeadset(page, action));
    expect(await playing()).toBe('playing');
    await endRun(page);
    const kinds = await kindsCalled(page);
    for (const kind of ['answer', 'marker', 'notice'])
      expect(kinds.filter((k) => k === kind)).toHaveLength(1);
    expect(await buttonsTaken(page)).toBe(0);
    await close();
  });
});
