import { expect, test } from 'vitest';
import { COUNTDOWN_LEAD_S } from '../../src/voice/tones/family.ts';
import { heardOf, listen, offFrom } from './support/heardSamples.ts';
import { open } from './support/open.ts';
import { countdownsOf, doSession } from './support/session.ts';
import { tapped } from './support/tap.ts';

/** What the ear is promised. */
const WITHIN_S = 0.01;
const LEG_S = 10;
const LEGS = 2;

test('countdown tones land within 10 ms of their second, on the audio clock', {
  timeout: 120_000,
}, async () => {
  const { page, complaints, close } = await open('#/practice', { before: listen, bypassPolicy: true });
  const startedMs = await doSession(page, LEGS, LEG_S);
  const { started } = await tapped(page);
  const heard = await heardOf(page);
  const countdowns = countdownsOf(started);
  expect(countdowns).toHaveLength(LEGS);
  countdowns.forEach(({ whenS }, leg) => {
    // Where the loudspeaker really got each tick, and the long note on the moment itself.
    for (const tick of [0, 1, 2, 3])
      expect(Math.abs(offFrom(heard, whenS + tick)), `tick ${tick} of leg ${leg}`).toBeLessThan(WITHIN_S);
    // The end of the leg by the run's own clock, on the audio clock.
    const endMs = startedMs + 1000 * LEG_S * (leg + 1);
    const momentS = (endMs + heard.clockOffsetMs) / 1000 - heard.latencyS;
    expect(Math.abs(whenS + COUNTDOWN_LEAD_S - momentS), `end of leg ${leg}`).toBeLessThan(WITHIN_S);
  });
  expect(complaints).toEqual([]);
  await close();
});
