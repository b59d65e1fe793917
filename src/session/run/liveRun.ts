import { batch, type ReadonlySignal, signal } from '@preact/signals';
import type { Call } from '../../core/cues/call.ts';
import type { NoticeName } from '../../core/cues/notice.ts';
import type { Talk } from '../../core/cues/talk.ts';
import type { EventName, Fix } from '../../core/estimate/input.ts';
import type { RunConfig } from '../../core/run/run.ts';
import { type RunInput, USUAL_SETTINGS } from '../../core/run/settings.ts';
import type { FixWatch, FixWatchPorts, Reception } from '../../sensors/geolocation.ts';
import type { Ear, Heard } from '../../voice/device/ear.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import { createSayAfter } from '../ear/sayAfter.ts';
import { createRunCell, type RunCell, type RunView } from './runCell.ts';
import { createWallWatch, type RunClock } from './runClock.ts';

/** `ready`: receiving, the clock not yet running. `over`: finished or stopped. */
export type LivePhase = 'ready' | 'running' | 'over';

/** The last fix, as the receiver stated it. */
export interface LastFix {
  readonly accuracyM: number | null;
  readonly agoS: number;
}

/** A run on the road: the device's inputs folded as they come, its calls sounded as they are decided. */
export interface LiveRun {
  readonly cell: RunCell;
  readonly phase: ReadonlySignal<LivePhase>;
  /** Set anew once a second, on the second of the own clock. */
  readonly view: ReadonlySignal<RunView>;
  readonly reception: ReadonlySignal<Reception>;
  readonly lastFix: ReadonlySignal<LastFix | null>;
  /** What became of each call at the ear, by its id. */
  readonly heard: ReadonlyMap<number, Heard>;
  /** The sound was taken away; it is there again, and what is still true is said. */
  readonly soundLost: () => void;
  readonly soundBack: () => void;
  readonly press: (event: EventName) => void;
  /** From a belt or a foot pod. */
  readonly sense: (input: RunInput) => void;
  /** Only answers and the finish for a while; again, and the voice is back. */
  readonly hush: () => void;
  readonly notice: (what: NoticeName) => void;
  /** The page goes out of sight: no fixes from here on. */
  readonly hidden: () => void;
  /** The page is seen again after it was hidden. */
  readonly seenAgain: () => void;
  readonly close: () => void;
}

export interface LiveParts {
  readonly config: RunConfig;
  readonly ear: Ear;
  readonly buzz: (call: Call, atPageMs: number) => void;
  readonly clock: RunClock;
  readonly time: PageTime;
  readonly watch: (ports: Omit<FixWatchPorts, 'geolocation'>) => FixWatch;
  readonly record: (input: RunInput) => void;
  /** The run is over and its last call is heard out. */
  readonly onOver: () => void;
  /** Calls were decided, and are about to sound: what led to them must be safe by then. */
  readonly onCalls?: (calls: readonly Call[]) => void;
  /** The phone's clock, epoch ms; may be set by anybody. */
  readonly wallMs?: () => number;
  /** Brings the cell to where the run was when its page was closed. */
  readonly refold?: (cell: RunCell) => void;
  /** How much is to be said from the start on; absent: as usual, or as the log has it. */
  readonly talk?: Talk;
}

/**
 * How often time is told to the engine: well within its own grid of half a second, so that a call is known long enough
 * before it begins.
 */
const TICK_MS = 100;
/** After the finish the receiver stays on until the last words are said. */
const AFTER_MS = 1500;
const QUIET_MS = 10 * 60_000;
/** The engine takes a run for abandoned after an hour without any input: where nothing comes, this does. */
const SIGN_OF_LIFE_MS = 20 * 60_000;

