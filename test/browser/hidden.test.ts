import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { linesOf, type RunBatch } from '../../src/log/store.ts';
import { type Opened, open, voiceLoaded } from './support/open.ts';
import { phoneOf, pretendPhone } from './support/pretendPhone.ts';
import { type RoadRunner, roadRunner } from './support/roadRunner.ts';
import { heardWords, spokenCalls } from './support/spoken.ts';
import { tapped, tapSound } from './support/tap.ts';

const PLAN = {
  version: 1,
  kind: 'race',
  name: 'Pier mile',
  distanceM: 1600,
  goalS: 400,
  pacing: 'pace',
  checkpointsM: [1500],
};
const SPEED_MPS = 4;
/** A notice keeps its distance of 12 s from what was said before. */
const SAID_WITHIN_MS = 30_000;

const words = async (page: Page): Promise<string[]> =>
  spokenCalls((await tapped(page)).started).map((c) => heardWords(c.words));

/** One run in real time, to which happens what happens to phones; the rules are tested in test/session/faults.test.ts. */
describe('a run on a phone that has other things to do', () => {
  let opened: Opened;
  let runner: RoadRunner;
  let startedMs = 0;
  const placeM = (): number => (SPEED_MPS * (Date.now() - startedMs)) / 1000;
  const until = async (done: () => Promise<boolean>): Promise<void> => {
    let isDone = false;
    let asked = Promise.resolve();
    const limitMs = Date.now() + SAID_WITHIN_MS;
    await runner.follow(
      placeM,
      () => {
        asked = asked.then(async () => {
          isDone ||= await done();
        });
        return isDone || Date.now() > limitMs;
      },
      SPEED_MPS,
    );
    await asked;
    expect(isDone).toBe(true);
  };
  const hears = (pattern: RegExp) =>
    until(async () => (await words(opened.page)).some((w) => pattern.test(w)));
  const elapsedS = async (): Promise<number> => {
    const shown = (await opened.page.locator('.face-figures .figure').first().textContent()) ?? '';
    const [m = 0, s = 0] = shown.split(':').map(Number);
    return 60 * m + s;
  };
  const trueS = (): number => (Date.now() - startedMs) / 1000;

  beforeAll(async () => {
    opened = await open('#/run', { plan: PLAN, before: pretendPhone });
    const { page } = opened;
    runner = await roadRunner(page);
    await page.getByRole('button', { name: 'Switch on' }).click();
    await runner.stand(1);
    await page.getByRole('button', { name: /^Start/ }).click();
    startedMs = Date.now();
    await runner.runTo(16, SPEED_MPS);
  });
  afterAll(() => opened?.close());

  test('hidden for 4 s: the log is on the device, the clock is right, and the run goes on', async () => {
    const { page } = opened;
    await phoneOf(page).hide();
    await page.waitForTimeout(4000);
    const lines = await page.evaluate(
      () =>
        new Promise<RunBatch[]>((resolve) => {
          const asking = indexedDB.open('soundline');
          asking.onsuccess = () => {
            const all = asking.result.transaction('batches').objectStore('batches').getAll();
            all.onsuccess = () => {
              asking.result.close();
              resolve(all.result);
            };
          };
        }),
    );
    expect(linesOf(lines).filter((line) => line.includes('coords')).length).toBeGreaterThan(3);
    await phoneOf(page).show();
    await until(async () => /^Position/.test((await page.locator('.face-strip').textContent()) ?? ''));
    expect(Math.abs((await elapsedS()) - trueS())).toBeLessThan(2);
  });

  test('the sound taken by a call: the runner hears when it is back, and where they stand', async () => {
    await phoneOf(opened.page).ring(true);
    await runner.follow(
      placeM,
      (
        (untilMs) => () =>
          Date.now() > untilMs
      )(Date.now() + 7000),
      SPEED_MPS,
    );
    await phoneOf(opened.page).ring(false);
    await hears(/^sound back/);
  });

  test('no room on the device: told once, and told when there is', async () => {
    await phoneOf(opened.page).fill(true);
    await until(async () =>
      /not recorded/.test((await opened.page.locator('.face-strip').textContent()) ?? ''),
    );
    await hears(/^not recording/);
    await phoneOf(opened.page).fill(false);
    await hears(/^recording again/);
  });

  test('its clock set by an hour: the run does not care, and says so', async () => {
    await phoneOf(opened.page).setClock(3_600_000);
    await hears(/^phone clock changed/);
    expect(Math.abs((await elapsedS()) - trueS())).toBeLessThan(2);
  });

  test('a second window of the same run: it does not lead, and says so by eye and ear', async () => {
    const second = await opened.page.context().newPage();
    await tapSound(second);
    await second.goto(opened.page.url());
    await second.getByText('This run is in another window').waitFor();
    expect(await second.locator('.face').count()).toBe(0);
    await voiceLoaded(second);
    await second.getByRole('button', { name: 'Switch on' }).click();
    await expect.poll(() => words(second), { timeout: 10_000 }).toEqual(['open in another window']);
    await second.close();
    expect(await opened.page.locator('.face .sounding').count()).toBe(1);
  });

  test('without complaining', () => {
    expect(opened.complaints).toEqual([]);
  });
});
