import { expect, test } from 'vitest';
import { loadedOnce } from '../../src/screens/parts/loadedOnce.ts';

test('nothing is loaded before it is asked for, and everybody gets the same', async () => {
  let loads = 0;
  const load = loadedOnce(async () => ({ number: ++loads }));
  expect(loads).toBe(0);
  const [one, other] = await Promise.all([load(), load()]);
  expect(other).toBe(one);
  expect(await load()).toBe(one);
  expect(loads).toBe(1);
});

test('a load that failed is told to all who waited, and tried again by the next who asks', async () => {
  let loads = 0;
  const load = loadedOnce(async () => {
    if (++loads === 1) throw new Error('no network');
    return 'here';
  });
  const told = await Promise.allSettled([load(), load()]);
  expect(told.map((t) => t.status)).toEqual(['rejected', 'rejected']);
  expect(await load()).toBe('here');
  expect(loads).toBe(2);
});
