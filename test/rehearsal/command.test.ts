import { execFile } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCommand } from '../../src/rehearse/command.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rehearsal-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const put = (name: string, content: string | Uint8Array): string => {
  const file = join(folder, name);
  writeFileSync(file, content);
  return file;
};

const T0 = 1_809_851_400_000;
/** A runner who goes due north at 4 m/s from the start. */
const fixes = (seconds: number): string[] =>
  Array.from({ length: seconds }, (_, i) =>
    JSON.stringify({
      timestamp: T0 + i * 1000,
      coords: { latitude: 54 + (i * 4) / 111_330, longitude: 7, accuracy: 4, speed: 4 },
    }),
  );
const log = (seconds: number): string =>
  [JSON.stringify({ timestamp: T0, event: 'start' }), ...fixes(seconds)].join('\n');
const northward = (metres: number): string =>
  `<gpx version="1.1"><trk><trkseg>${Array.from({ length: 60 }, (_, i) => `<trkpt lat="${54 + (i * metres) / 59 / 111_330}" lon="7"/>`).join('')}</trkseg></trk></gpx>`;
const PLAN = '{"distanceM": 1500, "goalS": 400, "checkpointsM": [1000]}';

interface Line {
  readonly type: 'cue' | 'trace' | 'end';
  readonly [field: string]: unknown;
}
const lines = (args: readonly string[]): Line[] => {
  const { stdout, stderr, status } = runCommand([...args, '--json']);
  expect([stderr, status]).toEqual(['', 0]);
  return stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
};

