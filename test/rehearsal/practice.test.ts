import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { practiceFile } from '../../src/core/plan/parsePracticePlan.ts';
import { readyMade } from '../../src/core/practice/sessions/readyMade.ts';
import { demoPlan } from '../../src/demo/race.ts';
import { runCommand } from '../../src/rehearse/command.ts';

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
