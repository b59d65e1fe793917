import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EVENT_NAMES, type Input } from '../../src/core/estimate/input.ts';
import { sayDoorError } from '../../src/core/units/result.ts';
import { type FixLog, parseFixLog } from '../../src/log/fixLog.ts';
import { writeLogLine } from '../../src/log/logLine.ts';
import { EPOCH_2001_MS } from '../../src/log/logTimes.ts';

const T0 = 1_809_851_400_000;

const fixLine = (timestamp: number, coords: object = {}): string =>
  JSON.stringify({
    timestamp,
    coords: { latitude: 54.1, longitude: 7.3, accuracy: 4.8, speed: 3.9, ...coords },
  });
const eventLine = (timestamp: number, event: string): string => JSON.stringify({ timestamp, event });
/** n fixes a second apart from a time on. */
const fixLines = (n: number, fromMs: number): string[] =>
  Array.from({ length: n }, (_, i) => fixLine(fromMs + i * 1000));

const parse = (lines: readonly string[]): FixLog => {
  const got = parseFixLog(lines.join('\n'));
  if (!got.ok) throw new Error(sayDoorError(got.error));
  return got.value;
};
const refusal = (text: string): string => {
  const got = parseFixLog(text);
  return got.ok ? 'accepted' : sayDoorError(got.error);
};
/** Arrival times in seconds from T0. */
const arrivalsS = (lines: readonly string[]): number[] =>
  parse(lines).inputs.map((i) => (i.atMs - T0) / 1000);

describe('parseFixLog', () => {
  it('reads fixes in the shape of the W3C, events, and our own lines', () => {
    const log = parse([
      fixLine(T0, { altitude: null, heading: null, speed: null }),
      eventLine(T0 + 100, 'start'),
      '{"timestamp": 1809851400500, "motion": {"stepHz": 2.9}}',
      '{"timestamp": 1809851400600, "clock": true}',
    ]);
    expect(log).toEqual({
      inputs: [
        {
          type: 'fix',
          atMs: T0,
          fix: {
            timestampMs: T0,
            latitudeDeg: 54.1,
            longitudeDeg: 7.3,
            accuracyM: 4.8,
            speedMps: null,
            altitudeM: null,
          },
        },
        { type: 'event', atMs: T0 + 100, event: 'start' },
        { type: 'motion', atMs: T0 + 500, stepHz: 2.9 },
        { type: 'clock', atMs: T0 + 600 },
      ],
      skipped: 0,
      faults: [],
    });
  });

  it('skips damaged lines, counts them and says why', () => {
    const log = parse([
      fixLine(T0),
      '{"timestamp": 1809851',
      '',
      '[1, 2]',
      fixLine(T0 + 1000, { latitude: null }),
      fixLine(T0 + 2000, { longitude: 181 }),
      eventLine(T0 + 3000, 'jump'),
      '{"coords": {"latitude": 1, "longitude": 1}}',
      fixLine(T0 + 4000, { latitude: 0, longitude: 0 }),
      fixLine(T0 + 5000),
    ]);
    expect(log.inputs).toHaveLength(2);
    expect(log.skipped).toBe(7);
    expect(log.faults).toEqual([
      'line 2: expected a fix or an event as a JSON object, found "{\\"timestamp\\": 1809851"',
      'line 4: expected a fix or an event as a JSON object, found a list',
      'line 5: expected coords.latitude in degrees, -90 to 90, found null',
      'line 6: expected coords.longitude in degrees, -180 to 180, found 181',
      'line 7: expected event as one of gun, start, marker, ask, level, stop, found "jump"',
    ]);
  });

  it('takes what is odd beside the position for not stated', () => {
    const { inputs } = parse([fixLine(T0, { accuracy: -1, speed: 'fast', altitude: [] })]);
    expect(inputs[0]).toMatchObject({ fix: { accuracyM: null, speedMps: null, altitudeM: null } });
    const broken = parse([fixLine(T0, { accuracy: 1e308, speed: 31, altitude: 1e308 })]).inputs[0];
    expect(broken).toMatchObject({ fix: { accuracyM: 1e6, speedMps: null, altitudeM: null } });
  });

  it('reads a line in which a program wrote NaN for what it did not know', () => {
    const nan = (line: string, key: string): string =>
      line.replace(new RegExp(`"${key}":[\\d.]+`), `"${key}":NaN`);
    const log = parse([nan(fixLine(T0), 'speed'), nan(fixLine(T0 + 1000), 'latitude'), fixLine(T0 + 2000)]);
    expect(log.inputs).toHaveLength(2);
    expect(log.inputs[0]).toMatchObject({ fix: { latitudeDeg: 54.1, speedMps: null } });
    expect(log.faults).toEqual(['line 2: expected coords.latitude in degrees, -90 to 90, found "NaN"']);
  });

  it('refuses a log of which only the presses can be read, but not one of presses', () => {
    const start = eventLine(T0, 'start');
    expect(refusal(`${start}\n${fixLine(T0, { latitude: '54' })}`)).toBe(
      'line 2: expected coords.latitude in degrees, -90 to 90, found "54"',
    );
    expect(parse([start, eventLine(T0 + 9000, 'stop')]).inputs).toHaveLength(2);
    expect(parse([start, '{"timestamp": 1809851400500, "motion": {"stepHz": 2.9}}', 'x']).skipped).toBe(1);
  });

  it('refuses times in seconds, and only those', () => {
    const seconds = Array.from({ length: 12 }, (_, i) => fixLine(T0 / 1000 + i));
    expect(refusal([eventLine(T0, 'start'), ...seconds].join('\n'))).toBe(
      'line 2: expected timestamp in milliseconds, found 1809851400: seconds',
    );
    const pairs = Array.from({ length: 40 }, (_, i) => fixLine(T0 + Math.floor(i / 2) * 1000 + (i % 2) * 3));
    expect(parse(pairs).inputs).toHaveLength(40);
    expect(parse(Array.from({ length: 40 }, (_, i) => fixLine(T0 + i * 100))).inputs).toHaveLength(40);
    expect(parse(Array.from({ length: 40 }, () => fixLine(T0))).inputs).toHaveLength(40);
  });

  it('refuses a log without one usable line, by its first bad line', () => {
    expect(refusal('')).toBe('line 1: expected a fix or an event as a JSON object, found nothing');
    expect(refusal('\n\n{"timestamp": 1, "coords": {"latitude": "54"}}\nx')).toBe(
      'line 3: expected coords.latitude in degrees, -90 to 90, found "54"',
    );
    expect(refusal(' '.repeat(64_000_001))).toContain('at most 64 MB');
  });

  it('reads lines of every ending and a byte order mark', () => {
    const got = parseFixLog(`\uFEFF${fixLine(T0)}\r\n${fixLine(T0 + 1000)}\r${fixLine(T0 + 2000)}\n`);
    expect(got).toMatchObject({ ok: true, value: { skipped: 0 } });
    expect(got.ok && got.value.inputs.length).toBe(3);
  });

  it('never throws on any text, and its clock never falls', () => {
    const time = fc.oneof(
      fc.integer({ min: T0, max: T0 + 9e6 }),
      fc.double(),
      fc.constantFrom(0, 1e15, T0 - EPOCH_2001_MS),
    );
    const line = fc.oneof(
      fc.string(),
      fc.json(),
      time.map((t) => fixLine(t)),
      fc.tuple(time, fc.constantFrom(...EVENT_NAMES)).map(([t, e]) => eventLine(t, e)),
      fc.tuple(time, time).map(([t, r]) => JSON.stringify({ timestamp: t, receivedMs: r, event: 'ask' })),
    );
    fc.assert(
      fc.property(fc.array(line), (lines) => {
        const got = parseFixLog(lines.join('\n'));
        if (!got.ok) return got.error.place.startsWith('line ');
        const at = got.value.inputs.map((i) => i.atMs);
        return at.every((t, i) => Number.isFinite(t) && t >= (at[i - 1] ?? t));
      }),
      { numRuns: 500 },
    );
  });
});

