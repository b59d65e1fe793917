import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { sidewaysPx } from './support/fits.ts';
import { giveFile } from './support/giveFile.ts';
import { open, SIZES, show } from './support/open.ts';

/** A lap around a block of about 4 km, with heights and a water point by name. */
const corner = [
  [54.1, 7.3],
  [54.109, 7.3],
  [54.109, 7.3154],
  [54.1, 7.3154],
  [54.1, 7.3001],
] as const;
const dots = corner.slice(1).flatMap(([lat, lon], i) => {
  const [lat0 = 0, lon0 = 0] = corner[i] ?? [];
  return Array.from({ length: 40 }, (_, k) => [
    lat0 + ((lat - lat0) * k) / 40,
    lon0 + ((lon - lon0) * k) / 40,
  ]);
});
const GPX = `<?xml version="1.0"?><gpx version="1.1" creator="hand" xmlns="http://www.topografix.com/GPX/1/1">
<wpt lat="54.109" lon="7.3077"><name>Water</name></wpt>
<trk><name>Around the basin</name><trkseg>${dots.map(([lat, lon], i) => `<trkpt lat="${lat}" lon="${lon}"><ele>${10 + 8 * Math.sin(i / 12)}</ele></trkpt>`).join('')}</trkseg></trk></gpx>`;

const PLAN = { name: 'Basin four', distanceM: 4000, goalS: 1200, unit: 'km', pacing: 'pace' };

const dropped = { name: 'basin.gpx', mimeType: 'application/gpx+xml', buffer: Buffer.from(GPX) };

const kept = async (page: Page): Promise<Record<string, unknown>> =>
  JSON.parse((await page.evaluate(() => localStorage.getItem('soundline.plan'))) ?? '{}');

