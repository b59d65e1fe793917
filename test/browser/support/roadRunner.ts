import type { CDPSession, Page } from 'playwright-core';

/** Metres for a degree of latitude near 54° north: near enough for a few hundred metres of a test. */
const M_PER_DEG = 111_300;

/** A runner on a straight road to the north, as the browser's own Geolocation API tells it. */
export interface RoadRunner {
  /** Where the runner is, metres from the place where they stood at first. */
  readonly atM: () => number;
  /** One fix now. */
  readonly tell: (speedMps: number) => Promise<void>;
  /** Stands for some seconds, a fix each. */
  readonly stand: (seconds: number) => Promise<void>;
  /** Is where `placeM` says, a fix a second, until `done`. */
  readonly follow: (
    placeM: () => number,
    done: () => boolean | Promise<boolean>,
    speedMps: number | (() => number),
  ) => Promise<void>;
  /** Runs until a place is reached, a fix a second of real time. */
  readonly runTo: (atM: number, speedMps: number) => Promise<void>;
}

const FROM = { latitude: 54.1, longitude: 7.3 };

const sleep = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** Allows the page its position and puts the runner on the road. Each override fires error 2 first, as Chromium has it. */
export const roadRunner = async (page: Page): Promise<RoadRunner> => {
  await page.context().grantPermissions(['geolocation', 'screen-wake-lock']);
  const cdp: CDPSession = await page.context().newCDPSession(page);
  let atM = 0;
  const tell = async (speedMps: number): Promise<void> => {
    await cdp.send('Emulation.setGeolocationOverride', {
      latitude: FROM.latitude + atM / M_PER_DEG,
      longitude: FROM.longitude,
      accuracy: 4,
      heading: 0,
      speed: speedMps,
    });
  };
  return {
    atM: () => atM,
    tell,
    stand: async (seconds) => {
      for (let i = 0; i < seconds; i++) {
        await tell(0);
        await sleep(1000);
      }
    },
    follow: async (placeM, done, speedMps) => {
      while (!(await done())) {
        atM = placeM();
        await tell(typeof speedMps === 'number' ? speedMps : speedMps());
        const nextMs = performance.now() + 1000;
        while (performance.now() < nextMs && !(await done())) await sleep(100);
      }
    },
    runTo: async (toM, speedMps) => {
      const startedMs = performance.now();
      const fromM = atM;
      for (let i = 1; atM < toM; i++) {
        // By absolute time: a busy machine must not make the runner slower than they say.
        await sleep(Math.max(0, startedMs + i * 1000 - performance.now()));
        atM = fromM + (speedMps * (performance.now() - startedMs)) / 1000;
        await tell(speedMps);
      }
    },
  };
};
