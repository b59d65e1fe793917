import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parseAnyPlan } from '../../src/core/plan/parsePracticePlan.ts';
import { backupText, parseBackup } from '../../src/log/exportBackup.ts';
import { importRuns } from '../../src/log/importRun.ts';
import { runCommand } from '../../src/rehearse/command.ts';
import { decodePlan, encodePlan } from '../../src/share/code.ts';
import { sharedOf, textOf } from '../../src/share/planFile.ts';

/*
 * Good files, damaged: letters changed, stretches lost, doubled or moved, numbers put in the place of numbers. Whatever
 * comes in, the answer is a rehearsal without a number that is none, or one line that says what is wrong.
 */

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'damaged-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const T0 = 1_809_851_400_000;
const M_PER_DEGREE = 111_330;

const PLAN = JSON.stringify({
  version: 1,
  kind: 'race',
  name: 'Quay mile',
  distanceM: 1200,
  goalS: 330,
  opening: { untilM: 300, quickerSPerKm: 6 },
  push: { fromM: 900, quickerSPerKm: 4 },
  checkpointsM: [400, 800],
  stations: [{ atM: 600, offers: ['water'] }],
  fuel: [{ item: 'gel', atM: 580 }],
  receiver: { slowSdM: 2.6, lagS: 0.5, lagSdS: 0.4 },
  course: { points: Array.from({ length: 16 }, (_, i) => [54 + (i * 80) / M_PER_DEGREE, 7, i % 4]) },
});
const SESSION = JSON.stringify({
  version: 1,
  kind: 'practice',
  legs: [
    { kind: 'warm-up', for: { timeS: 60 }, target: { effort: 'easy' } },
    {
      repeat: 2,
      legs: [
        { kind: 'work', for: { distanceM: 200 }, target: { paceSPerKm: 260 }, rampS: 5 },
        { kind: 'recovery', for: { timeS: 30 }, target: 'free' },
      ],
    },
    { kind: 'cool-down', for: 'press' },
  ],
});
const fixAt = (s: number): object => ({
  timestamp: T0 + s * 1000,
  coords: {
    latitude: 54 + (Math.max(0, s) * 4) / M_PER_DEGREE,
    longitude: 7,
    accuracy: 4,
    speed: s > 0 ? 4 : 0,
  },
});
const PRESSES: readonly (readonly [number, string])[] = [
  [0.4, 'start'],
  [100.3, 'marker'],
  [200.6, 'ask'],
];
const LOG = [
  ...Array.from({ length: 330 }, (_, i) => ({ atS: i - 10, line: fixAt(i - 10) })),
  ...PRESSES.map(([atS, event]) => ({ atS, line: { timestamp: T0 + atS * 1000, event } })),
]
  .sort((a, b) => a.atS - b.atS)
  .map(({ line }) => JSON.stringify(line))
  .join('\n');
const GPX = `<?xml version="1.0"?>\n<gpx version="1.1"><trk><name>Quay</name><trkseg>\n${Array.from(
  { length: 320 },
  (_, s) =>
    `<trkpt lat="${(54 + (s * 4) / M_PER_DEGREE).toFixed(7)}" lon="7"><ele>${s % 9}</ele><time>${new Date(T0 + s * 1000).toISOString()}</time></trkpt>`,
).join('\n')}\n</trkseg></trk></gpx>\n`;

const NUMBER = /-?\d+(?:\.\d+)?/g;
const ODD = [
  'NaN',
  'null',
  '1e999',
  '-1e308',
  '1e308',
  '""',
  '[]',
  '{}',
  '-1',
  '0',
  '1e-320',
  '9007199254740993',
];

type Damage = (text: string) => string;
const share = fc.double({ min: 0, max: 0.999, noNaN: true });
const inPlaceOf = (text: string, at: number, by: (found: string) => string): string => {
  const found = [...text.matchAll(NUMBER)];
  const one = found[Math.floor(at * found.length)];
  return one ? text.slice(0, one.index) + by(one[0]) + text.slice(one.index + one[0].length) : text;
};
const damage: fc.Arbitrary<Damage> = fc.oneof(
  fc.tuple(share, fc.string({ maxLength: 3 }), fc.nat({ max: 12 })).map(
    ([at, put, gone]): Damage =>
      (text) => {
        const i = Math.floor(at * text.length);
        return text.slice(0, i) + put + text.slice(i + gone);
      },
  ),
  fc.tuple(share, fc.constantFrom(...ODD)).map(
    ([at, odd]): Damage =>
      (text) =>
        inPlaceOf(text, at, () => odd),
  ),
  fc.tuple(share, fc.integer({ min: -4, max: 4 }), fc.boolean()).map(
    ([at, exponent, turned]): Damage =>
      (text) =>
        inPlaceOf(text, at, (n) => String(Number(n) * 10 ** exponent * (turned ? -1 : 1))),
  ),
  fc.tuple(share, share, fc.nat({ max: 60 }), fc.boolean()).map(
    ([from, to, n, kept]): Damage =>
      (text) => {
        const lines = text.split('\n');
        const i = Math.floor(from * lines.length);
        const moved = kept ? lines.slice(i, i + n) : lines.splice(i, n);
        lines.splice(Math.floor(to * lines.length), 0, ...moved);
        return lines.join('\n');
      },
  ),
  share.map(
    (at): Damage =>
      (text) =>
        text.slice(0, Math.floor((0.2 + 0.8 * at) * text.length)),
  ),
);
const damaged = (text: string): fc.Arbitrary<string> =>
  fc.array(damage, { minLength: 1, maxLength: 6 }).map((all) => all.reduce((now, d) => d(now), text));