describe.each([
  ['phone', SIZES.phone],
  ['desk', SIZES.desk],
])('the course on a %s', (_name, size) => {
  test('is drawn from a file, its length held against the race, its water found', async () => {
    const { page, complaints, close } = await open('#/course', { size, plan: PLAN });
    await page.locator('input[type="file"]').setInputFiles(dropped);
    await page.getByRole('heading', { name: 'Around the basin' }).waitFor();
    expect(await page.locator('.map-line').getAttribute('d')).toMatch(/^M[\d.]+ [\d.]+L/);
    const facts = (await page.locator('.course-facts').textContent()) ?? '';
    expect(facts).toMatch(/Recorded(3|4)\.\d{3} km/);
    expect(facts).toContain('Official4.000 km');
    expect(facts).toMatch(/Scaled by[01]\.\d{4}/);
    expect(
      await page.getByText('1 stations found').or(page.getByText('put into the plan')).count(),
    ).toBeGreaterThan(0);
    expect(((await kept(page))['stations'] as unknown[]).length).toBe(1);
    expect(await page.locator('.profile').count()).toBe(1);
    expect(await sidewaysPx(page)).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe('the course', () => {
  test('takes what is pointed to on the map: a station, a gel, a board that is wrong, a tunnel', async () => {
    const { page, close } = await open('#/course', { size: SIZES.desk, plan: PLAN });
    await page.locator('input[type="file"]').setInputFiles(dropped);
    const map = page.locator('.map svg');
    await map.waitFor();
    const box = await map.boundingBox();
    if (box === null) throw new Error('no map');
    // The upper right corner of the block is half-way round.
    await map.click({ position: { x: box.width - 28, y: 28 } });
    const at = Number(await page.locator('.slide .figure').textContent());
    expect(at).toBeGreaterThan(1.8);
    expect(at).toBeLessThan(2.2);
    await page.getByRole('button', { name: 'My gel here' }).click();
    await page.getByRole('button', { name: 'Station here' }).click();
    await page.getByRole('button', { name: 'Board 2 stands here' }).click();
    await page.getByRole('button', { name: 'Tunnel from here' }).click();
    await page.locator('.slide input').fill('3000');
    await page.getByRole('button', { name: /Tunnel from .* to here/ }).click();
    const plan = await kept(page);
    const places = (plan['fuel'] as { atM: number }[]).map((f) => f.atM);
    expect(places).toHaveLength(1);
    expect(Math.abs((places[0] ?? 0) - 1000 * at)).toBeLessThan(10);
    expect(plan['wrongBoards']).toEqual([{ saysM: 2000, standsAtM: places[0] }]);
    expect(plan['tunnels']).toEqual([{ fromM: places[0], toM: 3000 }]);
    await page.getByRole('button', { name: /^Remove tunnel/ }).click();
    expect((await kept(page))['tunnels']).toBeUndefined();
    await close();
  });

  test('says how often a lap is run, and follows the plan', async () => {
    const { page, close } = await open('#/course', { plan: { ...PLAN, distanceM: 8000, goalS: 2400 } });
    await page.locator('input[type="file"]').setInputFiles(dropped);
    await page.getByText('run 2 times').waitFor();
    await page.goto(page.url().replace('#/course', '#/plan'));
    await page.getByLabel('Distance').fill('12');
    await page.goto(page.url().replace('#/plan', '#/course'));
    await page.getByText('run 3 times').waitFor();
    await close();
  });

  test('doubts a course that is longer than the race', async () => {
    const { page, close } = await open('#/course', { plan: { ...PLAN, distanceM: 3000, goalS: 900 } });
    await page.locator('input[type="file"]').setInputFiles(dropped);
    await page.getByText('Is it the right course').waitFor();
    expect(await page.getByText(/run .* times/).count()).toBe(0);
    await close();
  });

  test('takes a file that is dropped on it, and says what is wrong with another', async () => {
    const { page, complaints, close } = await open('#/course', { size: SIZES.desk, plan: PLAN });
    const drop = async (text: string): Promise<void> => {
      const data = await page.evaluateHandle((content) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([content], 'dropped.gpx'));
        return transfer;
      }, text);
      await page.locator('.drop').dispatchEvent('drop', { dataTransfer: data });
    };
    await drop('no course at all');
    await page.getByRole('alert').getByText('expected a GPX file').waitFor();
    await drop(
      GPX.replace(
        'Around the basin',
        '&lt;img src=x onerror=alert(1)&gt;&lt;script&gt;alert(2)&lt;/script&gt;',
      ),
    );
    await page.getByRole('heading', { name: '<img src=x onerror=alert(1)>' }).waitFor();
    expect(await page.locator('main img, main script').count()).toBe(0);
    await drop(GPX);
    await page.getByRole('heading', { name: 'Around the basin' }).waitFor();
    expect(await page.getByRole('alert').count()).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });

  test('is drawn from a run that this device has kept', async () => {
    const { page, close } = await open('#/runs', { plan: PLAN });
    const point = (i: number): string =>
      `<trkpt lat="${54.1 + i * 1e-4}" lon="7.3"><time>${new Date(1_800_000_000_000 + 3000 * i).toISOString()}</time></trkpt>`;
    const track = Array.from({ length: 100 }, (_, i) => point(i)).join('');
    await giveFile(
      page,
      'Open a run: log or GPX',
      'mole.gpx',
      `<gpx version="1.1"><trk><name>Along the mole</name><trkseg>${track}</trkseg></trk></gpx>`,
    );
    await page
      .getByRole('button', { name: /Along the mole/ })
      .first()
      .waitFor();
    await show(page, '#/course');
    await page.getByRole('button', { name: 'From a run on this device' }).click();
    await page.getByRole('button', { name: /^Along the mole, \d{4}-/ }).click();
    await page.getByRole('heading', { name: /From the run Along the mole/ }).waitFor();
    await page.getByText('Drawn from a run of yours').waitFor();
    expect(await page.locator('.map-line').count()).toBe(1);
    await close();
  });
});
