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

describe('in a pocket', () => {
  const PHONE_CALLS = {
    version: 1,
    kind: 'race',
    name: 'Pier mile',
    distanceM: 1600,
    goalS: 400,
    pacing: 'pace',
  };
  const inPocket = async () => {
    const opened = await open('#/run', { plan: PHONE_CALLS });
    const runner = await roadRunner(opened.page);
    await opened.page.getByLabel('In a pocket or on an arm').check();
    await opened.page.getByRole('button', { name: 'Switch on' }).click();
    await runner.stand(1);
    await opened.page.getByRole('button', { name: 'Start' }).click();
    await opened.page.locator('.guard').waitFor();
    return { ...opened, runner };
  };

  test('a hundred touches and drops do nothing; one finger that rests opens it; it closes by itself', async () => {
    const { page, close, complaints } = await inPocket();
    const size = { width: 360, height: 740 };
    for (let i = 0; i < 100; i++)
      await page.mouse.click((i * 37) % size.width, (i * 91) % size.height, { delay: i % 10 === 0 ? 60 : 0 });
    // Cloth that presses for long, and slides.
    await page.mouse.move(100, 600);
    await page.mouse.down();
    for (let i = 0; i < 20; i++) {
      await page.mouse.move(100 + 10 * i, 600);
      await page.waitForTimeout(100);
    }
    await page.mouse.up();
    expect(await page.locator('.guard').count()).toBe(1);
    const lines = () =>
      page.evaluate(() => document.querySelectorAll('.hold-button[data-down="true"]').length);
    expect(await lines()).toBe(0);
    await page.locator('.guard').click({ delay: 1500 });
    await page.locator('.guard').waitFor({ state: 'detached' });
    await page.locator('.guard').waitFor({ timeout: 20_000 });
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
      plan: { ...PLAN, checkpointsM: [1000] },
      before: (context) =>
        context.addInitScript(() => {
          const handlers = new Map<string, () => void>();
          Object.assign(window, { handlers });
          navigator.mediaSession.setActionHandler = (action, handler) => {
            if (handler === null) handlers.delete(action);
            else handlers.set(action, handler as () => void);
          };
        }),
    });
    const runner = await roadRunner(page);
    await page.getByLabel("Use the headset's buttons").check();
    await page.getByRole('button', { name: 'Switch on' }).click();
    await runner.stand(1);
    await page.getByRole('button', { name: 'Start' }).click();
    await runner.runTo(24, 4);
    const press = (action: string) =>
      page.evaluate(
        (name) => (window as unknown as { handlers: Map<string, () => void> }).handlers.get(name)?.(),
        action,
      );
    const shown = () =>
      page.evaluate(() => [navigator.mediaSession.metadata?.title, navigator.mediaSession.metadata?.artist]);
    await expect
      .poll(shown, { timeout: 8000 })
      .toEqual([expect.stringMatching(/^(On plan|\d+ s (ahead|behind))$/), 'checkpoint in 1.0 km']);
    expect(await page.evaluate(() => navigator.mediaSession.playbackState)).toBe('playing');
    await press('nexttrack');
    await page.waitForTimeout(4500);
    await press('pause');
    await page.waitForTimeout(3000);
    await press('previoustrack');
    await page.waitForTimeout(1500);
    expect(await page.evaluate(() => navigator.mediaSession.playbackState)).toBe('playing');
    await page.locator('.hold-button').click({ delay: 1700 });
    await page.getByRole('button', { name: 'Hold again: end the run' }).click({ delay: 1700 });
    await page.getByRole('heading', { name: 'Stopped' }).waitFor();
    const kinds = await page
      .locator('.call')
      .evaluateAll((calls) => calls.map((c) => c.getAttribute('data-kind')));
    for (const kind of ['answer', 'marker', 'notice'])
      expect(kinds.filter((k) => k === kind)).toHaveLength(1);
    expect(
      await page.evaluate(() => (window as unknown as { handlers: Map<string, () => void> }).handlers.size),
    ).toBe(0);
    await close();
  });
});