describe('the clock of a log without arrival times', () => {
  it('is the latest time so far: a late fix arrives when it arrives', () => {
    expect(
      arrivalsS([fixLine(T0), fixLine(T0 + 3000), fixLine(T0 + 1000), eventLine(T0 + 4000, 'ask')]),
    ).toEqual([0, 3, 3, 4]);
  });

  it('is not stopped by one stamp from next week', () => {
    const lines = [...fixLines(5, T0), fixLine(T0 + 7 * 86_400_000), ...fixLines(5, T0 + 6000)];
    expect(arrivalsS(lines)).toEqual([0, 1, 2, 3, 4, 4, 6, 7, 8, 9, 10]);
  });

  it('is not stopped by such a stamp at the very end or the very beginning', () => {
    expect(arrivalsS([...fixLines(3, T0), fixLine(T0 + 1e9)])).toEqual([0, 1, 2, 2]);
    expect(arrivalsS([fixLine(T0 + 1e9), ...fixLines(3, T0)])).toEqual([0, 0, 1, 2]);
  });

  it('begins with the run and not with a fix from yesterday’s cache', () => {
    expect(arrivalsS([fixLine(T0 - 86_400_000), ...fixLines(4, T0)])).toEqual([0, 0, 1, 2, 3]);
  });

  it('goes on after a gap of any length', () => {
    const lines = [...fixLines(8, T0), ...fixLines(8, T0 + 5_400_000)];
    expect(arrivalsS(lines).slice(7, 10)).toEqual([7, 5400, 5401]);
  });

  it('goes on where the device’s clock was set back by an hour', () => {
    const lines = [...fixLines(30, T0 + 3_600_000), ...fixLines(30, T0)];
    const arrivals = arrivalsS(lines);
    expect(arrivals.at(-1)).toBeGreaterThan(3600 + 29 + 29 - 5);
    expect(arrivals.at(-1)).toBeLessThanOrEqual(3600 + 29 + 30);
  });

  it('goes by the presses where the receiver’s clock is ahead of the device’s', () => {
    const lines = [
      ...fixLines(4, T0 + 1500),
      eventLine(T0 + 3100, 'start'),
      ...fixLines(4, T0 + 5500),
      eventLine(T0 + 7000, 'ask'),
    ];
    expect(arrivalsS(lines)).toEqual([0.1, 1.1, 2.1, 3.1, 3.1, 4.1, 5.1, 6.1, 7, 7]);
  });

  it('is not led astray by one odd stamp before a press', () => {
    const lines = [
      fixLine(T0),
      fixLine(T0 + 20_000),
      eventLine(T0 + 1500, 'start'),
      ...fixLines(3, T0 + 2000),
      eventLine(T0 + 5000, 'ask'),
    ];
    expect(arrivalsS(lines)).toEqual([0, 1.5, 1.5, 2, 3, 4, 5]);
    expect(parse(lines).inputs[1]).toMatchObject({ fix: { timestampMs: T0 + 20_000 } });
  });

  it('keeps arrival times where the log has them', () => {
    const line = (t: number, r: number): string =>
      JSON.stringify({ timestamp: T0 + t, receivedMs: T0 + r, event: 'ask' });
    expect(arrivalsS([line(0, 500), line(5000, 5200), line(2000, 5300)])).toEqual([0.5, 5.2, 5.3]);
  });
});

