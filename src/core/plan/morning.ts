/** What the morning of a race asks for, in its order. */
export const MORNING = [
  'wake',
  'breakfast',
  'leave',
  'lastDrink',
  'arrive',
  'warmUp',
  'strides',
  'layers',
  'pen',
  'gun',
] as const;
export type MorningStep = (typeof MORNING)[number];
