import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { HOUSE, houseTable, IMPURE, ROOTS } from './support/house.ts';
import { reachOf } from './support/imports.ts';

/** Lines of a source file: beyond this it holds more than one idea. */
const LONGEST = 300;

type Sources = Readonly<Record<string, string>>;

/** `core/plan/schedule.ts` lives in `core/plan`, `voice/words/words.ts` in `voice`, `main.tsx` in `main.tsx`. */
const roomOf = (file: string): string =>
  file
    .split('/')
    .slice(0, file.startsWith('core/') ? 2 : 1)
    .join('/');

const packageOf = (specifier: string): string =>
  specifier.startsWith('node:')
    ? 'node:'
    : specifier
        .split('/')
        .slice(0, specifier.startsWith('@') ? 2 : 1)
        .join('/');

/** Why one import of one file may not stand; null where it may. */
const objection = (file: string, specifier: string): string | null => {
  const room = roomOf(file);
  if (!specifier.startsWith('.')) {
    const allowed = room === 'main.tsx' || HOUSE[room]?.packages.includes(packageOf(specifier));
    return allowed ? null : `${room} may not import the package ${packageOf(specifier)}`;
  }
  const target = roomOf(posix.join(posix.dirname(file), specifier));
  if (target.startsWith('..') || target === room) return target === room ? null : 'it leaves src';
  if (ROOTS.includes(target)) return `nobody imports ${target}`;
  return room === 'main.tsx' || HOUSE[room]?.rooms.includes(target) ? null : `${room} may not know ${target}`;
};

/** Everything wrong with a set of sources (paths relative to src), one line each, naming file and import. */
const faultsOf = (sources: Sources): string[] =>
  Object.entries(sources).flatMap(([file, source]) => {
    const room = roomOf(file);
    if (room !== 'main.tsx' && !HOUSE[room])
      return [`${file}: unknown folder ${room}; say in test/support/house.ts what it may import`];
    const { imports, uses } = reachOf(file, source, IMPURE);
    const lines = source.split('\n').length;
    const long = lines > LONGEST ? [`${file}: ${lines} lines; more than one idea?`] : [];
    const impure = room.startsWith('core/') ? uses.map((name) => `${file}: uses ${name}; core is pure`) : [];
    const doors = imports.flatMap((specifier) => {
      const why = objection(file, specifier);
      return why === null ? [] : [`${file}: imports '${specifier}'; ${why}`];
    });
    return [...long, ...impure, ...doors];
  });

const readSources = (): Sources => {
  const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.tsx?$/.test(file),
  );
  return Object.fromEntries(files.map((file) => [file, readFileSync(`src/${file}`, 'utf8')]));
};

describe('the house', () => {
  const sources = readSources();

  test('is read at all', () => {
    expect(Object.keys(sources)).toContain('core/units/units.ts');
  });

  test('keeps its doors', () => {
    expect(faultsOf(sources)).toEqual([]);
  });

  const readme = readFileSync('src/README.md', 'utf8');

  test('prints its table in src/README.md', () => {
    expect(readme, 'copy this table there').toContain(houseTable());
  });

  test.each(Object.keys(HOUSE))('says in src/README.md what %s is', (room) => {
    const [whatItIs] = readme.split('## Who may import whom');
    expect(whatItIs).toMatch(new RegExp(`^\\| ${room} \\| \\S`, 'm'));
  });
});

describe('the check itself', () => {
  const planted: readonly (readonly [what: string, file: string, source: string, fault: string])[] = [
    [
      'a plan in the estimate',
      'core/estimate/a.ts',
      "import type { P } from '../plan/p.ts';",
      'core/estimate may not know core/plan',
    ],
    [
      'a type by import()',
      'core/estimate/a.ts',
      "type P = import('../plan/p.ts').P;",
      'core/estimate may not know core/plan',
    ],
    ['a re-export', 'voice/a.ts', "export * from '../screens/s.tsx';", 'voice may not know screens'],
    [
      'a lazy import',
      'log/a.ts',
      "export const f = () => import('../voice/v.ts');",
      'log may not know voice',
    ],
    ['a package in the core', 'core/geo/a.ts', "import 'idb';", 'core/geo may not import the package idb'],
    [
      'Node on the page',
      'screens/a.tsx',
      "import { readFileSync } from 'node:fs';",
      'screens may not import the package node:',
    ],
    ['a root', 'screens/a.tsx', "import '../main.tsx';", 'nobody imports main.tsx'],
    ['the terminal on the page', 'main.tsx', "import './rehearse/main.ts';", 'nobody imports rehearse'],
    ['a way out of src', 'voice/a.ts', "import '../../test/x.ts';", 'it leaves src'],
    ['an unknown folder', 'helpers/a.ts', '', 'unknown folder helpers'],
    ['an unknown room in core', 'core/misc/a.ts', '', 'unknown folder core/misc'],
    ['a long file', 'voice/a.ts', '\n'.repeat(300), '301 lines'],
    ['chance in the core', 'core/cues/a.ts', 'export const x = Math.random();', 'uses Math.random'],
    ['the wall clock in the core', 'core/run/a.ts', 'export const x = new Date(0);', 'uses Date'],
    ['a stopwatch in the core', 'core/run/a.ts', 'export const x = performance.now();', 'uses performance'],
  ];

  test.each(planted)('catches %s', (_what, file, source, fault) => {
    const faults = faultsOf({ [file]: source });
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(file);
    expect(faults[0]).toContain(fault);
  });

  test('lets what is allowed pass', () => {
    const fine = {
      'core/run/a.ts':
        "import type { P } from '../plan/p.ts'; export const x = Math.min(1, 2); // Date, Math.random()",
      'main.tsx': "import { render } from 'preact'; import './screens/s.tsx';",
      'rehearse/main.ts': "import { readFileSync } from 'node:fs'; import '../core/run/run.ts';",
    };
    expect(faultsOf(fine)).toEqual([]);
  });
});
