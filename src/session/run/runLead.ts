/**
 * One window leads a run. The lock is the browser's own: it goes when the window goes, however it goes, so that nothing
 * is left behind by a crash.
 */
export interface RunLead {
  /** True once this window leads; false when another does. Where there are no locks every window leads. */
  readonly take: () => Promise<boolean>;
  readonly give: () => void;
}

const NAME = 'soundline.run';

export const createRunLead = (locks: Pick<LockManager, 'request'> | undefined): RunLead => {
  let release: (() => void) | null = null;
  return {
    take: async () => {
      if (locks === undefined || release !== null) return true;
      return await new Promise<boolean>((settle) => {
        locks
          .request(NAME, { ifAvailable: true }, (lock) => {
            settle(lock !== null);
            if (lock === null) return undefined;
            return new Promise<void>((done) => {
              release = done;
            });
          })
          .catch(() => settle(true));
      });
    },
    give: () => {
      release?.();
      release = null;
    },
  };
};
