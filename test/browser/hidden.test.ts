import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { linesOf } from '../../src/log/store.ts';
import { wordsHeard } from './support/heard.ts';
import { type Opened, open, voiceLoaded } from './support/open.ts';
import { PIER_MILE } from './support/plans.ts';
import { phoneOf, pretendPhone } from './support/pretendPhone.ts';
import type { RoadRunner } from './support/roadRunner.ts';
import { startRun } from './support/runOnPage.ts';
import { storedBatches } from './support/stored.ts';
import { tapSound } from './support/tap.ts';

const PLAN = { ...PIER_MILE, checkpointsM: [1500] };
const SPEED_MPS = 4;
/** A notice keeps its distance of 12 s from what was said before. */
const SAID_WITHIN_MS = 30_000;

/** One run in real time, to which happens what happens to phones; the rules are tested in test/session/run/faults.test.ts. */
describe('a run on a phone that has other things to do', () => {
  let opened: Opened;
  let runner: RoadRunner;
  let startedMs = 0;
  const placeM = (): number => (SPEED_MPS * (Date.now() - startedMs)) / 1000;
  const until = async (done: () => Promise<boolean>): Promise<void> => {
    const limitMs = Date.now() + SAID_WITHIN_MS;
    await runner.follow(placeM, async () => Date.now() > limitMs || (await done()), SPEED_MPS);
    expect(await done()).toBe(true);
  };
  const hears = (pattern: RegExp) =>
    until(async () => (await wordsHeard(opened.page)).some((w) => pattern.test(w)));
  const elapsedS = async (): Promise<number> => {
    const shown = (await opened.page.locator('.face-figures .figure').first().textContent()) ?? '';
    const [m = 0, s = 0] = shown.split(':').map(Number);
    return 60 * m + s;
  };
  const trueS = (): number => (Date.now() - startedMs) / 1000;

  beforeAll(async () => {
    opened = await open('#/run', { plan: PLAN, before: pretendPhone });
    runner = await startRun(opened.page);
    startedMs = Date.now();
    await runner.runTo(16, SPEED_MPS);
  });
  afterAll(() => opened?.close());

  test('hidden for 4 s: the log is on the device, the clock is right, and the run goes on', async () => {
    const { page } = opened;
    await phoneOf(page).hide();
    await page.waitForTimeout(4000);
    const lines = await storedBatches(page);
    expect(linesOf(lines).filter((line) => line.includes('coords')).length).toBeGreaterThan(3);
    await phoneOf(page).show();
    await until(async () => /^Position/.test((await page.locator('.face-strip').textContent()) ?? ''));
    expect(Math.abs((await elapsedS()) - trueS())).toBeLessThan(2);
  });

  test('the sound taken by a call: the runner hears when it is back, and where they stand', async () => {
    await phoneOf(opened.page).ring(true);
    const overMs = Date.now() + 7000;
    await runner.follow(placeM, () => Date.now() > overMs, SPEED_MPS);
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
    await expect.poll(() => wordsHeard(second), { timeout: 10_000 }).toEqual(['open in another window']);
    await second.close();
    expect(await opened.page.locator('.face .sounding').count()).toBe(1);
  });

  test('without complaining', () => {
    expect(opened.complaints).toEqual([]);
  });
});
