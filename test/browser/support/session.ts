import type { Page } from 'playwright-core';
import { toneDurationS } from '../../../src/voice/tones/family.ts';
import { giveFile } from './giveFile.ts';
import { heardOf } from './heardSamples.ts';
import type { Started } from './tap.ts';

const sessionOf = (legs: number, legS: number) => ({
  version: 1,
  kind: 'practice',
  name: 'Short and indoors',
  place: 'indoors',
  legs: Array.from({ length: legs }, (_, i) => ({
    kind: i % 2 === 0 ? 'warm-up' : 'work',
    for: { timeS: legS },
    target: { effort: i % 2 === 0 ? 'easy' : 'hard' },
  })),
});

/**
 * Does a session by the clock alone, from the start to its end; the page must have `listen` on it.
 * @returns performance.now at the press of the start
 */
export const doSession = async (page: Page, legs: number, legS: number): Promise<number> => {
  await giveFile(page, 'Open a session', 's.json', JSON.stringify(sessionOf(legs, legS)));
  await page.getByRole('heading', { name: 'Short and indoors' }).waitFor();
  await page.getByRole('button', { name: 'Switch on' }).click();
  await page.getByRole('button', { name: 'Start' }).click();
  const { pressedMs } = await heardOf(page);
  await page.getByText('Session done').waitFor({ timeout: 1000 * (legs * legS + 20) });
  // It is written when the countdown to it begins.
  await page.waitForTimeout(5000);
  return pressedMs;
};

/** Each countdown that was set on the audio clock, in order. */
export const countdownsOf = (started: readonly Started[]): readonly Started[] =>
  started.filter(({ bufferS }) => Math.abs(bufferS - toneDurationS('countdown')) < 0.005);
