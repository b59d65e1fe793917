import { describe, expect, test } from 'vitest';
import { open } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';
import { heardWords, spokenCalls } from './support/spoken.ts';
import { tapped } from './support/tap.ts';

const PLAN = {
  name: 'Pier dash',
  distanceM: 900,
  goalS: 190,
  pacing: 'pace',
  checkpointsM: [60],
  pacer: { flagS: 190, by: 'gun' },
  rival: { name: 'Ines', splits: [{ atM: 900, timeS: 220 }] },
};

describe('others on the road', () => {
  test('one press beside the pacer is answered, on the face or the headset, and the rival follows the checkpoint', async () => {
    const { page, close } = await open('#/run', {
      plan: PLAN,
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
    await page.getByText('No position yet').waitFor();
    await runner.stand(3);
    await page.getByRole('button', { name: 'Start' }).click();
    await runner.runTo(95, 4.5);
    await page.getByRole('button', { name: 'Level with the pacer' }).click();
    await runner.runTo(120, 4.5);
    const said = async (): Promise<string> =>
      heardWords(
        spokenCalls((await tapped(page)).started)
          .map((c) => c.words)
          .join(' / '),
      );
    await expect.poll(said, { timeout: 15_000 }).toContain('too early to tell');
    await expect.poll(said, { timeout: 15_000 }).toContain('to your rival');
    // Three presses of a headset's button, which arrive as 'previous', ask the same.
    const before = (await said()).split('too early to tell').length;
    await page.evaluate(() =>
      (window as unknown as { handlers: Map<string, () => void> }).handlers.get('previoustrack')?.(),
    );
    await expect
      .poll(async () => (await said()).split('too early to tell').length, { timeout: 20_000 })
      .toBe(before + 1);
    await close();
  });
});