describe('rehearse: bad inputs', () => {
  const refused: readonly (readonly [what: string, args: () => string[], line: string])[] = [
    ['an unknown option', () => ['--faster'], "Unknown option '--faster'; see --help"],
    ['a stray word', () => ['demo'], "Unexpected argument 'demo'; see --help"],
    ['an option without its value', () => ['--plan'], '--plan: expected a value, found '],
    ['a value that looks like an option', () => ['--seed', '-1'], '--seed: expected a value, found a word'],
    ['a file without a name', () => ['--fixes', ''], '--fixes: expected a file, found an empty name'],
    [
      'a seed that is none',
      () => ['--seed', '1.5'],
      '--seed: expected a whole number of at most nine digits, found "1.5"',
    ],
    ['a plan that is not there', () => ['--plan', join(folder, 'none.json')], 'none.json: no such file'],
    ['a folder for a plan', () => ['--plan', folder], 'expected a file, found a folder'],
    [
      'a plan that is no JSON',
      () => ['--plan', put('a.json', 'goal: 90 min')],
      'a.json: the file: expected JSON',
    ],
    [
      'a plan with a goal of zero',
      () => ['--plan', put('b.json', '{"distanceM": 5000, "goalS": 0}')],
      'b.json: goalS: expected a number of seconds above 0 and at most 2592000, found 0',
    ],
    [
      'a plan of 50 MB, unread',
      () => {
        const file = put('huge.json', '{');
        truncateSync(file, 50_000_000);
        return ['--plan', file];
      },
      'huge.json: the file: expected at most 1.0 MB, found 50 MB',
    ],
    [
      'fixes that are none',
      () => ['--fixes', put('c.jsonl', '\nhello\n')],
      'c.jsonl: line 2: expected a fix or an event as a JSON object, found "hello"',
    ],
    [
      'fixes that are empty',
      () => ['--fixes', put('d.jsonl', '')],
      'd.jsonl: line 1: expected a fix or an event as a JSON object, found nothing',
    ],
    [
      'a track without times',
      () => ['--fixes', put('e.gpx', northward(1500))],
      'e.gpx: the file: expected a track whose points have a time, found 60 without one: a course, no recording',
    ],
    [
      'a course that is another XML',
      () => ['--course', put('f.gpx', '<kml/>')],
      'f.gpx: the file: expected a gpx element at the top, found kml',
    ],
    [
      'a course of one point',
      () => ['--course', put('g.gpx', '<gpx><wpt lat="1" lon="1"/></gpx>')],
      'g.gpx: the file: expected a track or route of at least two points, found no line',
    ],
    [
      'a course of 500 MB, unread',
      () => {
        const file = put('huge.gpx', '<gpx>');
        truncateSync(file, 500_000_000);
        return ['--course', file];
      },
      'huge.gpx: the file: expected at most 64 MB, found 500 MB',
    ],
  ];
  const onPlan = (...more: string[]): string[] => ['--plan', put('plan.json', PLAN), ...more];
  const withRun = (course: string): string[] =>
    onPlan('--fixes', put('run.jsonl', log(420)), '--course', put('h.gpx', course));
  const unlikely: typeof refused = [
    [
      'a packed recording',
      () => ['--fixes', put('i.gpx.gz', gzipSync(northward(1500)))],
      'i.gpx.gz: the file: expected text, found a packed file (gzip)',
    ],
    [
      'a packed plan',
      () => ['--plan', put('j.json', gzipSync(PLAN))],
      'j.json: the file: expected text, found a packed file (gzip)',
    ],
    [
      'fixes in which the press is all that can be read',
      () => onPlan('--fixes', put('k.jsonl', log(420).replaceAll('"latitude":54', '"latitude":"54"'))),
      'k.jsonl: line 2: expected coords.latitude in degrees, -90 to 90, found ',
    ],
    [
      'fixes whose times are seconds',
      () => onPlan('--fixes', put('l.jsonl', log(420).replaceAll(/("timestamp":\d{10})000/g, '$1'))),
      'l.jsonl: line 2: expected timestamp in milliseconds, found 1809851400: seconds',
    ],
    [
      'places with a comma',
      () => ['--fixes', put('m.gpx', northward(1500).replaceAll(/lat="54\.?/g, 'lat="54,'))],
      'expected at least one usable point, found 60 points without a usable lat, the first with lat="54,"',
    ],
    [
      'a course in another town',
      () => withRun(northward(1500).replaceAll('lon="7"', 'lon="9"')),
      'h.gpx: the file: expected a course where the run was, found one elsewhere',
    ],
    [
      'the course of another race',
      () => withRun(northward(16_000)),
      'h.gpx: the file: expected a line of about 1.50 km, as the plan has it, found 16.0',
    ],
    [
      'the half of a course out and back',
      () => withRun(northward(750)),
      'h.gpx: the file: expected a line of about 1.50 km, as the plan has it, found 0.75 km',
    ],
    [
      'a plan whose own course is one place',
      () => ['--plan', put('n.json', `${PLAN.slice(0, -1)}, "course": {"points": [[54, 7], [54, 7]]}}`)],
      'n.json: course.points: expected two points or more, apart, found one place',
    ],
  ];
  it.each([...refused, ...unlikely])(
    '%s: status 2, one line, nothing on standard output',
    (_, args, line) => {
      for (const json of [[], ['--json', '--trace']]) {
        const left = runCommand([...json, ...args()]);
        expect(left.status).toBe(2);
        expect(left.stdout).toBe('');
        expect(left.stderr).toContain(line);
        expect(left.stderr.trimEnd().split('\n')).toHaveLength(1);
      }
    },
  );
});

describe('rehearse --json', () => {
  it('has every field of the contract on a cue, and the end last', () => {
    const out = lines(['--plan', put('plan.json', PLAN), '--fixes', put('run.jsonl', log(420))]);
    const at1000 = out.find((l) => l.type === 'cue' && l['kind'] === 'checkpoint');
    expect(Object.keys(at1000 ?? {})).toEqual([
      'type',
      'kind',
      'tS',
      'startS',
      'endS',
      'text',
      'atM',
      'aheadS',
      'aheadSdS',
      'distanceM',
    ]);
    expect(at1000).toMatchObject({ atM: 1000 });
    const end = out.at(-1);
    expect(Object.keys(end ?? {})).toEqual([
      'type',
      'finishS',
      'distanceM',
      'cues',
      'talkS',
      'fixes',
      'skipped',
    ]);
    expect(end).toMatchObject({ type: 'end', cues: out.length - 1, fixes: 420, skipped: 0 });
    expect(Math.abs((end?.['finishS'] as number) - 375)).toBeLessThan(3);
  });

  it('has the estimate after each fix up to the line with --trace, and only then', () => {
    const args = ['--plan', put('plan.json', PLAN), '--fixes', put('run.jsonl', log(420))];
    const traced = lines([...args, '--trace']).filter((l) => l.type === 'trace');
    expect(traced.length).toBeGreaterThan(370);
    expect(traced.length).toBeLessThan(380);
    expect(Object.keys(traced[100] ?? {})).toEqual([
      'type',
      'tS',
      'distanceM',
      'distanceSdM',
      'speedMps',
      'aheadS',
      'aheadSdS',
    ]);
    expect(lines(args).some((l) => l.type === 'trace')).toBe(false);
  });

  it('counts what it skipped and goes on', () => {
    const damaged = `${log(420)}\n{"timestamp": oh no}\n[]\n`;
    const end = lines(['--plan', put('plan.json', PLAN), '--fixes', put('damaged.jsonl', damaged)]).at(-1);
    expect(end).toMatchObject({ fixes: 420, skipped: 2 });
  });

  it('has no finish where the run does not come to it', () => {
    const end = lines(['--plan', put('plan.json', PLAN), '--fixes', put('short.jsonl', log(200))]).at(-1);
    expect(end).toMatchObject({ finishS: null });
    // The last fix is at 796 m; the seconds in which what is due is still said are not run.
    expect(Math.abs((end?.['distanceM'] as number) - 796)).toBeLessThan(8);
  });

  it('moves no start once the run is over', () => {
    const late = `${log(400)}\n${JSON.stringify({ timestamp: T0 + 400_000, event: 'start' })}`;
    const early = late.slice(late.indexOf('\n') + 1);
    const out = lines(['--plan', put('plan.json', PLAN), '--fixes', put('late.jsonl', early)]);
    expect(Math.abs((out.at(-1)?.['finishS'] as number) - 375)).toBeLessThan(8);
    const checkpoint = out.find((l) => l['kind'] === 'checkpoint');
    expect(Math.abs((checkpoint?.['startS'] as number) - 250)).toBeLessThan(8);
  });

  it('says what it scaled by much, in the call sheet', () => {
    const sheet = runCommand([
      ...['--plan', put('plan.json', PLAN), '--fixes', put('run.jsonl', log(420))],
      ...['--course', put('short.gpx', northward(1350))],
    ]);
    expect(sheet.stdout).toContain('the course line is 10 % too short: scaled to the race');
  });

  it('prints a name out of a file as one line that a terminal does not obey', () => {
    const name = 'Harbour\n\u001b[2J\u202Erun';
    const plan = put('name.json', JSON.stringify({ ...JSON.parse(PLAN), name }));
    expect(runCommand(['--plan', plan]).stdout.split('\n')[0]).toBe('Harbour [2J run');
  });

  it('calls an opening that is slower so', () => {
    const opening = { untilM: 500, quickerSPerKm: -8 };
    const plan = put('slow.json', JSON.stringify({ ...JSON.parse(PLAN), opening }));
    expect(runCommand(['--plan', plan]).stdout).toContain('; 8 s/km slower to 0.50 km');
  });

  it('scales a course to the official distance', () => {
    const args = ['--plan', put('plan.json', PLAN), '--fixes', put('run.jsonl', log(420))];
    // The line measures 1470 m by itself and is 1500 m: the runner is there after 367.5 s.
    const end = lines([...args, '--course', put('course.gpx', northward(1470))]).at(-1);
    expect(Math.abs((end?.['finishS'] as number) - 367.5)).toBeLessThan(2);
  });

  it('reads a plan’s own course', () => {
    const course = {
      points: [
        [54, 7],
        [54 + 1470 / 111_330, 7],
      ],
    };
    const own = put('own.json', JSON.stringify({ ...JSON.parse(PLAN), course }));
    const end = lines(['--plan', own, '--fixes', put('run.jsonl', log(420))]).at(-1);
    expect(Math.abs((end?.['finishS'] as number) - 367.5)).toBeLessThan(2);
  });

  it('does not force a run elsewhere onto the demo’s course', () => {
    const elsewhere = runCommand(['--fixes', put('run.jsonl', log(420))]);
    expect(elsewhere.stdout).toContain('a run elsewhere: the course is not used');
  });

  it('ends a simulated run without a line at the line, however far the estimate is off there', () => {
    const plan = put('long.json', '{"distanceM": 42195, "goalS": 14400}');
    const end = lines(['--plan', plan, '--seed', '4']).at(-1);
    expect(Math.abs((end?.['finishS'] as number) - 14_420)).toBeLessThan(40);
  });

  it('simulates a run of a plan where there are no fixes: the same seed, the same run', () => {
    const plan = put('plan.json', PLAN);
    const of = (seed: string): string => runCommand(['--plan', plan, '--json', '--seed', seed]).stdout;
    expect(of('4')).toBe(of('4'));
    expect(of('4')).not.toBe(of('5'));
    const end = lines(['--plan', plan, '--seed', '4']).at(-1);
    expect(Math.abs((end?.['finishS'] as number) - 402)).toBeLessThan(15);
  });
});

describe('the process', () => {
  const run = (args: string[]) =>
    promisify(execFile)('npm', ['run', '--silent', 'rehearse', '--', ...args]).then(
      ({ stdout, stderr }) => ({ stdout, stderr, code: 0 }),
      (e: { stdout: string; stderr: string; code: number }) => ({
        stdout: e.stdout,
        stderr: e.stderr,
        code: e.code,
      }),
    );

  it('prints JSON lines and nothing else', async () => {
    const { stdout, stderr, code } = await run(['--json', '--plan', put('plan.json', PLAN)]);
    expect([stderr, code]).toEqual(['', 0]);
    expect(
      stdout
        .trimEnd()
        .split('\n')
        .map((l) => JSON.parse(l).type)
        .at(-1),
    ).toBe('end');
  });

  it('leaves with 2 and one line when an input is bad', async () => {
    const { stdout, stderr, code } = await run(['--json', '--plan', put('bad.json', '{"distanceM": -1}')]);
    expect([stdout, code]).toEqual(['', 2]);
    expect(stderr).toMatch(/^rehearse: .*bad\.json: distanceM: expected .*, found -1\n$/);
  });

  it('says what it can do', async () => {
    expect((await run(['--help'])).stdout).toContain('--fixes FILE');
  });

  it('finds a file where the command was called', async () => {
    put('here.json', '{"distanceM": -7}');
    const project = process.cwd();
    const { stderr } = await promisify(execFile)(
      'npm',
      ['--prefix', project, 'run', '--silent', 'rehearse', '--', '--plan', 'here.json'],
      { cwd: folder },
    ).catch((e: { stderr: string }) => e);
    expect(stderr).toBe(
      'rehearse: here.json: distanceM: expected a number of metres from 1 to 1000000, found -7\n',
    );
  });

  it('does not call it rehearsed where the command could not be put together', async () => {
    // The bundler is looked for by npm's own path first, then in this one, which has node and a bundler that fails.
    const failing = put('esbuild', '#!/bin/sh\nexit 1\n');
    chmodSync(failing, 0o755);
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: { rehearse: string } };
    const left = await promisify(execFile)('sh', ['-c', scripts.rehearse], {
      env: { ...process.env, PATH: `${folder}:${process.env['PATH']}` },
    }).then(
      () => 0,
      (e: { code: number }) => e.code,
    );
    expect(left).not.toBe(0);
  });
});
