import { rmSync } from 'node:fs';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';
import { firefoxPath } from './firefox.ts';
import { lacking, pretendDevices } from './machine.ts';
import { webKitPlaces } from './webKit.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the production build lies. */
    othersOutDir: string;
  }
}

const INSTALL = 'apt-get install firefox-esr webkit2gtk-driver gstreamer1.0-plugins-good xvfb pulseaudio';

/** One production build, one pretended screen and loudspeaker for all. @throws where a browser is not there: nothing is left out in silence */
export default async ({ provide }: TestProject): Promise<() => void> => {
  const missing = [
    ...(firefoxPath() === null ? ['Firefox not found'] : []),
    ...(webKitPlaces() === null ? ['WebKitGTK not found'] : []),
    ...lacking(),
  ];
  if (missing.length > 0) throw new Error(`${missing.join(', ')}. On Debian: ${INSTALL}`);
  const outDir = `node_modules/.soundline-others-test/${process.pid}`;
  await build({ logLevel: 'warn', build: { outDir, emptyOutDir: true } });
  const end = await pretendDevices();
  provide('othersOutDir', outDir);
  return () => {
    end();
    rmSync(outDir, { recursive: true, force: true });
  };
};