const put = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};

interface Line {
  readonly type: string;
  readonly [field: string]: unknown;
}
const MAY_LACK = ['aheadS', 'aheadSdS', 'distanceM', 'finishS'];

/** A rehearsal in which every number is one and calls follow each other; or one line. */
const holds = (args: readonly string[]): void => {
  const { stdout, stderr, status } = runCommand([...args, '--json', '--trace']);
  if (status === 2) {
    expect(stdout).toBe('');
    expect(stderr).toMatch(/^rehearse: .+: expected .+, found .+\n$/);
    return;
  }
  const lines = stdout
    .trimEnd()
    .split('\n')
    .map((line): Line => JSON.parse(line));
  let silentFromS = Number.NEGATIVE_INFINITY;
  for (const line of lines) {
    // What is no number is null in JSON.
    expect(Object.entries(line).filter(([key, v]) => v === null && !MAY_LACK.includes(key))).toEqual([]);
    if (line.type !== 'cue') continue;
    const { tS, startS, endS } = line as unknown as { tS: number; startS: number; endS: number };
    expect([tS <= startS, silentFromS <= startS, startS <= endS]).toEqual([true, true, true]);
    silentFromS = endS;
  }
  const end = lines.at(-1);
  expect(end?.type).toBe('end');
  const { finishS } = end as unknown as { finishS: number | null };
  expect(finishS ?? 1).toBeGreaterThan(0);
};

const RUNS = { numRuns: 40 };

describe('a damaged file is rehearsed as far as it goes, or refused in one line', () => {
  it('plan', () => {
    const fixes = put('run.jsonl', LOG);
    fc.assert(
      fc.property(damaged(PLAN), (text) => holds(['--plan', put('p.json', text), '--fixes', fixes])),
      RUNS,
    );
  });
  it('session', () => {
    const fixes = put('run.jsonl', LOG);
    fc.assert(
      fc.property(damaged(SESSION), (text) => holds(['--plan', put('s.json', text), '--fixes', fixes])),
      RUNS,
    );
  });
  it('log', () => {
    const plan = put('plan.json', PLAN);
    fc.assert(
      fc.property(damaged(LOG), (text) => holds(['--plan', plan, '--fixes', put('l.jsonl', text)])),
      RUNS,
    );
  });
  it('track', () => {
    const plan = put('plan.json', PLAN);
    fc.assert(
      fc.property(damaged(GPX), (text) => holds(['--plan', plan, '--fixes', put('t.gpx', text)])),
      RUNS,
    );
  });
  it('course', () => {
    const [plan, fixes] = [put('plan.json', PLAN), put('run.jsonl', LOG)];
    fc.assert(
      fc.property(damaged(GPX), (text) =>
        holds(['--plan', plan, '--fixes', fixes, '--course', put('c.gpx', text)]),
      ),
      RUNS,
    );
  });
});

describe('what the page takes in', () => {
  it('a code: the plan that was sent, or a sentence', async () => {
    const code = (await encodePlan(sharedOf(PLAN))).text;
    const sent = await decodePlan(code);
    expect(sent.ok && parseAnyPlan(textOf(sent.value)).ok).toBe(true);
    await fc.assert(
      fc.asyncProperty(damaged(code), async (text) => {
        const got = await decodePlan(text);
        if (got.ok) expect(got).toEqual(sent);
        else expect(got.error.text).not.toBe('');
      }),
      { numRuns: 300 },
    );
  });

  it('a backup: whole runs, or the line that is wrong', () => {
    const run = { planFile: PLAN, lines: LOG.split('\n').slice(0, 20) };
    const backup = backupText({ runs: [1, 2].map((id) => ({ id, ...run })), settings: { unit: 'km' } });
    fc.assert(
      fc.property(damaged(backup), (text) => {
        const got = parseBackup(text);
        if (!got.ok) expect(got.error.place).toMatch(/^line \d+/);
        else expect(got.value.runs.every(({ id }) => Number.isSafeInteger(id))).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('a run from elsewhere: with a plan that can be read, or a reason', () => {
    fc.assert(
      fc.property(fc.oneof(damaged(LOG), damaged(GPX)), (text) => {
        const got = importRuns(text, null);
        if (!got.ok) expect(got.error.found).not.toBe('');
        else for (const { planFile } of got.value.runs) expect(parseAnyPlan(planFile).ok).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});
