import { type ReadonlySignal, signal } from '@preact/signals';

export const SCREENS = ['plan', 'rehearse', 'run'] as const;
export type ScreenName = (typeof SCREENS)[number];

const screenOf = (hash: string): ScreenName => SCREENS.find((name) => hash === `#/${name}`) ?? 'rehearse';

/** Which screen the address names. Without one it is the rehearsal: the way to find out what Soundline does. */
export const watchRoute = (win: Window = window): ReadonlySignal<ScreenName> => {
  const route = signal(screenOf(win.location.hash));
  win.addEventListener('hashchange', () => {
    route.value = screenOf(win.location.hash);
  });
  return route;
};