describe('the epoch of 2001', () => {
  const stamps = (lines: readonly string[]): number[] =>
    parse(lines).inputs.flatMap((i) => (i.type === 'fix' ? [i.fix.timestampMs - T0] : []));

  it('is told by an event’s time, however many fixes come in it', () => {
    const lines = [eventLine(T0, 'start'), ...fixLines(20, T0 - EPOCH_2001_MS)];
    expect(stamps(lines).slice(0, 3)).toEqual([0, 1000, 2000]);
    expect(arrivalsS(lines).at(-1)).toBe(19);
  });

  it('is told by neighbours', () => {
    const lines = [...fixLines(5, T0), fixLine(T0 + 5000 - EPOCH_2001_MS), ...fixLines(5, T0 + 6000)];
    expect(stamps(lines)[5]).toBe(5000);
  });

  it('is told by arrival times', () => {
    const line = JSON.stringify({
      timestamp: T0 - EPOCH_2001_MS,
      receivedMs: T0 + 200,
      coords: { latitude: 1, longitude: 1 },
    });
    expect(stamps([line])).toEqual([0]);
  });

  it('is let be where nothing in the log shows it', () => {
    expect(stamps(fixLines(3, T0 - EPOCH_2001_MS))).toEqual([0, 1000, 2000].map((t) => t - EPOCH_2001_MS));
  });

  it('has a sister: receivers that take the week for the one 1024 weeks before', () => {
    const lines = [eventLine(T0, 'start'), ...fixLines(5, T0 - 1024 * 7 * 86_400_000)];
    expect(stamps(lines)).toEqual([0, 1000, 2000, 3000, 4000]);
  });
});

describe('writeLogLine', () => {
  it('gives back every input, bit by bit', () => {
    const ms = fc.integer({ min: T0, max: T0 + 86_400_000 });
    const orNull = (n: fc.Arbitrary<number>): fc.Arbitrary<number | null> => fc.option(n, { nil: null });
    const number = (min: number, max: number): fc.Arbitrary<number> =>
      fc.double({ min, max, noNaN: true }).map((n) => n + 0);
    const fix = fc.record({
      timestampMs: ms,
      latitudeDeg: number(1, 89),
      longitudeDeg: number(-180, 180),
      accuracyM: orNull(number(0, 5000)),
      speedMps: orNull(number(0, 12)),
      altitudeM: orNull(number(-100, 5000)),
    });
    const input: fc.Arbitrary<Input> = fc.oneof(
      fc.record({ type: fc.constant('fix' as const), atMs: ms, fix }),
      fc.record({ type: fc.constant('event' as const), atMs: ms, event: fc.constantFrom(...EVENT_NAMES) }),
      fc.record({ type: fc.constant('motion' as const), atMs: ms, stepHz: orNull(number(0, 5)) }),
      fc.record({ type: fc.constant('clock' as const), atMs: ms }),
    );
    fc.assert(
      fc.property(fc.array(input, { minLength: 1 }), (inputs) => {
        const inOrder = inputs.toSorted((a, b) => a.atMs - b.atMs);
        expect(parse(inOrder.map(writeLogLine)).inputs).toEqual(inOrder);
      }),
    );
  });
});
