import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, inject, test } from 'vitest';
import { planeAt, pointOn } from '../../src/core/geo/ruler.ts';
import { encodePlan, encodeWithin, linkOf } from '../../src/share/code.ts';
import { drawCode, EASY_CODE_CHARS } from '../../src/share/picture.ts';
import { bare, filmed, writeFilm } from './support/film.ts';
import { launchOwn, type OwnBrowser, profile } from './support/ownBrowser.ts';
import { PIER_MILE } from './support/plans.ts';

/** What the page asks a camera for. */
const SIZE = { width: 1920, height: 1080 };

const linkTo = async (): Promise<string> =>
  linkOf(inject('origin'), (await encodePlan({ plan: PIER_MILE, course: null })).text);

const toClean: (() => void | Promise<void>)[] = [];
afterEach(async () => {
  for (const clean of toClean.splice(0).reverse()) await clean();
});

/** A browser whose camera looks at a table for half a second, and then at the sheet with this text; null is no sheet. */
const facing = async (text: string | null, allowed: boolean): Promise<Page> => {
  const dir = mkdtempSync(join(tmpdir(), 'soundline-film-'));
  toClean.push(() => rmSync(dir, { recursive: true, force: true }));
  const film = join(dir, 'film.y4m');
  const table = bare(SIZE);
  const sheet = text === null ? [] : [6, -9].map((deg) => filmed(drawCode(text), SIZE, deg, 0.75));
  writeFilm(film, SIZE, [...Array.from({ length: 5 }, () => table), ...sheet, ...sheet, ...sheet]);
  const { path, remove } = profile();
  toClean.push(remove);
  const own: OwnBrowser = await launchOwn(path, [
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-video-capture=${film}`,
    ...(allowed ? ['--use-fake-ui-for-media-stream'] : ['--deny-permission-prompts']),
  ]);
  toClean.push(own.kill);
  const page = own.context.pages()[0] ?? (await own.context.newPage());
  await page.goto(`${inject('origin')}/#/share`);
  await page.getByRole('button', { name: 'Read with the camera' }).click();
  return page;
};

/** Whether the page still has the camera. */
const isFilming = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.querySelector('video.camera') !== null);

describe('a plan by the camera', () => {
  test('is read from a sheet that comes into view, and the camera goes off by itself', async () => {
    const page = await facing(await linkTo(), true);
    await page.getByText('A plan is here: Pier mile').waitFor({ timeout: 30_000 });
    expect(await isFilming(page)).toBe(false);
    await page.getByRole('button', { name: 'Take this plan' }).click();
    await page.getByText('Taken.').waitFor();
    await page.goto(`${inject('origin')}/#/run`);
    await page.getByText('Pier mile: 1.6 km in 6:40').waitFor();
  });

  test('with the course of a half marathon in it', async () => {
    const plane = planeAt({ latitudeDeg: 55.31, longitudeDeg: 5.02 });
    const course = Array.from({ length: 1100 }, (_, i) => ({
      ...pointOn(plane, 19 * i, 160 * Math.sin(i / 25)),
      elevationM: 12 + 9 * Math.sin(i / 90),
    }));
    const shared = { plan: { ...PIER_MILE, name: 'Harbour half', distanceM: 21_097.5, goalS: 6240 }, course };
    const code = await encodeWithin(shared, EASY_CODE_CHARS - linkOf(inject('origin'), '').length);
    if (code === null) throw new Error('the demo fits into a code');
    const page = await facing(linkOf(inject('origin'), code.text), true);
    await page
      .getByText(/A plan is here: Harbour half, with a course of \d+ points/)
      .waitFor({ timeout: 40_000 });
  });

  test('that was cut off says so', async () => {
    const page = await facing((await linkTo()).slice(0, -20), true);
    await page
      .getByText(/This code has been cut off: \d+ of its \d+ characters/)
      .waitFor({ timeout: 30_000 });
    expect(await isFilming(page)).toBe(false);
    // And the next try may begin.
    await page.getByRole('button', { name: 'Read with the camera' }).waitFor();
  });

  test('that is of something else says so', async () => {
    const page = await facing('https://example.org/timetable', true);
    await page.getByText('This is no plan of Soundline').waitFor({ timeout: 30_000 });
  });

  test('where the camera is refused says what else there is', async () => {
    const page = await facing(await linkTo(), false);
    await page.getByText('The camera is not allowed, or there is none').waitFor();
    await page.getByRole('button', { name: 'Open a picture' }).waitFor();
    expect(await isFilming(page)).toBe(false);
  });

  test('turned off, or left, lets the camera go', async () => {
    const page = await facing(null, true);
    await page.locator('video.camera').waitFor();
    await page.evaluate(() => {
      const { srcObject } = document.querySelector('video.camera') as HTMLVideoElement;
      Object.assign(window, { track: (srcObject as MediaStream).getTracks()[0] });
    });
    const live = () =>
      page.evaluate(() => (window as unknown as { track: MediaStreamTrack }).track.readyState);
    expect(await live()).toBe('live');
    await page.goto(`${inject('origin')}/#/run`);
    await expect.poll(live).toBe('ended');
  });
});
