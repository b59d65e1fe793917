import { expect, test } from 'vitest';
import { pageKeep } from '../../../src/session/phone/pageKeep.ts';

test("is the browser's own where there is one", () => {
  const own = { getItem: () => 'mine' } as unknown as Storage;
  expect(pageKeep({ localStorage: own })).toBe(own);
});

test.each([
  [
    'forbidden',
    {
      get localStorage(): Storage {
        throw new DOMException('denied', 'SecurityError');
      },
    },
  ],
  ['absent', { localStorage: null }],
])('keeps for as long as the page is open where it is %s', (_why, win) => {
  const keep = pageKeep(win);
  expect(keep.getItem('a')).toBeNull();
  keep.setItem('a', '1');
  keep.setItem('b', '2');
  expect([keep.length, keep.key(1), keep.getItem('a')]).toEqual([2, 'b', '1']);
  keep.removeItem('a');
  expect(keep.getItem('a')).toBeNull();
  keep.clear();
  expect(keep.length).toBe(0);
});
