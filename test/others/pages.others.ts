import { type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { PIER_MILE } from '../browser/support/plans.ts';
import { firefoxPath, openFirefox } from './firefox.ts';
import type { OtherPage } from './webDriver.ts';
import { openWebKit, webKitPlaces } from './webKit.ts';

const openers: readonly (readonly [string, () => Promise<OtherPage>])[] = [
  ['Firefox', () => openFirefox(firefoxPath() ?? '')],
  [
    'WebKitGTK',
    async () => {
      const places = webKitPlaces();
      if (places === null) throw new Error('not found');
      return openWebKit(places);
    },
  ],
];

const serve = async (): Promise<PreviewServer> =>
  preview({
    logLevel: 'warn',
    build: { outDir: inject('othersOutDir') },
    preview: { port: 4389, host: '127.0.0.1' },
  });
const originOf = (server: PreviewServer): string => {
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return `http://localhost:${address.port}`;
};
const shut = async (server: PreviewServer): Promise<void> => {
  if ('closeAllConnections' in server.httpServer) server.httpServer.closeAllConnections();
  await server.close();
};

/** What the sound's graph does from here on: which sources were started, and how loud it was at the loudspeaker. */
const listen = (page: OtherPage): Promise<void> =>
  page.ask(() => {
    const heard = { started: 0, loudest: 0 };
    Object.assign(window, { heard });
    const { start } = AudioBufferSourceNode.prototype;
    AudioBufferSourceNode.prototype.start = function (...given: Parameters<typeof start>) {
      if ((this.buffer?.duration ?? 0) > 0.01) heard.started++;
      start.apply(this, given);
    };
    const { Howler } = window as unknown as { Howler: { ctx: AudioContext; masterGain: GainNode } };
    const meter = Howler.ctx.createAnalyser();
    Howler.masterGain.connect(meter);
    const samples = new Float32Array(meter.fftSize);
    setInterval(() => {
      meter.getFloatTimeDomainData(samples);
      heard.loudest = Math.max(heard.loudest, ...samples.map(Math.abs));
    }, 50);
  });
const heardBy = (page: OtherPage): Promise<{ started: number; loudest: number }> =>
  page.ask(() => (window as unknown as { heard: { started: number; loudest: number } }).heard);

const voiceLoaded = (page: OtherPage): Promise<string> =>
  page.seeAt('[data-sound]:not([data-sound="loading"]):not([data-sound="failed"])', 40_000);

interface Stored {
  readonly heads: number;
  readonly lines: number;
  /** Whether the last batch says that its run is over. */
  readonly over: boolean;
}

/** What lies on the device of runs and their logs. */
const stored = (page: OtherPage): Promise<Stored> =>
  page.ask(
    () =>
      new Promise<Stored>((resolve, reject) => {
        const asking = indexedDB.open('soundline');
        asking.onerror = () => reject(asking.error);
        asking.onsuccess = () => {
          const tx = asking.result.transaction(['heads', 'batches']);
          const heads = tx.objectStore('heads').count();
          const batches = tx.objectStore('batches').getAll();
          tx.oncomplete = () => {
            asking.result.close();
            const lines = batches.result.reduce((sum, b: { lines: string[] }) => sum + b.lines.length, 0);
            resolve({ heads: heads.result, lines, over: batches.result.at(-1)?.over === true });
          };
        };
      }),
  );

const endRun = async (page: OtherPage): Promise<void> => {
  await page.holdAt('.hold-button', 1800);
  await page.see('Hold again: end the run');
  await page.holdAt('.hold-button', 1800);
  await page.see('Stopped');
  // That it is over must be on the device before the page is left, or the next one takes the run up again.
  await expect.poll(async () => (await stored(page)).over, { timeout: 10_000 }).toBe(true);
  await page.press('Done');
};

describe.each(openers)('in %s', (_name, openBrowser) => {
  let page: OtherPage;
  let server: PreviewServer;
  let origin = '';
  beforeAll(async () => {
    server = await serve();
    origin = originOf(server);
    page = await openBrowser();
    await page.resize(420, 900);
  });
  afterAll(async () => {
    await page?.close();
    await shut(server).catch(() => {});
  });
  /** Opened anew, whatever was there: a changed fragment alone loads nothing. */
  const at = async (path: string): Promise<void> => {
    await page.goto('about:blank');
    await page.goto(`${origin}/${path}`);
    await page.seeAt('main h1');
  };

  test('the demo is rehearsed, and heard', async () => {
    await at('');
    await voiceLoaded(page);
    await listen(page);
    await page.press('60×');
    await page.press('Hear the demo race');
    await expect
      .poll(() => heardBy(page), { timeout: 40_000 })
      .toSatisfy(({ started, loudest }) => started > 5 && loudest > 0.05);
    await expect.poll(() => page.seeAt('.sounding .figure'), { timeout: 20_000 }).toMatch(/\d/);
    await page.press('End');
    await page.see('Hear the demo race');
  });

  test('a plan that is changed is there again after a reload', async () => {
    await at('#/plan');
    await page.ask((form) => localStorage.setItem('soundline.plan', form), JSON.stringify(PIER_MILE));
    await page.reload();
    await page.seeAt('main h1');
    const goal = (): Promise<string[]> =>
      page.ask(() => [...document.querySelectorAll('input')].map((input) => input.value));
    await expect.poll(goal).toContain('6:40');
    await page.ask(() => {
      const input = [...document.querySelectorAll('input')].find((i) => i.value === '6:40');
      input?.setAttribute('data-mine', '');
    });
    await page.fill('[data-mine]', '6:20');
    await page.pressAt('main h1');
    await page.reload();
    await page.seeAt('main h1');
    await expect.poll(goal).toContain('6:20');
  });

  test('a run is practised at home, guarded, logged and ended', async () => {
    await at('#/run');
    await page.pressAt('.carry-choice input');
    await page.press('Practise the day at home');
    await page.see('A simulated runner waits for your start');
    await page.pressAt('.start-button');
    await page.seeAt('.guard');
    // A short touch is swallowed.
    await page.holdAt('.guard', 300);
    await page.seeAt('.guard');
    await expect.poll(async () => (await stored(page)).lines, { timeout: 20_000 }).toBeGreaterThan(8);
    await page.holdAt('.guard', 1800);
    await expect.poll(() => page.ask(() => document.querySelector('.guard') === null)).toBe(true);
    await endRun(page);
    await expect.poll(async () => (await stored(page)).heads, { timeout: 10_000 }).toBe(0);
  });

  test('a run without position goes by the clock, and goes on after the page was closed', async () => {
    await at('#/run');
    await page.press('Switch on');
    await page.seeAt('.start-button');
    await page.ask(() => {
      document.querySelector<HTMLElement>('.main-button.start-button')?.setAttribute('data-mine', '');
    });
    await page.pressAt('[data-mine]');
    await page.seeAt('.face');
    await expect.poll(() => page.seeAt('.face-figures .figure'), { timeout: 10_000 }).toMatch(/^0:0[3-9]$/);
    const beforeMs = await page.ask(() => Date.now());
    const [, beforeS = '0'] = (await page.seeAt('.face-figures .figure')).split(':');
    await at('');
    await page.seeAt('.face');
    const passedS = (await page.ask(() => Date.now())) / 1000 - beforeMs / 1000;
    const [minutes = '0', seconds = '0'] = (await page.seeAt('.face-figures .figure')).split(':');
    expect(Math.abs(60 * Number(minutes) + Number(seconds) - Number(beforeS) - passedS)).toBeLessThan(2);
    await page.see('No position', 5000);
    if (await page.ask(() => document.querySelector('.guard') !== null)) await page.holdAt('.guard', 1800);
    await endRun(page);
  });

  test('a plan is handed over by link and by picture', async () => {
    await at('#/share');
    await page.seeAt('svg.code');
    const link = await page.ask(
      () =>
        [...document.querySelectorAll('input')].find((input) => input.value.includes('#/share/'))?.value ??
        '',
    );
    await page.ask(async () => {
      const svg = document.querySelector('svg.code');
      if (svg === null) throw new Error('no code');
      const size = svg.getAttribute('viewBox')?.split(' ').map(Number)[2] ?? 0;
      const canvas = Object.assign(document.createElement('canvas'), { width: 6 * size, height: 6 * size });
      const ink = canvas.getContext('2d');
      if (ink === null) throw new Error('no canvas');
      ink.fillStyle = '#fff';
      ink.fillRect(0, 0, canvas.width, canvas.height);
      ink.scale(6, 6);
      ink.fillStyle = '#000';
      ink.fill(new Path2D(svg.querySelector('path')?.getAttribute('d') ?? ''));
      const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done));
      const files = new DataTransfer();
      files.items.add(new File([blob as Blob], 'code.png', { type: 'image/png' }));
      const input = document.querySelector<HTMLInputElement>('input[type="file"]');
      if (input === null) throw new Error('no input');
      input.files = files.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    });
    await page.see('A plan is here: Pier mile');
    await page.goto('about:blank');
    await page.goto(link);
    await page.see('A plan is here: Pier mile');
    await page.press('Take this plan');
    await page.see('Taken.');
    await page.goto('about:blank');
    await page.goto(link.slice(0, -20));
    await page.see('This code has been cut off');
  });

  test('without a server it opens again, and speaks', async () => {
    await at('');
    await page.seeAt('[data-offline="ready"]', 60_000);
    await shut(server);
    await at('#/rehearse');
    await page.seeAt('[data-offline="ready"]', 30_000);
    await voiceLoaded(page);
    await listen(page);
    // The plan that was taken from a link is the runner's own by now.
    await page.press('Hear my race');
    await expect.poll(async () => (await heardBy(page)).loudest, { timeout: 30_000 }).toBeGreaterThan(0.05);
  });
});
