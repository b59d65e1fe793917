import { expect, test } from 'vitest';
import { again } from '../../../../src/core/cues/again.ts';
import { answerBeforeStart, answerCue } from '../../../../src/core/cues/rules/answer.ts';
import { noBoardCue } from '../../../../src/core/cues/rules/press.ts';
import { beginSignal } from '../../../../src/core/cues/rules/signal.ts';
import { momentAt, racePlanned } from '../moments.ts';

test('how far, ahead or behind, and where that leads', () => {
  const moment = momentAt({ distanceM: 18_000, aheadS: 6 });
  const { saying, aheadS, manner } = answerCue(moment);
  expect(manner).toBe('answer');
  expect(aheadS).toBeCloseTo(6, 2);
  expect(saying).toMatchObject({
    kind: 'answer',
    distanceM: 18_000,
    unit: 'km',
    ahead: { side: 'up', seconds: 6 },
  });
  // 6219 s by plan, 6 ahead; known to half a minute.
  expect('finishS' in saying && saying.finishS).toBe(6210);
});

test('no finish where nobody knows', () => {
  const race = racePlanned({
    distanceM: 100_000,
    goalS: 36_000,
    checkpointsM: [],
    opening: null,
    push: null,
    stations: [],
    fuel: [],
  });
  expect(answerCue(momentAt({ race, distanceM: 500 })).saying).toMatchObject({ finishS: null });
});

test('before the start there is nothing to be ahead of', () => {
  const { race, nowMs, progress } = momentAt({ distanceM: 0 });
  expect(answerBeforeStart(race, nowMs, progress).saying).toEqual({
    kind: 'answer',
    distanceM: 0,
    unit: 'km',
    ahead: null,
    finishS: null,
  });
});

test('an answer that had to wait is the answer of then', () => {
  const cue = answerCue(momentAt({ distanceM: 9000, aheadS: 6 }));
  const later = again(cue, momentAt({ distanceM: 9020, aheadS: 2 }), beginSignal);
  expect(later?.saying).toMatchObject({ distanceM: 9020 });
  expect(later?.expiresMs).toBe(cue.expiresMs);
});

test('a press with no board near is answered, and stays what it is', () => {
  const cue = noBoardCue(momentAt({ distanceM: 9500 }));
  expect(cue.saying).toEqual({ kind: 'marker', what: 'noBoard' });
  expect(again(cue, momentAt({ distanceM: 9520 }), beginSignal)).toBe(cue);
});
