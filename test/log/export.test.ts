import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Fix } from '../../src/core/estimate/input.ts';
import type { RunInput } from '../../src/core/run/settings.ts';
import { message } from '../../src/core/units/message.ts';
import { backupText, type KeptRun, parseBackup, runFile } from '../../src/log/exportBackup.ts';
import { runGeoJson } from '../../src/log/exportGeoJson.ts';
import { runGpx } from '../../src/log/exportGpx.ts';
import { parseFixLog } from '../../src/log/fixLog.ts';
import { importRuns } from '../../src/log/importRun.ts';
import { writeLogLine } from '../../src/log/logLine.ts';

const rounded = (x: number, digits: number): number => Math.round(x * 10 ** digits) / 10 ** digits;
const START_MS = 1_800_000_000_000;

const fix = fc.record<Fix>({
  timestampMs: fc.constant(0),
  latitudeDeg: fc.double({ min: 53, max: 54, noNaN: true }).map((x) => rounded(x, 7)),
  longitudeDeg: fc.double({ min: 6, max: 7, noNaN: true }).map((x) => rounded(x, 7)),
  accuracyM: fc.option(fc.double({ min: 1, max: 50, noNaN: true })),
  speedMps: fc.option(fc.double({ min: 0, max: 8, noNaN: true })),
  altitudeM: fc.option(fc.double({ min: -10, max: 900, noNaN: true }).map((x) => rounded(x, 2))),
});

/** A log of fixes with heart rate between: one a second, more or less. */
const log = fc
  .array(
    fc.record({ fix, gapMs: fc.integer({ min: 500, max: 90_000 }), bpm: fc.integer({ min: 60, max: 200 }) }),
    {
      minLength: 40,
      maxLength: 80,
    },
  )
  .map((rows): RunInput[] => {
    let atMs = START_MS;
    const start: RunInput = { type: 'event', atMs, event: 'start' };
    const rest = rows.flatMap(({ fix: f, gapMs, bpm }): RunInput[] => {
      atMs += gapMs;
      return [
        { type: 'fix', atMs, fix: { ...f, timestampMs: atMs } },
        { type: 'heart', atMs, bpm },
      ];
    });
    return [start, ...rest];
  });

const plan = JSON.stringify({ version: 1, kind: 'race', distanceM: 10_000, goalS: 3000 });

describe('export, import, export', () => {
  test('of a run with its plan is the identity', () => {
    void fc.assert(
      fc.property(log, (inputs) => {
        const run: KeptRun = { id: START_MS, planFile: plan, lines: inputs.map(writeLogLine) };
        const once = runFile(run);
        const got = importRuns(once, null);
        expect(got.ok && got.value.runs.map(runFile)).toEqual([once]);
      }),
      { numRuns: 60 },
    );
  });

  test('of a log is the identity', () => {
    void fc.assert(
      fc.property(log, (inputs) => {
        const once = inputs.map(writeLogLine).join('\n');
        const got = parseFixLog(once);
        expect(got.ok && got.value.inputs.map(writeLogLine).join('\n')).toBe(once);
      }),
      { numRuns: 60 },
    );
  });

  test('of a GPX track is the identity', () => {
    const name = fc.string({ unit: 'binary', minLength: 1, maxLength: 30 });
    void fc.assert(
      fc.property(log, name, (inputs, title) => {
        const once = runGpx(`x${title}`.trim().replace(/\s+/g, ' '), inputs);
        const got = importRuns(once, plan);
        if (!got.ok) throw new Error(JSON.stringify(got.error));
        const [run] = got.value.runs;
        const back = parseFixLog((run?.lines ?? []).join('\n'));
        const twice = back.ok ? runGpx('y', back.value.inputs) : '';
        const body = (text: string): string => text.slice(text.indexOf('<trkseg>'));
        expect(body(twice)).toBe(body(once));
      }),
      { numRuns: 60 },
    );
  });

  test('of everything on the device is the identity', () => {
    const settings = fc.dictionary(fc.string({ maxLength: 12 }), fc.string({ maxLength: 40 }));
    const runs = fc
      .array(log, { maxLength: 3 })
      .map((logs) =>
        logs.map(
          (inputs, i): KeptRun => ({ id: START_MS + i, planFile: plan, lines: inputs.map(writeLogLine) }),
        ),
      );
    void fc.assert(
      fc.property(runs, settings, (kept, texts) => {
        const once = backupText({ runs: kept, settings: texts });
        const got = parseBackup(once);
        expect(got.ok && got.value.cut).toBe(false);
        expect(got.ok && backupText(got.value)).toBe(once);
      }),
      { numRuns: 40 },
    );
  });
});

describe('damage', () => {
  const run: KeptRun = { id: 1, planFile: plan, lines: ['{"a":1}', '{"b":2}'] };
  const whole = backupText({ runs: [run, { ...run, id: 2 }], settings: {} });

  test('a backup cut short keeps the runs that are whole, and says so', () => {
    const got = parseBackup(whole.slice(0, -12));
    expect(got.ok && got.value.runs.map((r) => r.id)).toEqual([1]);
    expect(got.ok && got.value.cut).toBe(true);
  });

  test('a line in its midst that is none is named', () => {
    const rows = whole.split('\n');
    rows[1] = '{"run":"x"}';
    const got = parseBackup(rows.join('\n'));
    expect(got.ok).toBe(false);
    expect(!got.ok && got.error.place).toContain('line 2');
  });

  test('a point of a track with a time of another year is left out, and counted', () => {
    const point = (i: number, time: string): string =>
      `<trkpt lat="${54 + i * 1e-3}" lon="7"><time>${time}</time></trkpt>`;
    const points = Array.from({ length: 20 }, (_, i) =>
      point(i, new Date(START_MS + 30_000 * i).toISOString()),
    );
    const got = importRuns(
      `<gpx><trk><trkseg>${point(5, '1970-01-01T00:00:01Z')}${points.join('')}</trkseg></trk></gpx>`,
      null,
    );
    expect(got.ok && got.value.skipped).toBe(1);
    expect(got.ok && got.value.runs.map((run) => [run.id, run.lines.length])).toEqual([[START_MS, 20]]);
  });

  test('any text is refused or read, never thrown at', () => {
    void fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        expect(typeof importRuns(text, null).ok).toBe('boolean');
        expect(typeof parseBackup(text).ok).toBe('boolean');
      }),
    );
  });
});

describe('a map of the run', () => {
  test('places each call where the runner was', () => {
    const at = (s: number, latitudeDeg: number): RunInput => ({
      type: 'fix',
      atMs: START_MS + 1000 * s,
      fix: {
        timestampMs: START_MS + 1000 * s,
        latitudeDeg,
        longitudeDeg: 7,
        accuracyM: null,
        speedMps: null,
        altitudeM: null,
      },
    });
    const call = {
      id: 0,
      saying: { kind: 'marker', what: 'noBoard' } as const,
      form: 'long' as const,
      text: 'x',
      startS: 1.5,
      endS: 3,
      distanceM: 1,
      aheadS: 0,
      aheadSdS: 1,
      why: message('y'),
    };
    const text = runGeoJson(
      'r',
      [at(0, 53), at(1, 53.1), at(2, 53.2)],
      [{ ...call, kind: 'answer' }],
      START_MS,
    );
    const map = JSON.parse(text) as { features: { geometry: { coordinates: unknown } }[] };
    expect(map.features[1]?.geometry.coordinates).toEqual([7, 53.1]);
  });
});
