import { afterEach, expect, test } from 'vitest';
import { findings } from './support/axe.ts';
import { giveFile } from './support/giveFile.ts';
import { type Opened, open, SIZES, show } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';

/** A road to the north of where the runner of the tests stands, and back: they begin 300 m along it. */
const dyke = (): string => {
  const north = Array.from({ length: 101 }, (_, i) => 54.1 + (10 * i - 300) / 111_300);
  const points = [...north, ...north.slice(0, -1).reverse()];
  const text = points.map((lat) => `<trkpt lat="${lat.toFixed(7)}" lon="7.3"/>`).join('');
  return `<?xml version="1.0"?><gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>Along the dyke</name><trkseg>${text}</trkseg></trk></gpx>`;
};

const SESSION = {
  version: 1,
  kind: 'practice',
  name: 'On the dyke',
  legs: [
    { kind: 'easy', for: { timeS: 20 }, target: { effort: 'easy' } },
    { kind: 'work', for: { distanceM: 60 }, target: { effort: 'hard' } },
  ],
};
const MPS = 6;

let opened: Opened | null = null;
afterEach(async () => {
  await opened?.close();
  opened = null;
});

test('a session is given a course, run on it by the browser’s own positions, kept with it and reviewed', {
  timeout: 180_000,
}, async () => {
  opened = await open('#/practice', { size: SIZES.phone });
  const { page, complaints } = opened;
  const road = await roadRunner(page);
  await giveFile(page, 'Open a session', 'dyke.json', JSON.stringify(SESSION));
  await giveFile(page, 'Open a course', 'dyke.gpx', dyke());
  await page.getByText('Comes back to its begin after 2.00 km').waitFor();
  await page.getByRole('img', { name: 'The course, Along the dyke, drawn as a line' }).waitFor();
  expect(await findings(page)).toEqual([]);

  // It is there again after the page was closed, and goes out with the session.
  await page.reload();
  await page.getByText('Along the dyke').waitFor();
  await giveFile(page, 'Open a session', 'dyke.json', JSON.stringify(SESSION));
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).click(),
  ]);
  const stream = await download.createReadStream();
  const text = (await stream.toArray()).join('');
  expect(JSON.parse(text)).toMatchObject({ kind: 'practice', course: { name: 'Along the dyke' } });

  await page.getByRole('button', { name: 'Switch on' }).click();
  await road.stand(3);
  await page.getByRole('button', { name: 'Start' }).click();
  await road.runTo(100, MPS);
  await page.getByText('On the course').waitFor();
  await road.runTo(240, MPS);
  await page.getByText('Session done').waitFor({ timeout: 20_000 });
  await page.getByRole('button', { name: 'Done' }).click();

  await show(page, '#/runs');
  await page
    .getByRole('button', { name: /On the dyke, practice/ })
    .first()
    .click();
  await page.getByText(/^Done in 0:3\d/).waitFor();
  await expect.poll(() => page.locator('.behind[open] tbody tr').count()).toBe(2);
  expect(await findings(page)).toEqual([]);

  await show(page, '#/practice');
  await page.getByRole('button', { name: 'Remove the course' }).click();
  await page.getByRole('button', { name: 'Open a course' }).waitFor();
  expect(await page.evaluate(() => localStorage.getItem('soundline.practiceCourse'))).toBeNull();
  expect(complaints).toEqual([]);
});

const timed = (): string => {
  const points = Array.from(
    { length: 100 },
    (_, i) =>
      `<trkpt lat="${54.1 + i * 1e-4}" lon="7.3"><time>${new Date(1_800_000_000_000 + 3000 * i).toISOString()}</time></trkpt>`,
  );
  return `<gpx version="1.1"><trk><name>Along the mole</name><trkseg>${points.join('')}</trkseg></trk></gpx>`;
};

test('the course of the race or of a kept run serves a session, and comes back with a backup', {
  timeout: 60_000,
}, async () => {
  opened = await open('#/runs', { size: SIZES.phone });
  const { page, complaints } = opened;
  await giveFile(page, 'Open a run: log or GPX', 'mole.gpx', timed());
  await page
    .getByRole('button', { name: /Along the mole/ })
    .first()
    .waitFor();
  await show(page, '#/course');
  await giveFile(page, 'Open a course', 'dyke.gpx', dyke());
  await page.getByRole('heading', { name: 'Along the dyke' }).waitFor();

  await show(page, '#/practice');
  await page.getByRole('button', { name: 'The course of the race' }).click();
  await page.getByRole('img', { name: 'The course, Along the dyke, drawn as a line' }).waitFor();
  await page.getByRole('button', { name: 'From a run on this device' }).click();
  await page.getByRole('button', { name: /^Along the mole, \d{4}-/ }).click();
  await page.getByText(/^One way, 1\.\d\d km/).waitFor();

  await show(page, '#/runs');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save everything as one file' }).click(),
  ]);
  const backup = (await (await download.createReadStream()).toArray()).join('');
  await show(page, '#/practice');
  await page.getByRole('button', { name: 'Remove the course' }).click();
  await page.getByRole('button', { name: 'Open a course' }).waitFor();
  await show(page, '#/runs');
  await giveFile(page, 'Restore everything', 'all.json', backup);
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('soundline.practiceCourse')))
    .toContain('Along the mole');
  expect(complaints).toEqual([]);
});
