/** A race for tests that need any. */
export const PIER_MILE = {
  version: 1,
  kind: 'race',
  name: 'Pier mile',
  distanceM: 1600,
  goalS: 400,
  pacing: 'pace',
} as const;
