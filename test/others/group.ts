import { type ChildProcess, spawn } from 'node:child_process';

/** A browser or a driver in a process group of its own, so that all that it starts ends with it. */
export interface Group {
  /** Ends it and everything that it started. Does nothing the second time. */
  readonly end: () => Promise<void>;
}

/** SIGKILL is the kernel's to do; a process that waits for a disk can take a moment. */
const GONE_WITHIN_MS = 5000;

const isGone = (child: ChildProcess): boolean => child.exitCode !== null || child.signalCode !== null;

/** Kills a group, the parts of it too that outlived their head. */
const kill = (child: ChildProcess): void => {
  if (child.pid === undefined) return;
  try {
    process.kill(-child.pid, 'SIGKILL');
  } catch {
    // Nobody of it is left.
  }
};

export const startGroup = (
  path: string,
  args: readonly string[],
  env: Readonly<Record<string, string | undefined>> = process.env,
): Group => {
  const child = spawn(path, args, { detached: true, stdio: 'ignore', env });
  // A path that cannot be started is told by whoever waits for its answer, and waits within bounds.
  child.on('error', () => {});
  // A test process that ends in the middle, by a fault or a timeout, leaves no browser behind.
  const endWithUs = (): void => kill(child);
  process.once('exit', endWithUs);
  return {
    end: async () => {
      process.off('exit', endWithUs);
      // Asked before it is killed: whoever ended by a signal tells it once, and nobody who asks later hears of it.
      const gone = new Promise<void>((done) => {
        if (child.pid === undefined || isGone(child)) done();
        child.once('exit', () => done());
        setTimeout(done, GONE_WITHIN_MS).unref();
      });
      kill(child);
      await gone;
    },
  };
};

/** @throws Error when there is no answer in time */
export const within = async <Answer>(ms: number, what: string, answer: Promise<Answer>): Promise<Answer> => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`no answer within ${ms / 1000} s: ${what}`)), ms);
  });
  return Promise.race([answer, late]).finally(() => clearTimeout(timer));
};
