import { parseRacePlan } from '../../core/plan/parseRacePlan.ts';
import { t } from '../../languages/text.ts';
import { type LogStore, linesOf } from '../../log/store.ts';

/** A run that this device has kept. */
export interface PastRun {
  readonly id: number;
  readonly name: string;
}

/** The runs of this device, as far as a course needs them. */
export interface PastRuns {
  /** The latest first. Rejects where the storage does. */
  readonly list: () => Promise<readonly PastRun[]>;
  /** The log of one as a file, read like any other. */
  readonly file: (run: PastRun) => Promise<File>;
}

/** More than this nobody looks through. */
const MOST = 20;

export const pastRunsOf = (store: Pick<LogStore, 'heads' | 'batches'>): PastRuns => ({
  list: async () =>
    (await store.heads()).slice(0, MOST).map(({ id, planFile }) => {
      const plan = parseRacePlan(planFile);
      const day = new Date(id).toISOString().slice(0, 10);
      return { id, name: `${plan.ok ? plan.value.name : t('Run||noun')}, ${day}` };
    }),
  file: async ({ id, name }) => new File([linesOf(await store.batches(id)).join('\n')], name),
});
