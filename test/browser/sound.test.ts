import { chromium, type Page } from 'playwright-core';
import { afterEach, describe, expect, inject, test } from 'vitest';
import { type Opened, open, voiceLoaded } from './support/open.ts';
import { heardWords, spokenCalls } from './support/spoken.ts';
import { contextsOf, freezeSound, interruptSound, tapped, tapSound } from './support/tap.ts';

const begin = async (opened: Opened): Promise<void> => {
  await voiceLoaded(opened.page);
  await opened.page.getByLabel('60×').check();
  await opened.page.getByRole('button', { name: 'Hear the demo race' }).click();
};

const soundsMore = async ({ page }: Opened): Promise<void> => {
  const before = (await tapped(page)).started.length;
  await expect
    .poll(async () => (await tapped(page)).started.length, { timeout: 40_000 })
    .toBeGreaterThan(before);
};

/** Whether the voice is there, how its context stands, and how much was sounded. */
const STATES = `[
  document.querySelector('[data-sound]:not([data-sound="loading"])') ? 'loaded' : 'loading',
  tap.contexts.at(-1)?.state,
  tap.started.filter((s) => s.bufferS > 0.01).length,
]`;

const untouched = async <Answer>(page: Page, expression: string): Promise<Answer> => {
  const cdp = await page.context().newCDPSession(page);
  const { result } = await cdp.send('Runtime.evaluate', {
    expression,
    returnByValue: true,
    userGesture: false,
  });
  await cdp.detach();
  return result.value as Answer;
};

describe('the sound', () => {
  let opened: Opened;
  afterEach(() => opened?.close());

  test('is silent and asleep before the first touch', async () => {
    // Whatever the tester asks a page counts as a touch, even looking for its heading; this way of asking does not.
    const states = (page: Page): Promise<readonly unknown[]> => untouched(page, STATES);
    const browser = await chromium.connect(inject('browserAt'));
    const page = await (await browser.newContext()).newPage();
    await tapSound(page);
    await page.goto(`${inject('origin')}/`);
    await expect.poll(() => states(page), { timeout: 20_000 }).toEqual(['loaded', 'suspended', 0]);
    expect(await untouched(page, 'navigator.userActivation.hasBeenActive')).toBe(false);
    await browser.close();
  });

  test('loses no call to a press before the voice is loaded', async () => {
    opened = await open('', {
      before: (context) =>
        context.route('**/voice/*.mp3', async (route) => {
          await new Promise((done) => setTimeout(done, 1500));
          await route.continue();
        }),
    });
    const { page } = opened;
    await page.getByLabel('60×').check();
    await page.getByRole('button', { name: 'Hear the demo race' }).click();
    await page.locator('.call').first().waitFor({ timeout: 40_000 });
    const [first] = spokenCalls((await tapped(page)).started);
    expect(heardWords(first?.words ?? '')).toBe(
      heardWords((await page.locator('.call .call-words').last().textContent()) ?? ''),
    );
  });

  test('survives the change of context that howler makes on a phone of 48 kHz', async () => {
    opened = await open('', {
      before: (context) =>
        context.addInitScript(() => {
          const Original = AudioContext;
          window.AudioContext = class extends Original {
            constructor() {
              super({ sampleRate: 48_000 });
            }
          };
        }),
    });
    await begin(opened);
    await soundsMore(opened);
    const contexts = await contextsOf(opened.page);
    expect(contexts.map((c) => [c.state, c.sampleRate])).toEqual([
      ['closed', 48_000],
      ['running', 48_000],
    ]);
  });

  test('is not put to sleep by a minute in which nothing is said', async () => {
    opened = await open('', { before: (context) => context.clock.install() });
    await begin(opened);
    await opened.page.getByRole('button', { name: 'Pause' }).click();
    // Howler's own timer would suspend the context after 30 s.
    await opened.page.clock.fastForward(61_000);
    await opened.page.clock.runFor(500);
    const before = (await contextsOf(opened.page)).at(-1);
    expect(before?.state).toBe('running');
    await expect
      .poll(async () => (await contextsOf(opened.page)).at(-1)?.currentTime ?? 0)
      .toBeGreaterThan(before?.currentTime ?? 0);
  });

  test('comes back after an interruption, and what fell into it is not said late', async () => {
    opened = await open('');
    await begin(opened);
    await soundsMore(opened);
    await interruptSound(opened.page);
    await expect.poll(async () => (await contextsOf(opened.page)).at(-1)?.state).toBe('running');
    await soundsMore(opened);
    const { started } = await tapped(opened.page);
    expect(started.filter((s) => s.whenS <= s.nowS)).toEqual([]);
    expect(await contextsOf(opened.page)).toHaveLength(1);
  });

  test('is built anew where its clock stands still though it says that it runs', async () => {
    opened = await open('');
    await begin(opened);
    await soundsMore(opened);
    await freezeSound(opened.page);
    await expect.poll(async () => (await contextsOf(opened.page)).length, { timeout: 15_000 }).toBe(2);
    await soundsMore(opened);
    expect((await contextsOf(opened.page)).at(-1)?.state).toBe('running');
  });
});
