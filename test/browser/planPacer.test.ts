import { describe, expect, test } from 'vitest';
import { pressHeadset, pretendHeadset } from './support/headset.ts';
import { wordsHeard } from './support/heard.ts';
import { open } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';

const PLAN = {
  name: 'Pier dash',
  distanceM: 900,
  goalS: 190,
  pacing: 'pace',
  checkpointsM: [40],
  pacer: { flagS: 190, by: 'gun' },
  rival: { name: 'Ines', splits: [{ atM: 900, timeS: 330 }] },
};

describe('others on the road', () => {
  test('one press beside the pacer is answered, on the face or the headset, and the rival follows the checkpoint', async () => {
    const { page, close } = await open('#/run', {
      plan: PLAN,
      before: pretendHeadset,
    });
    const runner = await roadRunner(page);
    await page.getByLabel("Use the headset's buttons").check();
    await page.getByRole('button', { name: 'Switch on' }).click();
    await page.getByText('No position yet').waitFor();
    await runner.stand(3);
    await page.getByRole('button', { name: 'Start' }).click();
    await runner.runTo(60, 4.5);
    await page.getByRole('button', { name: 'Level with the pacer' }).click();
    await runner.runTo(80, 4.5);
    const said = async (): Promise<string> => (await wordsHeard(page)).join(' / ');
    await expect.poll(said, { timeout: 15_000 }).toContain('too early to tell');
    await expect.poll(said, { timeout: 15_000 }).toContain('to your rival');
    // Three presses of a headset's button, which arrive as 'previous', ask the same.
    const before = (await said()).split('too early to tell').length;
    await pressHeadset(page, 'previoustrack');
    await expect
      .poll(async () => (await said()).split('too early to tell').length, { timeout: 20_000 })
      .toBe(before + 1);
    await close();
  });
});
