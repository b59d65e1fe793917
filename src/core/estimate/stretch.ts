import { at, BEGAN, cov, N, S } from './courseState.ts';
import { copyOf, type Gaussian } from './kalman.ts';

/**
 * A stretch measured by itself: the place where it began stays part of the belief, so that what is learned later of the
 * receiver's error then sets the begin right too. The difference of two estimates of their own time would not be.
 */

/** The belief with a stretch that begins where the runner is now. */
export const beginStretch = (g: Gaussian): Gaussian => {
  const next = copyOf(g);
  for (let j = 0; j < N; j++) next.P[BEGAN * N + j] = cov(g, S, j);
  for (let i = 0; i < N; i++) next.P[i * N + BEGAN] = next.P[i * N + S] as number;
  next.x[BEGAN] = at(g, S);
  return next;
};

/** Metres since the stretch began, and their variance. */
export const stretchOf = (g: Gaussian): { readonly distanceM: number; readonly varianceM2: number } => ({
  distanceM: at(g, S) - at(g, BEGAN),
  varianceM2: Math.max(0, cov(g, S, S) - 2 * cov(g, S, BEGAN) + cov(g, BEGAN, BEGAN)),
});

/** The same belief on a road that comes again every so many metres: further along by that much, in place. */
export const moveAlong = (g: Gaussian, byM: number): void => {
  g.x[S] = at(g, S) + byM;
  g.x[BEGAN] = at(g, BEGAN) + byM;
};
