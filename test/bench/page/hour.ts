import type { CDPSession, Page } from 'playwright-core';
import { fixed, percent, printTable } from '../table.ts';
import { traceMainThread } from './mainThread.ts';
import type { Served } from './served.ts';

const HOUR_S = 3600;
const HOURS = 6;
const SPEED_MPS = 2.6;
/** As long as the hours, so that no finish ends them. */
const PLAN = {
  version: 1,
  kind: 'race',
  name: 'Long shore',
  distanceM: 80_000,
  goalS: 31_000,
  pacing: 'pace',
  checkpointsM: Array.from({ length: 70 }, (_, k) => 1000 * (k + 1)),
};

interface Fast {
  /** One second of the page: its timers, one fix, and the picture that they lead to if it is asked for. */
  readonly pass: (seconds: number, drawn: boolean) => Promise<void>;
}

/**
 * Runs in the page, before its scripts: a clock, timers and a receiver that run when they are told to. All else is the
 * page's own, and so is the work of a second: ten ticks, a fix, a redraw, a write to the log.
 */
const install = (speedMps: number): void => {
  const real = { setTimeout: setTimeout.bind(window), frame: requestAnimationFrame.bind(window) };
  const wallMs = Date.now();
  let nowMs = performance.now();
  const startMs = nowMs;
  const timers = new Map<number, { dueMs: number; everyMs: number | null; run: () => void }>();
  let nextId = 1_000_000;
  const add = (run: () => void, ms = 0, everyMs: number | null = null): number => {
    timers.set(++nextId, { dueMs: nowMs + Math.max(1, ms), everyMs, run });
    return nextId;
  };
  const drop = (id?: number): void => void timers.delete(id ?? 0);
  let running = false;
  const patienceMs = 10_000;
  let onFix: ((position: unknown) => void) | null = null;
  Object.defineProperty(navigator, 'geolocation', {
    value: {
      watchPosition: (done: (position: unknown) => void) => {
        onFix = done;
        return 1;
      },
      clearWatch: () => {},
    },
  });
  const begin = (): void => {
    running = true;
    nowMs = performance.now();
    const passedMs = (): number => nowMs - startMs;
    performance.now = () => nowMs;
    Date.now = () => wallMs + passedMs();
    Object.defineProperty(BaseAudioContext.prototype, 'currentTime', { get: () => nowMs / 1000 });
    // What sounds is set as ever, and over at once: nobody waits for it to be heard out.
    const { start } = AudioBufferSourceNode.prototype;
    AudioBufferSourceNode.prototype.start = function (_whenS?: number, fromS = 0) {
      start.call(this, 0, fromS, 0.01);
    };
  };
  const { setInterval: realInterval, setTimeout: realTimeout, clearInterval: realClear } = window;
  Object.assign(window, {
    setInterval: (run: () => void, ms: number) => (running ? add(run, ms, ms) : realInterval(run, ms)),
    // Long ones wait for the device, whose own time is not pressed together.
    setTimeout: (run: () => void, ms = 0) =>
      running && ms < patienceMs ? add(run, ms) : realTimeout(run, ms),
    clearInterval: (id?: number) => (timers.has(id ?? 0) ? drop(id) : realClear(id)),
    clearTimeout: (id?: number) => (timers.has(id ?? 0) ? drop(id) : realClear(id)),
  });
  let second = 0;
  const tick = (): void => {
    const untilMs = nowMs + 1000;
    for (;;) {
      let next: [number, { dueMs: number; everyMs: number | null; run: () => void }] | null = null;
      for (const entry of timers) if (next === null || entry[1].dueMs < next[1].dueMs) next = entry;
      if (next === null || next[1].dueMs > untilMs) break;
      const [id, timer] = next;
      nowMs = Math.max(nowMs, timer.dueMs);
      if (timer.everyMs === null) timers.delete(id);
      else timer.dueMs += timer.everyMs;
      timer.run();
    }
    nowMs = untilMs;
    second++;
    onFix?.({
      timestamp: Date.now(),
      coords: {
        latitude: 54 + (speedMps * second + 3 * Math.sin(second / 9)) / 111_300,
        longitude: 7 + (3 * Math.cos(second / 13)) / 65_400,
        accuracy: 5,
        altitude: null,
        altitudeAccuracy: null,
        heading: null,
        speed: speedMps,
      },
    });
  };
  const fast: Fast & { readonly begin: () => void } = {
    begin,
    pass: async (seconds, drawn) => {
      for (let k = 0; k < seconds; k++) {
        tick();
        // A timer that is set in a frame comes after its picture.
        await new Promise<void>((done) =>
          drawn ? real.frame(() => real.setTimeout(done)) : real.setTimeout(done),
        );
      }
    },
  };
  Object.assign(window, { fast });
};

