import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import type { Input } from '../../../src/core/estimate/input.ts';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import type { RunInput } from '../../../src/core/run/settings.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import type { FixWatchPorts } from '../../../src/sensors/geolocation.ts';
import { watchSound } from '../../../src/session/ear/soundGap.ts';
import { startLiveRun } from '../../../src/session/run/liveRun.ts';
import { runClockOf } from '../../../src/session/run/runClock.ts';
import { practiceTape } from '../../../src/session/run/tape.ts';
import type { SpeakerState } from '../../../src/voice/device/speaker.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { pretendEar, pretendTime } from '../pretend.ts';

const got = readRacePlan({
  version: 1,
  kind: 'race',
  distanceM: 5000,
  goalS: 1350,
  checkpointsM: [1000, 2000, 3000, 4000],
});
if (!got.ok) throw new Error(got.error.place);
const plan = got.value;
const tape = practiceTape(plan, null);
const ORIGIN_MS = (tape[0]?.atMs ?? 0) - 1000;
const startMs = tape.find((i) => i.type === 'event' && i.event === 'start')?.atMs ?? 0;
/** Well under way, away from any checkpoint's minute. */
const SOME_TIME_S = 360;

const rig = () => {
  const time = pretendTime();
  const ear = pretendEar(time);
  const recorded: RunInput[] = [];
  let setMs = 0;
  let ports: Omit<FixWatchPorts, 'geolocation'> | null = null;
  let renewed = 0;
  const clock = runClockOf(time, ORIGIN_MS);
  const run = startLiveRun({
    config: { plan, course: null, voice: voiceOf(english.pack, english.words) },
    ear,
    buzz: () => {},
    clock,
    time,
    watch: (given) => {
      ports = given;
      return {
        renew: () => {
          renewed++;
        },
        stop: () => {},
      };
    },
    record: (input) => recorded.push(input),
    onOver: () => {},
    wallMs: () => ORIGIN_MS + time.nowMs() + setMs,
  });
  const toMs = (ms: number): void => time.pass(Math.max(0, ms - ORIGIN_MS - time.nowMs()));
  /** Lives the tape between two seconds of the race; fixes that fall into no time at all are not received. */
  const live = (fromS: number, toS: number, receiving = true): void => {
    const within = (i: Input) => i.atMs > startMs + 1000 * fromS && i.atMs <= startMs + 1000 * toS;
    for (const input of tape.filter(within)) {
      toMs(input.atMs);
      if (input.type === 'fix' && receiving) ports?.onFix(input.fix, clock.nowMs());
    }
    toMs(startMs + 1000 * toS);
  };
  live(-1000, 0);
  run.press('start');
  return {
    time,
    ear,
    run,
    live,
    recorded,
    renewed: () => renewed,
    deny: () => ports?.onReception('denied'),
    setClock: (byMs: number) => {
      setMs += byMs;
    },
    saidAfter: (s: number) =>
      ear
        .said()
        .filter((c) => c.atMs + ORIGIN_MS > startMs + 1000 * s)
        .map((c) => c.text),
    elapsedS: () => run.view.value.elapsedS ?? Number.NaN,
  };
};

const expectApart = (said: readonly { readonly atMs: number; readonly endMs: number }[]): void => {
  said.slice(1).forEach((s, i) => {
    expect(s.atMs).toBeGreaterThanOrEqual(said[i]?.endMs ?? 0);
  });
};

describe('a page that is hidden in mid-run', () => {
  test.each([1, 10, 60, 600])('for %i s keeps its clock, says what counts once, and goes on', (hiddenS) => {
    const { live, run, time, saidAfter, elapsedS, renewed, ear } = rig();
    live(0, SOME_TIME_S);
    run.hidden();
    time.freeze(1000 * hiddenS);
    run.seenAgain();
    expect(renewed()).toBe(1);
    expect(Math.abs(elapsedS() - (SOME_TIME_S + hiddenS))).toBeLessThan(1);
    const backS = SOME_TIME_S + hiddenS;
    live(backS, backS + 60);
    const texts = saidAfter(SOME_TIME_S);
    expect(new Set(texts).size).toBe(texts.length);
    const told = texts.filter((t) => /^signal/i.test(t));
    // Shorter than a tunnel nobody needs to know; longer, the runner hears where they stand when it is over.
    if (hiddenS <= 10) expect(told).toEqual([]);
    else expect(told.at(-1)).toMatch(/^Signal back\. .*(up|down|on plan|ahead|behind)/i);
    expect(told.filter((t) => /back/i.test(t)).length).toBeLessThanOrEqual(1);
    expectApart(ear.said());
  });

  test('while the phone sleeps and its monotonic clock stands still counts the sleep', () => {
    const { live, run, setClock, elapsedS, time } = rig();
    live(0, SOME_TIME_S);
    run.hidden();
    time.freeze(2000);
    setClock(298_000);
    run.seenAgain();
    expect(Math.abs(elapsedS() - (SOME_TIME_S + 300))).toBeLessThan(1);
  });
});

