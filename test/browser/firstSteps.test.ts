import { describe, expect, test } from 'vitest';
import { PREPARE } from '../../src/screens/route.ts';
import { open, SIZES, show } from './support/open.ts';

describe('who comes for the first time', () => {
  test('is led from the demo to a plan of their own, and on', async () => {
    const { page, complaints, close } = await open('');
    await page.getByRole('link', { name: 'Make a plan' }).click();
    await page.getByText('This is the plan of the demo race').waitFor();
    await page.getByRole('button', { name: 'Make it my own' }).click();
    await page.getByRole('status').getByText('Yours now').waitFor();
    expect(await page.getByLabel('Name').inputValue()).toBe('My race');
    expect(await page.getByLabel(/^Station \d+ at$/).count()).toBe(0);
    await page.getByLabel('Goal time').fill('1:45');
    await page.locator('.key-times').getByText('1:44:39').waitFor();
    await page.getByRole('link', { name: 'Hear my race' }).click();
    await page.getByRole('button', { name: 'Hear my race' }).waitFor();
    await page.goBack();
    await page.getByRole('link', { name: 'Next: Fuel' }).click();
    await page.getByRole('heading', { level: 1, name: 'Fuel' }).waitFor();
    await expect.poll(() => page.title()).toBe('Fuel · Soundline');
    expect(complaints).toEqual([]);
    await close();
  });

  test('is told on every step, and before a run, that the plan is still the demo race’s', async () => {
    const { page, close } = await open('');
    for (const step of [...PREPARE, 'run']) {
      await show(page, `#/${step}`);
      await page.getByText('This is the plan of the demo race').waitFor();
    }
    await page.getByRole('link', { name: 'Make a plan' }).click();
    await page.getByRole('button', { name: 'Make it my own' }).click();
    await show(page, '#/run');
    expect(await page.getByText('This is the plan of the demo race').count()).toBe(0);
    // Who has a race of their own hears that one.
    await show(page, '#/rehearse');
    await page.getByRole('button', { name: 'Hear my race' }).waitFor();
    await close();
  });

  test('finds the one press of a run without a look for it', async () => {
    const { page, close } = await open('#/run');
    const box = await page.getByRole('button', { name: 'Switch on' }).boundingBox();
    expect((box?.y ?? 9999) + (box?.height ?? 0)).toBeLessThan(SIZES.phone.height);
    await close();
  });

  test('who got a link sees what is in it before anything else', async () => {
    const { page, close } = await open('#/plan');
    await page.getByRole('link', { name: 'Hand it to another phone' }).click();
    const link = await page.getByLabel(/^The link/).inputValue();
    await close();
    const other = await open(link.slice(link.indexOf('#')));
    await other.page.getByText('A plan is here').waitFor();
    expect(await other.page.getByRole('heading', { level: 2 }).first().textContent()).toBe('Take');
    await other.close();
  });

  test('who goes by keys is past the bar with one', async () => {
    const { page, close } = await open('#/plan');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('MAIN');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('main') !== null)).toBe(true);
    await close();
  });

  test('who goes by keys goes on at the head of the next screen', async () => {
    const { page, close } = await open('#/plan');
    await page.getByRole('link', { name: 'Next: Fuel' }).press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Fuel' }).waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('MAIN');
    // A row that goes leaves the place to the browser.
    await show(page, '#/plan');
    await page.getByRole('button', { name: 'Remove station 1' }).press('Enter');
    expect(await page.evaluate(() => document.activeElement?.tagName)).not.toBe('MAIN');
    await close();
  });

  test('whose system chooses the colours sees what is chosen, and the curve', async () => {
    const { page, close } = await open('#/plan');
    await page.emulateMedia({ forcedColors: 'active' });
    const edgePx = (name: string): Promise<number> =>
      page
        .getByRole('radio', { name, exact: true })
        .evaluate((input) =>
          Number.parseFloat(getComputedStyle(input.nextElementSibling ?? input).borderTopWidth),
        );
    expect(await edgePx('Kilometres')).toBeGreaterThan(2 * (await edgePx('Miles')));
    const inks = await page.evaluate(() => {
      const curve = document.querySelector('.chart .curve');
      return [curve && getComputedStyle(curve).stroke, getComputedStyle(document.body).color];
    });
    expect(inks[0]).toBe(inks[1]);
    await close();
  });
});
