import { expect, test } from 'vitest';
import { footPodOf, withFootPod } from '../../../src/core/plan/planPod.ts';
import { createPodShelf } from '../../../src/session/practice/podShelf.ts';

const keepOf = (texts: Map<string, string>) => ({
  getItem: (key: string) => texts.get(key) ?? null,
  removeItem: (key: string) => {
    texts.delete(key);
  },
  setItem: (key: string, text: string) => {
    texts.set(key, text);
  },
});

const SEEN = { factor: 0.962, slope: -0.03, factorVar: 2e-6, slopeVar: 9e-5, covar: 1e-6 };

test('what a run has shown of a foot pod is there for the next, for that pod alone', () => {
  const shelf = createPodShelf(keepOf(new Map()));
  expect(shelf.of('left shoe')).toBeNull();
  shelf.learn('left shoe', SEEN);
  expect(shelf.of('left shoe')).toMatchObject({ factor: 0.962, slope: -0.03 });
  expect(shelf.of('left shoe')?.factorVar).toBeGreaterThan(SEEN.factorVar);
  expect(shelf.of('right shoe')).toBeNull();
});

test('only so many are kept, and the oldest goes first', () => {
  const shelf = createPodShelf(keepOf(new Map()));
  for (let i = 0; i < 12; i++) shelf.learn(`pod ${i}`, SEEN);
  expect(shelf.of('pod 0')).toBeNull();
  expect(shelf.of('pod 11')).not.toBeNull();
});

test('what stands there and makes no sense is nothing', () => {
  for (const text of [
    '',
    'x',
    'null',
    '[]',
    '{"a":{"factor":9}}',
    '{"a":{"factor":1,"slope":0,"factorVar":1e-4}}',
  ])
    expect(createPodShelf(keepOf(new Map([['soundline.footPods', text]]))).of('a')).toBeNull();
});

test('a plan file carries it there and back, and keeps the rest', () => {
  const file = withFootPod('{"version":1,"kind":"practice","name":"x"}', SEEN);
  expect(footPodOf(file)).toEqual(SEEN);
  expect(JSON.parse(file)).toMatchObject({ version: 1, kind: 'practice', name: 'x' });
  expect(footPodOf('{}')).toBeNull();
  expect(footPodOf('{"footPod":{"factor":0.5}}')).toBeNull();
  expect(withFootPod('{}', null)).toBe('{}');
});
