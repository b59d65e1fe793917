import { printHours } from './page/hour.ts';
import { serveBuild } from './page/served.ts';
import { printStart } from './page/start.ts';

/** The page itself, built and opened in Chromium: how soon it can be used, and what hours of a race cost it. */
export const printPage = async (quick: boolean): Promise<void> => {
  const served = await serveBuild();
  try {
    await printHours(served, quick ? 2 : undefined);
    await printStart(served, quick ? 3 : undefined);
  } finally {
    await served.close();
  }
};
