import { median } from './stats.ts';

const ROUNDS = 5;

/** Seconds of the processor, not of the clock: others use the machine too. Median of some rounds. */
export const cpuSeconds = (work: () => void): number =>
  median(
    Array.from({ length: ROUNDS }, () => {
      const from = process.cpuUsage();
      work();
      const { user, system } = process.cpuUsage(from);
      return (user + system) / 1e6;
    }),
  );
