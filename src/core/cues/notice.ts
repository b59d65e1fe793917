/**
 * What the device has to tell the runner: nothing about the race, but about what can be known of it from here on. They
 * come in as inputs like everything else, so that a log says what was heard and why.
 */
export const NOTICES = [
  /** The page was closed in mid-run and has taken the run up again from its log. */
  'resumed',
  /** A call or another program had taken the sound, and it has come back. */
  'soundBack',
  /** The device does not take the log: no room, or no storage. */
  'notStored',
  /** It takes it again. */
  'storedAgain',
  /** The phone's clock was set; the run's own is not touched. */
  'clockSet',
  /** Another window of this device leads this run. */
  'elsewhere',
  /** Position is refused, or was taken away. */
  'refused',
  /** Only answers and the finish for a while, by the runner's wish; and the end of that. */
  'quiet',
  'talking',
] as const;
export type NoticeName = (typeof NOTICES)[number];
