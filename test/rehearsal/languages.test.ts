import { describe, expect, it } from 'vitest';
import { callSheet } from '../../src/rehearse/callSheet.ts';
import { readOptions } from '../../src/rehearse/options.ts';
import { rehearse } from '../../src/rehearse/rehearse.ts';
import { loadTape } from '../../src/rehearse/tape.ts';
import { voiceOf } from '../../src/voice/utter.ts';
import { SPOKEN } from '../languages/spokenHere.ts';

// The demo as a runner hears it in each language, as pages for those who speak it. Written anew like the other pages.

const options = readOptions([]);
if (!options.ok) throw new Error(options.error);
const tape = loadTape(options.value);
if (!tape.ok) throw new Error(tape.error);
const { plan, course, inputs } = tape.value;

describe.each(SPOKEN.filter(([tag]) => tag !== 'en'))('the demo in %s', (tag, { words, pack }) => {
  const rehearsal = rehearse({ plan, course, voice: voiceOf(pack, words) }, inputs, false);
  const calls = rehearsal.outcomes.flatMap((o) => (o.type === 'call' ? [o.call] : []));

  it('is heard as on its page', async () => {
    await expect(callSheet(rehearsal, plan, 0, [])).toMatchFileSnapshot(`demo.${tag}.golden.txt`);
  });

  it('never has two calls at once, and speaks less than 5 % of the race', () => {
    for (const [i, call] of calls.entries())
      expect(call.startMs).toBeGreaterThanOrEqual(calls[i - 1]?.endMs ?? Number.NEGATIVE_INFINITY);
    const saidMs = calls.reduce((sum, { startMs, endMs }) => sum + endMs - startMs, 0);
    expect(saidMs).toBeGreaterThan(0);
    expect(saidMs / 1000).toBeLessThan(0.05 * plan.goalS);
  });
});