const pass = (page: Page, seconds: number, drawn: boolean): Promise<void> =>
  page.evaluate(([s, d]) => (window as unknown as { fast: Fast }).fast.pass(s, d), [seconds, drawn] as const);

interface Left {
  readonly heapMB: number;
  readonly nodes: number;
  readonly listeners: number;
}

const leftOf = async (cdp: CDPSession): Promise<Left> => {
  // What the page's own objects held on to is seen as rubbish only once they are.
  for (let i = 0; i < 3; i++) await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize } = await cdp.send('Runtime.getHeapUsage');
  const { metrics } = await cdp.send('Performance.getMetrics');
  const metric = (name: string): number => metrics.find((m) => m.name === name)?.value ?? Number.NaN;
  return { heapMB: usedSize / 1e6, nodes: metric('Nodes'), listeners: metric('JSEventListeners') };
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

/** What hours of a run cost the page: its main thread's share of one core, and what is left in its memory. */
export const printHours = async (served: Served, hours = HOURS): Promise<void> => {
  const browser = await served.launch();
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.addInitScript((plan) => localStorage.setItem('soundline.plan', plan), JSON.stringify(PLAN));
  // What tsx wraps round functions, and a page does not know.
  await page.addInitScript('globalThis.__name = (f) => f');
  await page.addInitScript(install, SPEED_MPS);
  const cdp = await context.newCDPSession(page);
  await cdp.send('Performance.enable');
  await page.goto(`${served.origin}/#/run`);
  await page.getByRole('button', { name: 'Switch on' }).click();
  await page.locator('.start-button').first().waitFor();
  await page.waitForTimeout(2000);
  await page.evaluate(() => (window as unknown as { fast: { begin: () => void } }).fast.begin());
  // The timers that the page set before are its own: the run begins anew, on the clock that is told to go.
  await page.getByRole('button', { name: 'Switch off' }).click();
  await page.getByRole('button', { name: 'Switch on' }).click();
  await pass(page, 3, false);
  await page.locator('.start-button').first().waitFor();
  await page.locator('.main-button.start-button').click();
  const rows: string[][] = [];
  for (let hour = 1; hour <= hours; hour++) {
    // A trace of an hour is more than Chromium keeps: six parts of it are looked at, all of it is drawn.
    const shares: number[] = [];
    if (hour === 1) for (let part = 0; part < 12; part++) shares.push(await shareOf(page, HOUR_S / 12));
    else await pass(page, HOUR_S, false);
    const { heapMB, nodes, listeners } = await leftOf(cdp);
    const shown = await page.locator('.face-figures .figure').allTextContents();
    rows.push([
      `${hour} h`,
      shares.length === 0 ? '' : percent(shares.reduce((a, b) => a + b, 0) / shares.length, 2),
      shares.length === 0 ? '' : percent(Math.max(...shares), 2),
      fixed(heapMB, 1),
      String(nodes),
      String(listeners),
      shown.join(' / '),
    ]);
  }
  await browser.close();
  printTable(
    'Hours of a run on the page, a fix and a redraw a second',
    [
      'after',
      'main thread, share of one core here',
      'worst five minutes',
      'heap, MB',
      'DOM nodes',
      'listeners',
      'on the face',
    ],
    rows,
  );
};
