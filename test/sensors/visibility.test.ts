import { expect, test } from 'vitest';
import { watchVisibility } from '../../src/sensors/visibility.ts';

const pretendWindow = () => {
  const document = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  const win = Object.assign(new EventTarget(), { document });
  return {
    win: win as unknown as Window,
    become: (state: 'visible' | 'hidden') => {
      document.visibilityState = state;
      document.dispatchEvent(new Event('visibilitychange'));
    },
    leave: () => win.dispatchEvent(new Event('pagehide')),
  };
};

test('tells that the page goes out of sight and comes back', () => {
  const { win, become } = pretendWindow();
  const told: boolean[] = [];
  const end = watchVisibility((visible) => told.push(visible), win);
  become('hidden');
  become('visible');
  end();
  become('hidden');
  expect(told).toEqual([false, true]);
});

test('a page that is left begins nothing any more; one that is brought back from memory goes on', () => {
  const { win, become, leave } = pretendWindow();
  const told: boolean[] = [];
  watchVisibility((visible) => told.push(visible), win);
  leave();
  become('hidden');
  expect(told).toEqual([]);
  become('visible');
  become('hidden');
  expect(told).toEqual([true, false]);
});
