import type { Browser, CDPSession } from 'playwright-core';

/** A task of the page's main thread: when it began on the trace's clock, and how long it kept the processor. */
export interface Task {
  readonly atUs: number;
  readonly cpuUs: number;
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** What one page's main thread did, and the page's own marks (performance.mark) on the same clock. */
export interface Traced {
  readonly tasks: readonly Task[];
  readonly marksUs: ReadonlyMap<string, number>;
}

const CATEGORIES = ['toplevel', 'blink.user_timing', '__metadata'];

/**
 * Follows the renderer main thread that set a mark. Processor time is the thread's own: other work on the machine does not
 * count.
 * @returns what ends it, and gives what was found
 */
export const traceMainThread = async (browser: Browser, mark: string): Promise<() => Promise<Traced>> => {
  const cdp: CDPSession = await browser.newBrowserCDPSession();
  const events: TraceEvent[] = [];
  cdp.on('Tracing.dataCollected', ({ value }) => {
    events.push(...(value as unknown as TraceEvent[]));
  });
  await cdp.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: CATEGORIES, recordMode: 'recordUntilFull' },
  });
  return async () => {
    const complete = new Promise((done) => cdp.once('Tracing.tracingComplete', done));
    await cdp.send('Tracing.end');
    await complete;
    const marked = events.find((e) => e.name === mark);
    if (marked === undefined) throw new Error(`no mark ${mark} in the trace`);
    const mine = events.filter((e) => e.pid === marked.pid && e.tid === marked.tid);
    const ran = mine
      .filter((e) => e.ph === 'X' && e.name.includes('RunTask'))
      .toSorted((a, b) => a.ts - b.ts);
    const tasks: Task[] = [];
    let endUs = 0;
    for (const { ts, dur = 0, tdur = 0 } of ran) {
      // A task inside a task is part of it.
      if (ts < endUs) continue;
      endUs = ts + dur;
      tasks.push({ atUs: ts, cpuUs: tdur });
    }
    return { tasks, marksUs: new Map(mine.filter((e) => e.ph !== 'X').map((e) => [e.name, e.ts])) };
  };
};