describe('a clock that is set by an hour', () => {
  test.each([3_600_000, -3_600_000])('by %i ms changes no time of the run, and is told once', (byMs) => {
    const { live, setClock, elapsedS, saidAfter } = rig();
    live(0, SOME_TIME_S);
    setClock(byMs);
    live(SOME_TIME_S, SOME_TIME_S + 60);
    expect(Math.abs(elapsedS() - (SOME_TIME_S + 60))).toBeLessThan(1);
    expect(saidAfter(SOME_TIME_S).filter((t) => /phone clock/i.test(t))).toHaveLength(1);
  });
});

describe('position', () => {
  test('taken away in mid-run is told once, the run goes on by pace and then by the clock', () => {
    const { live, deny, saidAfter } = rig();
    live(0, SOME_TIME_S);
    deny();
    live(SOME_TIME_S, 1300, false);
    const texts = saidAfter(SOME_TIME_S);
    expect(texts.filter((t) => /position refused/i.test(t))).toHaveLength(1);
    expect(texts.filter((t) => /press at each board/i.test(t)).length).toBeLessThanOrEqual(1);
  });

  test('never there: places by the clock, once announced; a press gives the drift; it gives way when fixes come', () => {
    const { live, run, saidAfter, ear } = rig();
    live(0, 200, false);
    const first = saidAfter(0);
    expect(first.filter((t) => /going by the clock/i.test(t))).toHaveLength(1);
    live(200, 560, false);
    // 4:30 a kilometre: the boards at 270 and 540 s.
    expect(saidAfter(200).filter((t) => /by the plan/i.test(t))).toEqual([
      'By the plan at one K now.',
      'By the plan at two K now.',
    ]);
    run.press('marker');
    live(560, 575, false);
    expect(saidAfter(559).some((t) => /two k/i.test(t) && /behind|down/i.test(t))).toBe(true);
    live(575, 700);
    expect(saidAfter(575).filter((t) => /signal back/i.test(t))).toHaveLength(1);
    live(700, 900);
    expect(saidAfter(640).filter((t) => /by the plan/i.test(t))).toEqual([]);
    expectApart(ear.said());
  });
});

describe('quiet, by a button', () => {
  test('says so, then only answers, and says when it is over', () => {
    const { live, run, saidAfter } = rig();
    live(0, 200);
    run.hush();
    live(200, 300);
    const quiet = saidAfter(200);
    expect(quiet).toEqual(['Quiet.']);
    run.press('ask');
    live(300, 310);
    expect(saidAfter(300)).toHaveLength(1);
    run.hush();
    live(310, 320);
    expect(saidAfter(310)).toContain('Speaking again.');
  });
});

describe('sound that was taken away', () => {
  const watched = (resumed: boolean) => {
    const time = pretendTime();
    const state = signal<SpeakerState>('ready');
    const told: string[] = [];
    const stop = watchSound(state, time, resumed, (what) => told.push(what));
    return { time, state, told, stop };
  };
  const settle = () => new Promise((done) => setTimeout(done, 0));

  test('by a call and given back is told once', async () => {
    const { time, state, told } = watched(false);
    state.value = 'asleep';
    time.pass(45_000);
    state.value = 'ready';
    await settle();
    expect(told).toEqual(['soundBack']);
  });

  test('for a moment is not worth a word', async () => {
    const { time, state, told } = watched(false);
    state.value = 'asleep';
    time.pass(2000);
    state.value = 'ready';
    await settle();
    expect(told).toEqual([]);
  });

  test('by the end of the page: once there is sound, the runner hears that the run goes on', async () => {
    const time = pretendTime();
    const state = signal<SpeakerState>('loading');
    const told: string[] = [];
    watchSound(state, time, true, (what) => told.push(what));
    time.pass(3000);
    state.value = 'asleep';
    time.pass(8000);
    state.value = 'ready';
    await settle();
    state.value = 'asleep';
    time.pass(8000);
    state.value = 'ready';
    await settle();
    expect(told).toEqual(['resumed', 'soundBack']);
  });
});
