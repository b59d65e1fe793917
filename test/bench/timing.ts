import type { Browser, BrowserContext, Page } from 'playwright-core';
import { COUNTDOWN_LEAD_S } from '../../src/voice/tones/family.ts';
import { heardOf, listen, offFrom } from '../browser/support/heardSamples.ts';
import { countdownsOf, doSession } from '../browser/support/session.ts';
import { type SpokenCall, spokenCalls } from '../browser/support/spoken.ts';
import { tapped, tapSound } from '../browser/support/tap.ts';
import { type Served, serveBuild } from './page/served.ts';
import { fixed, printTable } from './table.ts';

const LEG_S = 10;
const REHEARSED_S = 90;
/** Upper ends of the bins of a histogram, ms. */
const BINS_MS = [1, 2, 5, 10, 20, 50, 100, 200, 300];

const histogram = (what: string, valuesS: readonly number[]): string[] => {
  const ms = valuesS.map((s) => Math.abs(s) * 1000).sort((a, b) => a - b);
  const bins = BINS_MS.map((to, i) => {
    const from = BINS_MS[i - 1] ?? 0;
    return ms.filter((x) => x >= from && x < to).length;
  });
  const beyond = ms.filter((x) => x >= (BINS_MS.at(-1) ?? 0)).length;
  return [
    what,
    String(ms.length),
    ...[...bins, beyond].map((n) => (n === 0 ? '' : String(n))),
    fixed(ms.at(-1) ?? Number.NaN, 1),
  ];
};

/** A page with a tap on its sound, in a context that lets the listener past the page's policy. */
const openWith = async (browser: Browser, url: string): Promise<{ page: Page; context: BrowserContext }> => {
  const context = await browser.newContext({ bypassCSP: true });
  // What the bench's own compiler puts into functions, which the page does not have.
  await context.addInitScript('globalThis.__name = (f) => f');
  await listen(context);
  const page = await context.newPage();
  await tapSound(page);
  await page.goto(url);
  return { page, context };
};

const countdowns = async (browser: Browser, served: Served, legs: number) => {
  const { page, context } = await openWith(browser, `${served.origin}/#/practice`);
  const startedMs = await doSession(page, legs, LEG_S);
  const heard = await heardOf(page);
  const tones = countdownsOf((await tapped(page)).started);
  await context.close();
  const momentS = (leg: number): number =>
    (startedMs + 1000 * LEG_S * (leg + 1) + heard.clockOffsetMs) / 1000 - heard.latencyS;
  return {
    ticks: tones.flatMap(({ whenS }) => [0, 1, 2, 3].map((tick) => offFrom(heard, whenS + tick))),
    moments: tones.map(({ whenS }, leg) => whenS + COUNTDOWN_LEAD_S - momentS(leg)),
  };
};

/** Silence between two sounds of a call that follow each other, seconds. */
const gapsOf = ({ sources }: SpokenCall): number[] =>
  sources.slice(1).map((next, i) => {
    const { whenS = 0, lengthS, bufferS = 0 } = sources[i] ?? {};
    return next.whenS - (whenS + (lengthS ?? bufferS));
  });

const demoCalls = async (browser: Browser, served: Served, seconds: number): Promise<SpokenCall[]> => {
  const { page, context } = await openWith(browser, `${served.origin}/#/rehearse`);
  await page.locator('[data-sound]:not([data-sound="loading"])').waitFor({ state: 'attached' });
  await page.getByLabel('60×').check();
  await page.getByRole('button', { name: 'Hear the demo race' }).click();
  await page.waitForTimeout(1000 * seconds);
  const calls = spokenCalls((await tapped(page)).started);
  await context.close();
  return calls;
};

/** How near to its moment everything is heard, in live Chromium, on the audio clock. */
export const printTiming = async (quick: boolean): Promise<void> => {
  const served = await serveBuild();
  const browser = await served.launch();
  try {
    const { ticks, moments } = await countdowns(browser, served, quick ? 2 : 6);
    const calls = await demoCalls(browser, served, quick ? 25 : REHEARSED_S);
    const checkpoints = calls.filter(({ tone, sources }) => tone && (sources[0]?.bufferS ?? 1) < 0.2);
    printTable(
      'On the moment, in live Chromium: how many are off by so many ms',
      ['what', 'number', ...BINS_MS.map((to, i) => `${BINS_MS[i - 1] ?? 0}–${to}`), 'more', 'most, ms'],
      [
        histogram('each tick of a countdown, heard against its second', ticks),
        histogram("a countdown's long note against the end of the leg by the run's clock", moments),
        histogram(
          'first word of a checkpoint or board behind the instant of its call',
          checkpoints.map(({ sources, beginS }) => (sources[1]?.whenS ?? beginS) - beginS),
        ),
        histogram('silence between two sounds of a call', calls.flatMap(gapsOf)),
      ],
    );
  } finally {
    await browser.close();
    await served.close();
  }
};
