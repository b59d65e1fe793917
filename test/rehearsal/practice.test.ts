import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { parseGpx } from '../../src/core/course/gpx.ts';
import { practiceFile, readPracticePlan } from '../../src/core/plan/parsePracticePlan.ts';
import { readyMade } from '../../src/core/practice/sessions/readyMade.ts';
import { practiceCourseOfGpx } from '../../src/core/practice/way/fromGpx.ts';
import { roadOn } from '../../src/core/practice/way/lay.ts';
import { demoPlan } from '../../src/demo/race.ts';
import { writeLogLine } from '../../src/log/logLine.ts';
import { runCommand } from '../../src/rehearse/command.ts';
import { SESSION_STEADY, simulateSession } from '../../src/sensors/simulatedPractice.ts';
import { TOWN } from '../../src/sensors/simulatedReceiver.ts';

const folder = mkdtempSync(join(tmpdir(), 'practice-'));
afterAll(() => rmSync(folder, { recursive: true }));

const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const plan = file(
  'twice15.json',
  practiceFile(readyMade('twice15', demoPlan), (ms) => new Date(ms).toISOString()),
);

test('a session is rehearsed as JSON lines: cues in order and apart, the trace, the end last', () => {
  const { stdout, status } = runCommand(['--plan', plan, '--json', '--trace', '--seed', '4']);
  expect(status).toBe(0);
  const lines = stdout
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, number | string | null>);
  const cues = lines.filter((l) => l['type'] === 'cue');
  expect(cues.filter((c) => c['kind'] === 'leg')).toHaveLength(5);
  for (const [i, cue] of cues.entries())
    if (i > 0) expect(Number(cue['startS'])).toBeGreaterThanOrEqual(Number(cues[i - 1]?.['endS']));
  const end = lines.at(-1);
  expect(end?.['type']).toBe('end');
  expect(end?.['finishS']).toBe(3180);
  expect(end?.['cues']).toBe(cues.length);
  expect(lines.filter((l) => l['type'] === 'trace').length).toBeGreaterThan(3000);
});

test('the same seed, the same sheet', () => {
  const sheet = () => runCommand(['--plan', plan, '--seed', '5']).stdout;
  expect(sheet()).toBe(sheet());
  expect(sheet()).toContain('2 × 15 min');
});

test('a bad session ends with 2 and one line that names file and place', () => {
  const bad = file('bad.json', '{"kind":"practice","legs":[{"for":{"timeS":"x"}}]}');
  const { stdout, stderr, status } = runCommand(['--plan', bad]);
  expect(status).toBe(2);
  expect(stdout).toBe('');
  expect(stderr).toContain('legs[0].for.timeS');
  expect(stderr.trim().split('\n')).toHaveLength(1);
});

/** A round of streets that the runner knows, begun in the middle of it and run three times. */
const ROUND: readonly (readonly [latitude: number, longitude: number])[] = [
  [55.3, 5.0],
  [55.3042, 5.0018],
  [55.3051, 5.0085],
  [55.3009, 5.0102],
  [55.2991, 5.006],
  [55.3, 5.0],
];
const roundGpx = (): string => {
  const points = ROUND.slice(1).flatMap(([lat, lon], i) => {
    const [lat0, lon0] = ROUND[i] ?? [lat, lon];
    return Array.from({ length: 40 }, (_, k) => [
      lat0 + ((lat - lat0) * k) / 40,
      lon0 + ((lon - lon0) * k) / 40,
    ]);
  });
  const text = points
    .map(([lat, lon]) => `<trkpt lat="${lat?.toFixed(7)}" lon="${lon?.toFixed(7)}"/>`)
    .join('');
  return `<?xml version="1.0"?><gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>Round the harbour</name><trkseg>${text}</trkseg></trk></gpx>`;
};
const LEGS = [
  { kind: 'warm-up', for: { timeS: 240 }, target: { effort: 'easy' } },
  {
    repeat: 3,
    legs: [
      { kind: 'work', for: { distanceM: 800 }, target: { paceSPerKm: 270 } },
      { kind: 'recovery', for: { distanceM: 200 }, target: { effort: 'easy' } },
    ],
  },
  { kind: 'cool-down', for: { timeS: 120 }, target: { effort: 'easy' } },
];

describe('a session on a round that the runner knows', () => {
  const session = { kind: 'practice', name: '3 × 800 m round the harbour', legs: LEGS };
  const course = file('round.gpx', roundGpx());
  const bare = file('round.json', JSON.stringify(session));
  const got = readPracticePlan(session);
  const gpx = parseGpx(roundGpx());
  const way = gpx.ok ? practiceCourseOfGpx(gpx.value, '') : gpx;
  if (!got.ok || !way.ok) throw new Error('refused');
  const withCourse = file(
    'roundOwn.json',
    practiceFile({ ...got.value, course: way.value }, (ms) => new Date(ms).toISOString()),
  );
  /** A town: streets received as a phone does there. */
  const { inputs } = simulateSession({
    plan: got.value,
    runner: SESSION_STEADY,
    receiver: TOWN,
    penS: 10,
    seed: 12,
    podShare: null,
    road: roadOn(way.value),
  });
  const fixes = file('round.jsonl', inputs.map(writeLogLine).join('\n'));

  test('is heard as on its page', async () => {
    const { stdout, status } = runCommand(['--plan', bare, '--course', course, '--fixes', fixes]);
    expect(status).toBe(0);
    await expect(stdout).toMatchFileSnapshot('practice-on-a-round.golden.txt');
  });

  test('its own course in the plan file is as good as one beside it', () => {
    const [own, beside] = [
      runCommand(['--plan', withCourse, '--fixes', fixes, '--json', '--trace']),
      runCommand(['--plan', bare, '--course', course, '--fixes', fixes, '--json', '--trace']),
    ];
    expect(own.stdout).toBe(beside.stdout);
    const ends = own.stdout.trim().split('\n').at(-1) ?? '';
    expect(JSON.parse(ends)).toMatchObject({
      type: 'end',
      fixes: inputs.filter((i) => i.type === 'fix').length,
    });
  });

  test('a course that is none ends with 2 and one line that names the file', () => {
    const bad = file('bad.gpx', '<gpx version="1.1"><wpt lat="55" lon="5"/></gpx>');
    const { stdout, stderr, status } = runCommand(['--plan', bare, '--course', bad, '--fixes', fixes]);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain(
      'bad.gpx: the file: expected a track or route of at least two points, found no line',
    );
  });
});
