const DAY_MS = 86_400_000;

/** The next time at which the wall clock shows this; null where it is no time of day. */
export const nextAtMs = (clockText: string, wallMs: number): number | null => {
  const [hours, minutes] = clockText.split(':').map(Number);
  if (hours === undefined || minutes === undefined || !(hours < 24 && minutes < 60)) return null;
  const today = new Date(wallMs).setHours(hours, minutes, 0, 0);
  return today > wallMs ? today : today + DAY_MS;
};
