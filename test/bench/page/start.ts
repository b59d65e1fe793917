import { loadavg } from 'node:os';
import type { Browser, Page } from 'playwright-core';
import { fixed, printTable } from '../table.ts';
import { traceMainThread } from './mainThread.ts';
import type { Served } from './served.ts';

/** What Chromium's developer tools take for a mid-range phone. */
const SLOWED = 4;
const TRIES = 5;
/** So long nothing long may come any more: the quiet window of ‘time to interactive’ (memory). */
const QUIET_MS = 5000;
/** A task longer than this makes a touch wait (W3C Long Tasks; memory). */
const LONG_MS = 50;

const ROUTES = ['run', 'ready', 'plan', 'rehearse'] as const;
type Visit = 'first visit' | 'again, without a network';

/** Runs in the page, before its scripts: a heading and a button were painted, and a timer set after that was answered. */
const markShown = (): void => {
  const look = new MutationObserver(() => {
    if (document.querySelector('main h1') === null || document.querySelector('main button') === null) return;
    look.disconnect();
    requestAnimationFrame(() => setTimeout(() => performance.mark('shown')));
  });
  look.observe(document, { childList: true, subtree: true });
  const long: [number, number][] = [];
  Object.assign(window, { long });
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) long.push([startTime, duration]);
  }).observe({ type: 'longtask', buffered: true });
};

/** By the clock, and by the processor time of the page's main thread alone, which other work on the machine leaves as it is. */
interface Opened {
  readonly shownMs: number;
  readonly interactiveMs: number;
  readonly shownCpuMs: number;
  readonly interactiveCpuMs: number;
  readonly longestCpuMs: number;
}

const byTheClock = async (page: Page): Promise<Pick<Opened, 'shownMs' | 'interactiveMs'>> => {
  const { shownMs, long } = await page.evaluate(() => ({
    shownMs: performance.getEntriesByName('shown')[0]?.startTime ?? Number.NaN,
    long: (window as unknown as { long: [number, number][] }).long,
  }));
  return { shownMs, interactiveMs: Math.max(shownMs, ...long.map(([at, length]) => at + length)) };
};

const opened = async (browser: Browser, url: string, visit: Visit, slowed: number): Promise<Opened> => {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.addInitScript(markShown);
  if (visit !== 'first visit') {
    await page.goto(url);
    await page.locator('[data-offline="ready"]').waitFor({ state: 'attached', timeout: 60_000 });
    await context.setOffline(true);
  }
  const cdp = await context.newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const traced = await traceMainThread(browser, 'shown');
  await (visit === 'first visit' ? page.goto(url) : page.reload());
  await page.waitForFunction(() => performance.getEntriesByName('shown').length > 0);
  await page.waitForTimeout(QUIET_MS);
  const clock = await byTheClock(page);
  const { tasks, marksUs } = await traced();
  const shownUs = marksUs.get('shown') ?? Number.NaN;
  const fromUs = shownUs - 1000 * clock.shownMs;
  const cpuMs = (untilUs: number): number =>
    tasks.filter((t) => t.atUs >= fromUs && t.atUs <= untilUs).reduce((sum, t) => sum + t.cpuUs, 0) / 1000;
  const mine = tasks.filter((t) => t.atUs >= fromUs);
  const lastLongUs = Math.max(
    shownUs,
    ...mine.filter((t) => t.cpuUs > (1000 * LONG_MS) / SLOWED).map((t) => t.atUs),
  );
  return {
    ...clock,
    shownCpuMs: cpuMs(shownUs),
    interactiveCpuMs: cpuMs(lastLongUs),
    longestCpuMs: Math.max(...mine.map((t) => t.cpuUs)) / 1000,
  };
};

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** How soon a page can be used, in a browser that has just been started. */
export const printStart = async (served: Served, tries = TRIES): Promise<void> => {
  const rows: string[][] = [];
  const loads: number[] = [];
  for (const visit of ['first visit', 'again, without a network'] as const)
    for (const route of ROUTES) {
      const slow: Opened[] = [];
      const full: Opened[] = [];
      for (let i = 0; i < tries; i++)
        for (const [slowed, all] of [
          [SLOWED, slow],
          [1, full],
        ] as const) {
          const browser = await served.launch();
          all.push(await opened(browser, `${served.origin}/#/${route}`, visit, slowed));
          await browser.close();
          loads.push(loadavg()[0] ?? 0);
        }
      const seconds = (values: readonly number[]): string => fixed(median(values) / 1000, 2);
      rows.push([
        `${route}, ${visit}`,
        seconds(slow.map((o) => o.shownMs)),
        seconds(slow.map((o) => o.interactiveMs)),
        fixed(Math.min(...slow.map((o) => o.interactiveMs)) / 1000, 2),
        seconds(full.map((o) => SLOWED * o.shownCpuMs)),
        seconds(full.map((o) => SLOWED * o.interactiveCpuMs)),
        seconds(full.map((o) => SLOWED * o.longestCpuMs)),
      ]);
    }
  printTable(
    `The page opened, processor slowed ${SLOWED} times: medians of ${tries}, load of the machine ${fixed(median(loads), 1)}`,
    [
      'screen',
      'by the clock: shown, s',
      `no task over ${LONG_MS} ms after, s`,
      'least of all tries, s',
      `${SLOWED} × processor time: to shown, s`,
      'to the last long task, s',
      'longest task, s',
    ],
    rows,
  );
};
