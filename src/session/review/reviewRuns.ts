import { isImported } from '../../core/plan/importedPlan.ts';
import type { AnyPlan } from '../../core/plan/parsePracticePlan.ts';
import { UNNAMED_LANGUAGE } from '../../core/plan/planLanguage.ts';
import type { Digest } from '../../core/review/digest.ts';
import type { PracticeDigest } from '../../core/review/practiceDigest.ts';
import { type DoorError, ok, type Result } from '../../core/units/result.ts';
import { t } from '../../languages/text.ts';
import { type Backup, backupText, type KeptRun, parseBackup } from '../../log/exportBackup.ts';
import type { ReviewStore } from '../../log/reviewStore.ts';
import { type LogStore, linesOf } from '../../log/store.ts';
import { readRun } from './reviewFold.ts';

/** A kept run in the list. */
export interface RunRow {
  /** Epoch ms when it was made. */
  readonly id: number;
  readonly plan: AnyPlan | null;
  /** It came from elsewhere without a plan. */
  readonly isImported?: boolean;
  /** What an earlier look put together; null before the first. */
  readonly digest: Digest | PracticeDigest | null;
}

/** All runs on this device: list, add, take away, hand out. */
export interface RunShelf {
  readonly rows: () => Promise<readonly RunRow[]>;
  readonly load: (id: number) => Promise<KeptRun | null>;
  /** @param lines  of the log that went into it */
  readonly keepDigest: (id: number, digest: Digest | PracticeDigest, lines: number) => Promise<void>;
  readonly digest: (id: number) => Promise<Digest | PracticeDigest | null>;
  /** Gone from every store of this page. */
  readonly remove: (id: number) => Promise<void>;
  /** Adds runs from a file; one that is there already is left as it is. */
  readonly addFile: (
    text: string,
  ) => Promise<Result<{ readonly added: number; readonly skipped: number }, DoorError>>;
  readonly backup: () => Promise<string>;
  readonly restore: (
    text: string,
  ) => Promise<Result<{ readonly added: number; readonly cut: boolean }, DoorError>>;
}

export interface ShelfParts {
  readonly store: LogStore;
  readonly reviews: ReviewStore;
  readonly build: string;
  /** In which a run is called that comes from elsewhere; BCP 47 tag. */
  readonly language?: () => string;
  /** Where the page keeps its settings and plans. */
  readonly keep: Pick<Storage, 'length' | 'key' | 'getItem' | 'setItem'>;
}

/** Everything of this page in the browser's small storage begins with this. */
const OURS = 'soundline.';

const settingsOf = (keep: ShelfParts['keep']): Record<string, string> => {
  const settings: Record<string, string> = {};
  for (let i = 0; i < keep.length; i++) {
    const key = keep.key(i);
    const value = key?.startsWith(OURS) ? keep.getItem(key) : null;
    if (key !== null && value !== null) settings[key] = value;
  }
  return settings;
};

export const createRunShelf = ({
  store,
  reviews,
  build,
  keep,
  language = () => UNNAMED_LANGUAGE,
}: ShelfParts): RunShelf => {
  const load = async (id: number): Promise<KeptRun | null> => {
    const head = (await store.heads()).find((h) => h.id === id);
    return head ? { id, planFile: head.planFile, lines: linesOf(await store.batches(id)) } : null;
  };

  const lineCount = async (id: number): Promise<number> => {
    const last = await store.lastBatch(id);
    return last === null ? 0 : last.from + last.lines.length;
  };

  const digest = async (id: number): Promise<Digest | PracticeDigest | null> => {
    const kept = await reviews.find(id).catch(() => null);
    if (kept === null || kept.build !== build || kept.lines !== (await lineCount(id))) return null;
    return kept.digest as Digest | PracticeDigest;
  };

  const add = async (runs: readonly KeptRun[]): Promise<number> => {
    const there = new Set((await store.heads()).map((h) => h.id));
    let added = 0;
    for (const { id, planFile, lines } of runs) {
      if (there.has(id)) continue;
      await store.begin({ id, version: 1, planFile });
      await store.append({ run: id, lines, from: 0, engineMs: id, wallMs: id, over: true }, 'strict');
      added++;
    }
    return added;
  };

  return {
    load,
    digest,
    rows: async () => {
      const heads = await store.heads();
      return Promise.all(
        heads.map(async ({ id, planFile }) => ({
          id,
          plan: readRun(planFile)?.plan ?? null,
          isImported: isImported(planFile),
          digest: await digest(id),
        })),
      );
    },
    keepDigest: async (run, made, lines) => reviews.keep({ run, build, lines, digest: made }).catch(() => {}),
    remove: async (id) => {
      await store.remove(id);
      await reviews.remove(id).catch(() => {});
    },
    addFile: async (text) => {
      const { importRuns } = await import('../../log/importRun.ts');
      const got = importRuns(text, null, { name: t('Imported run'), language: language() });
      if (!got.ok) return got;
      return ok({ added: await add(got.value.runs), skipped: got.value.skipped });
    },
    backup: async () => {
      const runs: KeptRun[] = [];
      for (const { id } of await store.heads()) {
        const run = await load(id);
        if (run !== null) runs.push(run);
      }
      const all: Backup = { runs, settings: settingsOf(keep) };
      return backupText(all);
    },
    restore: async (text) => {
      const got = parseBackup(text);
      if (!got.ok) return got;
      for (const [key, value] of Object.entries(got.value.settings))
        if (key.startsWith(OURS)) keep.setItem(key, value);
      return ok({ added: await add(got.value.runs), cut: got.value.cut });
    },
  };
};
