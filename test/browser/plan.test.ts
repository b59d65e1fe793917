import { text } from 'node:stream/consumers';
import { describe, expect, test } from 'vitest';
import { parseRacePlan } from '../../src/core/plan/parseRacePlan.ts';
import { open, SIZES } from './support/open.ts';

const GPX = `<?xml version="1.0"?><gpx version="1.1" creator="hand" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>Out along the mole</name><trkseg>
${Array.from({ length: 60 }, (_, i) => `<trkpt lat="${54.1 + i * 0.0008}" lon="7.3"><ele>${10 + (i % 20)}</ele></trkpt>`).join('\n')}
</trkseg></trk></gpx>`;

describe('the plan', () => {
  test('shows an error beside its field, in words, and keeps the last good schedule', async () => {
    const { page, close } = await open('#/plan', { size: SIZES.desk });
    const finish = page.locator('.plan-table tr[data-what="finish"] td').first();
    const before = await finish.textContent();
    const goal = page.getByLabel('Goal time', { exact: true });
    await goal.fill('soon');
    expect(await goal.getAttribute('aria-invalid')).toBe('true');
    const about = (await goal.getAttribute('aria-describedby')) ?? '';
    expect(await page.locator(`[id="${about}"]`).textContent()).toContain('Write a time');
    expect(await finish.textContent()).toBe(before);
    await goal.fill('1:30:00');
    expect(await goal.getAttribute('aria-invalid')).toBe('false');
    expect(await finish.textContent()).not.toBe(before);
    await close();
  });

  test('refuses at the field what the plan file would refuse', async () => {
    const { page, close } = await open('#/plan', { size: SIZES.desk });
    await page.getByLabel('Checkpoints', { exact: true }).fill('5, 10, 99');
    await page.getByText('this lies beyond it').waitFor();
    expect(await page.getByLabel('Checkpoints', { exact: true }).getAttribute('aria-invalid')).toBe('true');
    await close();
  });

  test('is there again at the next visit', async () => {
    const { page, close } = await open('#/plan');
    await page.getByLabel('Race', { exact: true }).selectOption('10 km');
    await page.getByLabel('Goal time', { exact: true }).fill('44:10');
    // What lay beyond the new finish is gone, so that the plan holds as it stands.
    expect(await page.locator('[aria-invalid="true"]').count()).toBe(0);
    expect(await page.locator('.plan-table tr').count()).toBe(1 + 10);
    await expect.poll(() => page.evaluate(() => localStorage.getItem('soundline.plan'))).toContain('2650');
    await page.reload();
    expect(await page.getByLabel('Goal time', { exact: true }).inputValue()).toBe('44:10');
    expect(await page.getByLabel('Distance', { exact: true }).inputValue()).toBe('10');
    await close();
  });

  test('goes out as a plan file and comes back in', async () => {
    const { page, close } = await open('#/plan');
    await page.getByLabel('Name', { exact: true }).fill('Quay to quay');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the plan' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe('quay-to-quay.json');
    const saved = await text(await file.createReadStream());
    const got = parseRacePlan(saved);
    expect(got.ok && got.value.name).toBe('Quay to quay');
    await page.locator('input[type="file"][aria-label="Open a plan"]').setInputFiles({
      name: 'other.json',
      mimeType: 'application/json',
      buffer: Buffer.from(saved.replace('Quay to quay', 'Pier to pier')),
    });
    await expect.poll(() => page.getByLabel('Name', { exact: true }).inputValue()).toBe('Pier to pier');
    await page.locator('input[type="file"][aria-label="Open a plan"]').setInputFiles({
      name: 'bad.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"version":1,"kind":"race","distanceM":-5,"goalS":60}'),
    });
    await page.getByRole('alert').getByText('distanceM').waitFor();
    await close();
  });

  test('takes a course, draws its ground and holds on to it', async () => {
    const { page, close } = await open('#/plan', { size: SIZES.desk });
    const courses = page.locator('input[type="file"][aria-label*="course"]');
    await courses.setInputFiles({
      name: 'mole.gpx',
      mimeType: 'application/gpx+xml',
      buffer: Buffer.from(GPX),
    });
    await page.getByText('Out along the mole').waitFor();
    await page.locator('.chart .ground').waitFor();
    await page.reload();
    await page.getByText('Out along the mole').waitFor();
    await courses.setInputFiles({ name: 'x.gpx', mimeType: 'text/xml', buffer: Buffer.from('no course') });
    await page.getByRole('alert').getByText('GPX').waitFor();
    await page.getByRole('button', { name: 'Without a course' }).click();
    await page.getByText('With the course as GPX').waitFor();
    await close();
  });
});
