import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';

const PAGES = ['README.md', 'DEVELOPERS.md', 'src/README.md'];

const textOf = (page: string): string => readFileSync(page, 'utf8');
/** Blocks of code hold names that are examples. */
const proseOf = (page: string): string => textOf(page).replace(/^```[\s\S]*?^```/gm, '');

/** `a/{b,c}.ts` is two paths. */
const spelledOut = (path: string): string[] => {
  const found = /^(.*)\{([^}]*)\}(.*)$/.exec(path);
  return found === null ? [path] : (found[2] ?? '').split(',').map((one) => found[1] + one + found[3]);
};

/** The part of a path before its first star or name in angle brackets, down to the folder. */
const solid = (path: string): string => (/[*<]/.test(path) ? path.replace(/[^/]*[*<].*$/, '') : path);

/** From the root or from `src`, with its ending or without. */
const isThere = (path: string): boolean =>
  [path, `src/${path}`, `src/${path}.ts`].some((one) => existsSync(one));

/** Paths in a page's words. */
const pathsIn = (page: string): string[] =>
  [...proseOf(page).matchAll(/`((?:src|test|public|core|voice|voicepack|session|sensors|log)\/[^`\s]*)`/g)]
    .flatMap((found) => spelledOut(found[1] ?? ''))
    .map(solid);

const slugOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replace(/ /g, '-');
const anchorsOf = (page: string): string[] =>
  [...textOf(page).matchAll(/^#+ (.*)$/gm)].map((found) => slugOf(found[1] ?? ''));

/** A link of a page that leads nowhere. */
const isBroken = (page: string, link: string): boolean => {
  if (/^https?:/.test(link)) return false;
  const [path = '', anchor] = link.split('#');
  const target = path === '' ? page : posix.join(posix.dirname(page), path);
  return !existsSync(target) || (anchor !== undefined && !anchorsOf(target).includes(anchor));
};

describe.each(PAGES)('%s', (page) => {
  test('names files and folders that are there', () => {
    expect(pathsIn(page).filter((path) => !isThere(path))).toEqual([]);
  });

  test('links to what is there', () => {
    const links = [...proseOf(page).matchAll(/\]\(([^)]+)\)/g)].map((found) => found[1] ?? '');
    expect(links.filter((link) => isBroken(page, link))).toEqual([]);
  });

  test('names commands that package.json has', () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as {
      scripts: Record<string, string>;
    };
    const named = [...textOf(page).matchAll(/npm run (?:--silent )?([a-z:]+)/g)].map(
      (found) => found[1] ?? '',
    );
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});

test('what holds against hidden pages, interruptions and refusals are tests by those names', () => {
  const table = /^Hidden, interrupted, denied[\s\S]*?^\| denied camera .*$/m.exec(
    textOf('DEVELOPERS.md'),
  )?.[0];
  const tests = readdirSync('test', { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.ts$/.test(file) && file !== 'documents.test.ts')
    .map((file) => readFileSync(`test/${file}`, 'utf8'))
    .join('\n');
  const named = [...(table ?? '').matchAll(/‘([^’]+)’/g)].map((found) => found[1] ?? '');
  expect(named.length).toBeGreaterThan(20);
  expect(named.filter((name) => !tests.includes(name))).toEqual([]);
});

describe('the check itself', () => {
  test('finds a path, a link and an anchor that lead nowhere', () => {
    expect(isThere('core/plan/schedule.ts')).toBe(true);
    expect(isThere('core/plan/nothing.ts')).toBe(false);
    expect(spelledOut('test/{a,b}.ts').map(solid)).toEqual(['test/a.ts', 'test/b.ts']);
    expect(solid('src/languages/*/screen/')).toBe('src/languages/');
    expect(isBroken('DEVELOPERS.md', '#the-shape')).toBe(false);
    expect(isBroken('DEVELOPERS.md', '#no-such-part')).toBe(true);
    expect(isBroken('src/README.md', 'nothing.md')).toBe(true);
  });
});
