import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Voice } from '../../core/cues/voicePort.ts';
import type { Digest } from '../../core/review/digest.ts';
import type { PracticeDigest } from '../../core/review/practiceDigest.ts';
import { type Review, reviewOf } from '../../core/review/review.ts';
import { type OwnRunner, ownRunnerOf, type RunFacts } from '../../core/review/trend.ts';
import { type Message, message, plural } from '../../core/units/message.ts';
import { refusal } from '../../languages/refusal.ts';
import { t } from '../../languages/text.ts';
import { runFile } from '../../log/exportBackup.ts';
import { practiceCsv, runCsv } from '../../log/exportCsv.ts';
import { runGeoJson } from '../../log/exportGeoJson.ts';
import { runGpx } from '../../log/exportGpx.ts';
import type { Ear } from '../../voice/device/ear.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import { inputsOf } from '../run/recovery.ts';
import { factsOf } from './reviewFacts.ts';
import { foldForReview, isPractice, type ReadRun, readRun } from './reviewFold.ts';
import { type Replay, startReplay } from './reviewReplay.ts';
import type { RunRow, RunShelf } from './reviewRuns.ts';

/** A run that lies open. `review` is null for a practice session. */
export interface OpenRun {
  readonly id: number;
  readonly read: ReadRun;
  readonly digest: Digest | PracticeDigest;
  readonly review: Review | null;
}

export const EXPORTS = ['gpx', 'csv', 'geojson', 'log'] as const;
export type ExportKind = (typeof EXPORTS)[number];

/** A file to hand out. */
export interface OutFile {
  readonly ending: string;
  readonly type: string;
  readonly text: string;
}

export interface ReviewModel {
  /** Null until they were read. */
  readonly rows: ReadonlySignal<readonly RunRow[] | null>;
  readonly open: ReadonlySignal<OpenRun | null>;
  /** Share of a log that is put together, 0 to 1; null when nothing is. */
  readonly reading: ReadonlySignal<number | null>;
  /** What was done or went wrong last, for people. */
  readonly said: Signal<Message | null>;
  readonly replay: ReadonlySignal<Replay | null>;
  /** Reads the list. */
  readonly refresh: () => Promise<void>;
  /** Puts together what was not yet, piece by piece, while the list is seen: never during a run. */
  readonly prepareAll: () => Promise<void>;
  readonly look: (id: number) => Promise<void>;
  readonly close: () => void;
  readonly remove: (id: number) => Promise<void>;
  readonly addFile: (text: string) => Promise<void>;
  readonly restore: (text: string) => Promise<void>;
  readonly backup: () => Promise<OutFile>;
  readonly exported: (id: number, kind: ExportKind) => Promise<OutFile | null>;
  /** To be called in a touch. Own-clock seconds. */
  readonly hear: (fromS: number, toS: number, rate: number) => Promise<void>;
  readonly hush: () => void;
  /** What all runs that were put together say of this runner, the latest first. */
  readonly facts: ReadonlySignal<readonly RunFacts[]>;
  /** Whether they may move the goal, the what-if and the next run's estimate. */
  readonly counts: ReadonlySignal<boolean>;
  readonly setCounts: (counts: boolean) => void;
  /** Null where they may not, or there are none. */
  readonly own: ReadonlySignal<OwnRunner | null>;
}

export interface ReviewParts {
  readonly shelf: RunShelf;
  readonly voice: Voice;
  /** The voice in which a kept run was spoken; the one above where that is not asked. */
  readonly voiceOfRun?: (planFile: string) => Promise<Voice>;
  readonly ear: Ear;
  readonly wake: () => Promise<unknown>;
  readonly time: PageTime;
  readonly keep: Pick<Storage, 'getItem' | 'setItem'>;
  readonly wallMs: () => number;
}

const NO_STORAGE = message('This browser keeps no runs here.');
const breathe = (ms = 0): Promise<void> => new Promise((done) => setTimeout(done, ms));
/** Who waits behind the list looks again so soon. */
const WAIT_MS = 50;

const addedText = ({ added, skipped }: { added: number; skipped: number }): Message => {
  const runs = plural(added, 'One run added.', '{n} runs added.');
  return skipped === 0
    ? runs
    : message('{runs} {left}', {
        runs,
        left: plural(skipped, 'One point or line was left out.', '{n} points or lines were left out.'),
      });
};

const restoredText = ({ added, cut }: { added: number; cut: boolean }): Message => {
  const runs = plural(added, 'One run restored.', '{n} runs restored.');
  return cut
    ? message('{runs} The file was cut short. Open the page anew to see your settings.', { runs })
    : message('{runs} Open the page anew to see your settings.', { runs });
};

const openOf = (id: number, read: ReadRun, digest: Digest | PracticeDigest): OpenRun => ({
  id,
  read,
  digest,
  review:
    read.plan.kind === 'race' && !isPractice(digest)
      ? reviewOf(digest, read.plan.plan, read.course, read.isImported)
      : null,
});

const COUNTS_KEY = 'soundline.runsCount';

