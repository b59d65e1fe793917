import type { Page } from 'playwright-core';
import type { Served } from './served.ts';

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
  const dateNow = Date.now.bind(Date);
  let nowMs = performance.now();
  /** The phone's clock at the page's instant 0. */
  let wallOriginMs = 0;
  const timers = new Map<number, { dueMs: number; everyMs: number | null; run: () => void }>();
  let nextId = 1_000_000;
  const add = (run: () => void, ms = 0, everyMs: number | null = null): number => {
    timers.set(++nextId, { dueMs: nowMs + Math.max(1, ms), everyMs, run });
    return nextId;
  };
  const drop = (id?: number): void => void timers.delete(id ?? 0);
  let running = false;
  // At once, for the page takes hold of it when it opens; a phone's clock that goes otherwise would be told every two seconds.
  Date.now = () => (running ? wallOriginMs + nowMs : dateNow());
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
    nowMs = performance.now();
    wallOriginMs = dateNow() - nowMs;
    running = true;
    performance.now = () => nowMs;
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

/** Lets seconds of the run pass, each with its picture if that is asked for. */
export const pass = (page: Page, seconds: number, drawn: boolean): Promise<void> =>
  page.evaluate(([s, d]) => (window as unknown as { fast: Fast }).fast.pass(s, d), [seconds, drawn] as const);

/** A run under way on a page of its own, whose clock goes when it is told to. */
export const openLongRun = async (served: Served): Promise<Page> => {
  const browser = await served.launch();
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.addInitScript((plan) => localStorage.setItem('soundline.plan', plan), JSON.stringify(PLAN));
  // What tsx wraps round functions, and a page does not know.
  await page.addInitScript('globalThis.__name = (f) => f');
  await page.addInitScript(install, SPEED_MPS);
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
  return page;
};
