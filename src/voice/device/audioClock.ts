import type { ClockLine } from './clockLine.ts';

/** The two clocks of a page's sound: the audio hardware's (seconds) and the page's (performance.now, ms). */
export interface AudioClock {
  /** Context time at which a sound must start so that it leaves the earphone at an instant of the page. */
  readonly contextTimeS: (pageMs: number) => number;
  /** Context time at an instant of the page, nothing made up for. */
  readonly plainTimeS: (pageMs: number) => number;
  readonly nowS: () => number;
}

/**
 * Seconds between a sample's context time and the ear, as far as the browser knows: `outputLatency` counts the device
 * (Bluetooth included where the system tells), `baseLatency` only the browser's own buffer.
 */
const outputLatencyS = (context: AudioContext): number => context.outputLatency || context.baseLatency || 0;

/**
 * @param line       how the two clocks stand; looked at once more now
 * @param unknownMs  what the browser does not know of the earphones' delay, found by ear
 */
export const audioClockOf = (
  context: AudioContext,
  nowMs: () => number,
  line: ClockLine,
  unknownMs = 0,
): AudioClock => {
  line.see(context.currentTime, nowMs());
  return {
    nowS: () => context.currentTime,
    plainTimeS: line.audioS,
    contextTimeS: (pageMs) => line.audioS(pageMs) - outputLatencyS(context) - unknownMs / 1000,
  };
};