export const startLiveRun = (parts: LiveParts): LiveRun => {
  const { clock, time, ear } = parts;
  const cell = createRunCell(parts.config, parts.record);
  parts.refold?.(cell);
  const phase = signal<LivePhase>('ready');
  const view = signal(cell.viewAt(clock.nowMs()));
  const reception = signal<Reception>('waiting');
  const lastFix = signal<LastFix | null>(null);
  const mouth = createSayAfter({ ear, clock });
  let lastStated: { fix: Fix; atMs: number } | null = null;
  let quietFromMs = 0;
  let shown = '';
  let outOfSight = false;
  let lastInputMs = clock.nowMs();
  const clocks = () => ({ engineMs: clock.nowMs(), wallMs: parts.wallMs?.() ?? clock.nowMs() });
  const wall = createWallWatch(clocks());

  const sound = (call: Call): void => {
    mouth.say(call);
    parts.buzz(call, clock.pageMs(call.startMs));
    quietFromMs = call.endMs;
  };

  const take = (input: RunInput): void => {
    if (input.type !== 'clock') lastInputMs = input.atMs;
    const calls = cell.feed(input);
    if (calls.length === 0) return;
    parts.onCalls?.(calls);
    calls.forEach(sound);
  };

  const notice = (what: NoticeName): void => take({ type: 'notice', atMs: clock.nowMs(), what });

  /** Redraws on the second of the own clock, and at once when something happened. */
  const show = (nowMs: number, atOnce: boolean): void => {
    const next = cell.viewAt(nowMs);
    // The own clock stands still from the finish on, so the phase counts too.
    const key = `${next.phase.phase} ${Math.floor(next.elapsedS ?? nowMs / 1000)}`;
    if (!atOnce && key === shown) return;
    shown = key;
    batch(() => {
      view.value = next;
      if (lastStated !== null)
        lastFix.value = { accuracyM: lastStated.fix.accuracyM, agoS: (nowMs - lastStated.atMs) / 1000 };
      const { phase: is } = next.phase;
      if (is === 'running' && phase.value === 'ready') phase.value = 'running';
    });
  };

  const lookAtWall = (): void => {
    const change = wall(clocks(), outOfSight);
    if (change.what === 'slept') clock.moveOn(change.byMs);
    if (change.what === 'set' && phase.value === 'running') notice('clockSet');
  };

  const tick = (): void => {
    lookAtWall();
    const nowMs = clock.nowMs();
    if (nowMs - lastInputMs > SIGN_OF_LIFE_MS) take({ type: 'setting', atMs: nowMs });
    take({ type: 'clock', atMs: nowMs });
    show(nowMs, false);
    const { phase: is } = view.value.phase;
    const done = is === 'finished' || is === 'stopped';
    if (done && nowMs > quietFromMs + AFTER_MS && phase.value !== 'over') {
      close();
      parts.onOver();
    }
  };

  const watch = parts.watch({
    nowMs: clock.nowMs,
    every: time.every,
    onFix: (fix, atMs) => {
      lastStated = { fix, atMs };
      take({ type: 'fix', atMs, fix });
    },
    onReception: (next) => {
      if (next === 'denied' && phase.value === 'running') notice('refused');
      reception.value = next;
    },
  });
  const stopTicks = time.every(TICK_MS, tick);

  const close = (): void => {
    stopTicks();
    watch.stop();
    phase.value = 'over';
  };

  if (parts.talk !== undefined && parts.talk !== USUAL_SETTINGS.talk)
    take({ type: 'setting', atMs: clock.nowMs(), talk: parts.talk });
  show(clock.nowMs(), true);

  return {
    cell,
    phase,
    view,
    reception,
    lastFix,
    heard: mouth.heard,
    soundLost: mouth.lost,
    soundBack: mouth.back,
    sense: (input) => {
      if (phase.value !== 'over') take(input);
    },
    press: (event) => {
      if (phase.value === 'over') return;
      const nowMs = clock.nowMs();
      take({ type: 'event', atMs: nowMs, event });
      show(nowMs, true);
    },
    hush: () => {
      if (phase.value !== 'running') return;
      const nowMs = clock.nowMs();
      const quiet = cell.viewAt(nowMs).quietUntilMs === null;
      // Said while it may still be said.
      if (quiet) notice('quiet');
      take({ type: 'setting', atMs: nowMs, quietUntilMs: quiet ? nowMs + QUIET_MS : null });
      if (!quiet) notice('talking');
      show(nowMs, true);
    },
    notice: (what) => {
      if (phase.value !== 'over') notice(what);
    },
    hidden: () => {
      outOfSight = true;
    },
    seenAgain: () => {
      if (phase.value === 'over') return;
      tick();
      outOfSight = false;
      watch.renew();
    },
    close,
  };
};
