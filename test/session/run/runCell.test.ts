import { expect, test } from 'vitest';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { createRunCell } from '../../../src/session/run/runCell.ts';
import { practiceTape } from '../../../src/session/run/tape.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const voice = voiceOf(english.pack, english.words);

/** Points of the curve, and one where it begins. */
const POINTS_MOST = 401;

test.each([2000, 12_000])(
  'what is held of %i m does not grow with the inputs, but for what was called',
  (distanceM) => {
    const read = readRacePlan({ version: 1, kind: 'race', distanceM, goalS: distanceM / 3.8 });
    if (!read.ok) throw new Error(read.error.place);
    const tape = practiceTape(read.value, null);
    const cell = createRunCell({ plan: read.value, course: null, voice });
    const sizes = tape.map((input, n) => {
      cell.feed(input);
      return n % 20 === 0 ? JSON.stringify(cell.folded().state).length : 0;
    });
    const third = sizes.length / 3;
    expect(Math.max(...sizes.slice(2 * third))).toBeLessThan(1.1 * Math.max(...sizes.slice(0, third)));
    const { calls, samples } = cell.folded();
    expect(samples.length).toBeGreaterThan(POINTS_MOST / 2);
    expect(samples.length).toBeLessThanOrEqual(POINTS_MOST);
    // The words stay, for the book; the clips that they were said with do not.
    expect(calls.length).toBeGreaterThan(2);
    for (const { utterance } of calls) expect(utterance.parts).toEqual([]);
  },
);
