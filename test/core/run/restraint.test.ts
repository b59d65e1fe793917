import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SILENT_MS } from '../../../src/core/cues/rules/pace.ts';
import { QUIET_MS } from '../../../src/core/cues/scheduler.ts';
import { plan, playOut, tapeOf } from './tape.ts';

/** Three kilometres by runners who change their mind about pace again and again. */
const worlds = fc
  .record({
    seed: fc.integer({ min: 1, max: 10_000 }),
    depth: fc.double({ min: 0.03, max: 0.12, noNaN: true }),
    periodS: fc.integer({ min: 60, max: 240 }),
  })
  .map(({ seed, depth, periodS }) =>
    tapeOf({
      plan: { ...plan, opening: null, push: null },
      seed,
      penS: 20,
      speedAt: (s) => (10 / 3) * (1 + (Math.floor(s / periodS) % 2 === 0 ? depth : -depth)),
    }),
  );

const sideOf = (kind: string): 'quick' | 'slow' | null =>
  kind === 'ease' ? 'quick' : kind === 'quicken' ? 'slow' : null;

describe('after an ease or quicken', () => {
  test('nothing about pace for half a minute, but that it has got worse; no split either', () => {
    let pairs = 0;
    fc.assert(
      fc.property(worlds, (tape) => {
        const { calls } = playOut(tape);
        for (const [i, call] of calls.entries()) {
          const side = sideOf(call.saying.kind);
          if (side === null) continue;
          for (const later of calls.slice(i + 1)) {
            if (later.startMs >= call.endMs + SILENT_MS) continue;
            expect(later.saying.kind).not.toBe('marker');
            const again = sideOf(later.saying.kind);
            if (again === null) continue;
            expect(again).toBe(side);
            expect(later.startMs - call.endMs).toBeGreaterThanOrEqual(QUIET_MS);
          }
          pairs++;
        }
      }),
      { numRuns: 12 },
    );
    expect(pairs).toBeGreaterThan(12);
  });
});

describe('over a race', () => {
  test('at most 4 % of the time is speech, on every golden page that comes to its end', () => {
    const folder = new URL('../../rehearsal/', import.meta.url);
    const shares = readdirSync(folder)
      .filter((name) => name.endsWith('.golden.txt'))
      .flatMap((name) => {
        const share = /([\d.]+) % of the run/.exec(readFileSync(new URL(name, folder), 'utf8'))?.[1];
        return share === undefined ? [] : [Number(share)];
      });
    expect(shares.length).toBeGreaterThan(2);
    for (const share of shares) expect(share).toBeLessThanOrEqual(4);
  });
});
