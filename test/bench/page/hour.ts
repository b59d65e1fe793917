import type { CDPSession, Page } from 'playwright-core';
import { fixed, percent, printTable } from '../table.ts';
import { codeBytes } from './codeHeld.ts';
import { openLongRun, pass } from './longRun.ts';
import { traceMainThread } from './mainThread.ts';
import type { Served } from './served.ts';

const HOUR_S = 3600;
const HOURS = 6;
const PARTS = 12;

interface Left {
  readonly heapMB: number;
  /** What of it is script and what the browser compiled of it. */
  readonly codeMB: number;
  readonly nodes: number;
  readonly listeners: number;
}

const leftOf = async (cdp: CDPSession): Promise<Left> => {
  // What the page's own objects held on to is seen as rubbish only once they are.
  for (let i = 0; i < 3; i++) await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize } = await cdp.send('Runtime.getHeapUsage');
  const { metrics } = await cdp.send('Performance.getMetrics');
  const metric = (name: string): number => metrics.find((m) => m.name === name)?.value ?? Number.NaN;
  const [nodes, listeners] = [metric('Nodes'), metric('JSEventListeners')];
  return { heapMB: usedSize / 1e6, codeMB: (await codeBytes(cdp)) / 1e6, nodes, listeners };
};

/** Processor time of the main thread over some seconds of the run, every one of them drawn. */
const shareOf = async (page: Page, seconds: number): Promise<number> => {
  const browser = page.context().browser();
  if (browser === null) throw new Error('no browser');
  const traced = await traceMainThread(browser, 'passed');
  await pass(page, seconds, true);
  await page.evaluate(() => performance.mark('passed'));
  const { tasks } = await traced();
  return tasks.reduce((sum, t) => sum + t.cpuUs, 0) / 1e6 / seconds;
};

/**
 * What hours of a run cost the page: its main thread's share of one core, and what is left in its memory.
 *
 * Every hour is drawn and looked at in the same way. Drawing the first alone, and letting the later ones pass without, held
 * two programs against each other: what the browser compiles follows what runs, and was most of what the later ones had more.
 */
export const printHours = async (served: Served, hours = HOURS): Promise<void> => {
  const page = await openLongRun(served);
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable');
  const rows: string[][] = [];
  let firstMB: number | null = null;
  for (let hour = 1; hour <= hours; hour++) {
    // A trace of an hour is more than Chromium keeps: its parts are looked at, one after the other.
    const shares: number[] = [];
    for (let part = 0; part < PARTS; part++) shares.push(await shareOf(page, HOUR_S / PARTS));
    // Looking at the face puts the driver's own script into the page: before the heap is measured, in each hour alike.
    const shown = await page.locator('.face-figures .figure').allTextContents();
    const { heapMB, codeMB, nodes, listeners } = await leftOf(cdp);
    firstMB ??= heapMB;
    rows.push([
      `${hour} h`,
      percent(shares.reduce((a, b) => a + b, 0) / shares.length, 2),
      percent(Math.max(...shares), 2),
      fixed(heapMB, 2),
      percent(heapMB / firstMB - 1, 1),
      fixed(heapMB - codeMB, 2),
      String(nodes),
      String(listeners),
      shown.join(' / '),
    ]);
  }
  await page.context().browser()?.close();
  printTable(
    'Hours of a run on the page, a fix and a redraw a second',
    [
      'after',
      'main thread, share of one core here',
      'worst five minutes',
      'heap, MB',
      'more than after the first hour',
      'heap without compiled code, MB',
      'DOM nodes',
      'listeners',
      'on the face',
    ],
    rows,
  );
};
