import { type ReadonlySignal, signal } from '@preact/signals';

export const SCREENS = ['plan', 'practice', 'rehearse', 'run', 'runs'] as const;
/** The way to the race, in its order; in the bar they all are 'Plan'. */
export const PREPARE = ['goal', 'course', 'plan', 'fuel', 'day', 'paper', 'aloud', 'whatIf'] as const;
/** Doors beside the way: the check before the start, the tones to learn, a plan handed over. */
export const ASIDE = ['ready', 'learn', 'share'] as const;
export type ScreenName = (typeof SCREENS)[number] | (typeof PREPARE)[number] | (typeof ASIDE)[number];

/** Opens the latest of the past runs at once: where a run that just ended is looked at. */
export const LATEST_RUN = '#/runs/latest';

/** Opens the rehearsal with the runner's own plan chosen. */
export const HEAR_MINE = '#/rehearse/mine';

const screenOf = (hash: string): ScreenName =>
  [...SCREENS, ...PREPARE, ...ASIDE].find((name) => hash === `#/${name}` || hash.startsWith(`#/${name}/`)) ??
  'rehearse';

/** Which screen the address names. Without one it is the rehearsal: the way to find out what Soundline does. */
export const watchRoute = (win: Window = window): ReadonlySignal<ScreenName> => {
  const route = signal(screenOf(win.location.hash));
  win.addEventListener('hashchange', () => {
    const next = screenOf(win.location.hash);
    if (next === route.value) return;
    route.value = next;
    // A link stands at the foot of many a screen; the next one is read from its head.
    win.scrollTo(0, 0);
  });
  return route;
};