export const createReviewModel = (parts: ReviewParts): ReviewModel => {
  const { shelf, voice, ear, wake, time, keep, wallMs } = parts;
  const rows = signal<readonly RunRow[] | null>(null);
  const open = signal<OpenRun | null>(null);
  const reading = signal<number | null>(null);
  const said = signal<Message | null>(null);
  const replay = signal<Replay | null>(null);
  const counts = signal(keep.getItem(COUNTS_KEY) !== 'no');
  const facts = computed(() => (rows.value ?? []).flatMap(factsOf));

  const refresh = async (): Promise<void> => {
    try {
      rows.value = await shelf.rows();
    } catch {
      rows.value = [];
      said.value = NO_STORAGE;
    }
  };

  const hush = (): void => {
    replay.value?.end();
    replay.value = null;
  };

  /** Whom the runner waits for; null where nobody does. */
  let wanted: number | null = null;

  /** Lets the page draw; and who is put together behind the list waits for whom the runner wants to see. */
  const breatheFor = async (id: number): Promise<void> => {
    await breathe();
    while (wanted !== null && wanted !== id) await breathe(WAIT_MS);
  };

  /** From the cache, else folded from the log. */
  const putTogether = async (id: number): Promise<OpenRun | null> => {
    const run = await shelf.load(id);
    const read = run && readRun(run.planFile);
    if (run === null || read === null) return null;
    const kept = await shelf.digest(id);
    if (kept !== null) return openOf(id, read, kept);
    if (wanted === id) reading.value = 0;
    const digest = await foldForReview(read, inputsOf(run.lines), {
      voice: (await parts.voiceOfRun?.(run.planFile)) ?? voice,
      nowMs: time.nowMs,
      breathe: () => breatheFor(id),
      onShare: (share) => {
        if (wanted === id) reading.value = share;
      },
    });
    await shelf.keepDigest(id, digest, run.lines.length);
    return openOf(id, read, digest);
  };

  /** A run that is being put together already is waited for, not put together twice. */
  const underWay = new Map<number, Promise<OpenRun | null>>();
  const digestOf = (id: number): Promise<OpenRun | null> => {
    const before = underWay.get(id);
    if (before !== undefined) return before;
    const made = putTogether(id).finally(() => underWay.delete(id));
    underWay.set(id, made);
    return made;
  };

  /** Runs that nobody has looked at yet are put together while the list is seen, so that they open at once. */
  let preparing = false;
  const prepareAll = async (): Promise<void> => {
    if (preparing) return;
    preparing = true;
    try {
      for (const row of rows.value ?? []) {
        if (row.plan === null || row.digest !== null || open.value !== null) continue;
        const made = await digestOf(row.id);
        if (made === null) continue;
        rows.value = (rows.value ?? []).map((r) => (r.id === row.id ? { ...r, digest: made.digest } : r));
      }
    } catch {
      // It is put together when it is opened.
    }
    preparing = false;
  };

  return {
    rows,
    open,
    reading,
    said,
    replay,
    refresh,
    prepareAll,
    look: async (id) => {
      said.value = null;
      wanted = id;
      try {
        const made = await digestOf(id);
        // Another one was asked for meanwhile.
        if (wanted !== id) return;
        open.value = made;
        if (made === null) said.value = message('This run cannot be read by this version.');
      } catch {
        said.value = NO_STORAGE;
      }
      if (wanted !== id) return;
      wanted = null;
      reading.value = null;
    },
    close: () => {
      hush();
      open.value = null;
      void refresh();
    },
    remove: async (id) => {
      if (open.value?.id === id) open.value = null;
      await shelf.remove(id);
      said.value = message('The run is deleted.');
      await refresh();
    },
    addFile: async (text) => {
      const got = await shelf.addFile(text);
      said.value = got.ok ? addedText(got.value) : refusal(got.error);
      await refresh();
      await prepareAll();
    },
    restore: async (text) => {
      const got = await shelf.restore(text);
      said.value = got.ok ? restoredText(got.value) : refusal(got.error);
      await refresh();
    },
    backup: async () => ({
      ending: 'soundline',
      type: 'application/x-ndjson',
      text: await shelf.backup(),
    }),
    exported: async (id, kind) => {
      const run = await shelf.load(id);
      if (run === null) return null;
      if (kind === 'log') return { ending: 'run.jsonl', type: 'application/x-ndjson', text: runFile(run) };
      const name = readRun(run.planFile)?.plan.plan.name ?? t('Run||noun');
      const inputs = inputsOf(run.lines);
      if (kind === 'gpx') return { ending: 'gpx', type: 'application/gpx+xml', text: runGpx(name, inputs) };
      const got = open.value?.id === id ? open.value : await digestOf(id);
      reading.value = null;
      if (got === null) return null;
      const { digest } = got;
      if (kind === 'geojson')
        return {
          ending: 'geojson',
          type: 'application/geo+json',
          text: runGeoJson(name, inputs, digest.calls, digest.startMs ?? 0),
        };
      return {
        ending: 'csv',
        type: 'text/csv',
        text: isPractice(digest) ? practiceCsv(digest) : runCsv(digest),
      };
    },
    hear: async (fromS, toS, rate) => {
      hush();
      await wake();
      const calls = open.value?.digest.calls;
      if (calls !== undefined) replay.value = startReplay(calls, fromS, toS, rate, { voice, ear, time });
    },
    hush,
    facts,
    counts,
    setCounts: (to) => {
      counts.value = to;
      keep.setItem(COUNTS_KEY, to ? 'yes' : 'no');
    },
    own: computed(() => (counts.value && facts.value.length > 0 ? ownRunnerOf(facts.value, wallMs()) : null)),
  };
};
