import { describe, expect, it } from 'vitest';
import type { Call } from '../../src/core/cues/call.ts';
import { scheduleOf } from '../../src/core/plan/schedule.ts';
import { spoken as english } from '../../src/languages/en/spoken.ts';
import { callSheet } from '../../src/rehearse/callSheet.ts';
import { runCommand } from '../../src/rehearse/command.ts';
import { talkS } from '../../src/rehearse/jsonLines.ts';
import { type Rehearsal, rehearse } from '../../src/rehearse/rehearse.ts';
import { voiceOf } from '../../src/voice/utter.ts';
import { RECORDINGS } from './recordings.ts';

// What a runner would have heard, as pages that one can read beside the plan. Where a change of the engine or the words is
// meant, read the difference and write the pages anew: npx vitest run --project unit test/rehearsal -u

const voice = voiceOf(english.pack, english.words);
const callsOf = ({ outcomes }: Rehearsal): Call[] =>
  outcomes.flatMap((o) => (o.type === 'call' ? [o.call] : []));

describe('the demo', () => {
  it('is heard as on its page', async () => {
    const { stdout, status } = runCommand([]);
    expect(status).toBe(0);
    await expect(stdout).toMatchFileSnapshot('demo.golden.txt');
  });
});

describe.each(RECORDINGS.map((make) => make()))('$name: $shows', (recording) => {
  const { name, shows, plan, course, inputs, truth } = recording;
  const rehearsal = rehearse({ plan, course, voice }, inputs, true);
  const calls = callsOf(rehearsal);

  it('is heard as on its page', async () => {
    await expect(callSheet(rehearsal, plan, 0, [shows])).toMatchFileSnapshot(`${name}.golden.txt`);
  });

  it('never has two calls at once, and speaks less than 5 % of a race that was run', () => {
    for (const [i, call] of calls.entries()) {
      expect(call.endMs).toBeGreaterThan(call.startMs);
      expect(call.startMs).toBeGreaterThanOrEqual(calls[i - 1]?.endMs ?? 0);
    }
    if (rehearsal.finishS !== null) expect(talkS(calls)).toBeLessThan(0.05 * rehearsal.finishS);
  });

  it('says each checkpoint that was passed, as it is passed, and how far ahead within its own doubt', () => {
    const zeroS = truth.crossingS(0) ?? 0;
    const schedule = scheduleOf(plan, course);
    const gunS = plan.goalBy === 'gun' ? -40 : 0;
    const stop = inputs.find((i) => i.type === 'event' && i.event === 'stop');
    const stopS = stop ? (stop.atMs - rehearsal.zeroMs) / 1000 : Number.POSITIVE_INFINITY;
    for (const atM of plan.checkpointsM) {
      const crossingS = truth.crossingS(atM) ?? Number.POSITIVE_INFINITY;
      if (crossingS > stopS) continue;
      const call = calls.find((c) => c.saying.kind === 'checkpoint' && c.atM === atM);
      if (!call) throw new Error(`no call at ${atM} m`);
      const saidS = (call.startMs - rehearsal.zeroMs) / 1000;
      const sdS = call.aheadSdS ?? 0;
      expect(Math.abs(saidS - (crossingS - zeroS))).toBeLessThan(3 * sdS + 1);
      const aheadS = schedule.timeAtS(atM) - (crossingS - gunS);
      expect(Math.abs((call.aheadS ?? 0) - aheadS)).toBeLessThan(3 * sdS + 1);
    }
  });

  it('finishes when the runner did', () => {
    const trueS = truth.crossingS(plan.distanceM) ?? 0;
    if (inputs.some((i) => i.type === 'event' && i.event === 'stop')) expect(rehearsal.finishS).toBeNull();
    else expect(Math.abs((rehearsal.finishS ?? 0) - trueS)).toBeLessThan(course ? 5 : 60);
  });
});
