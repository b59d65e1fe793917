import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Call } from '../../../src/core/cues/call.ts';
import { parseAnyPlan, practiceFile, readPracticePlan } from '../../../src/core/plan/parsePracticePlan.ts';
import type { PracticePlan } from '../../../src/core/plan/practicePlan.ts';
import { COUNTDOWN_MS } from '../../../src/core/practice/cues.ts';
import { beginPractice, type Practice, practiceView } from '../../../src/core/practice/practice.ts';
import { progression } from '../../../src/core/practice/sessions/progression.ts';
import { READY_MADE, readyMade } from '../../../src/core/practice/sessions/readyMade.ts';
import { practiceFlush, practiceStep } from '../../../src/core/practice/step.ts';
import type { RunInput } from '../../../src/core/run/settings.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { SESSION_STEADY, simulateSession } from '../../../src/sensors/simulatedPractice.ts';
import { OPEN_SKY } from '../../../src/sensors/simulatedReceiver.ts';
import { COUNTDOWN_LEAD_S } from '../../../src/voice/tones/family.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const voice = voiceOf(english.pack, english.words);

const planOf = (value: object): PracticePlan => {
  const got = readPracticePlan({ kind: 'practice', ...value });
  if (!got.ok) throw new Error(JSON.stringify(got.error));
  return got.value;
};

const fold = (plan: PracticePlan, inputs: readonly RunInput[]): { calls: Call[]; practice: Practice } => {
  let practice = beginPractice({ plan, voice });
  const calls: Call[] = [];
  for (const input of inputs) {
    const next = practiceStep(practice, input);
    practice = next.practice;
    calls.push(...next.calls);
  }
  const end = practiceFlush(practice);
  return { calls: [...calls, ...end.calls], practice: end.practice };
};

/** Nothing but a start and the clock, ten times a second. */
const clockOnly = (untilS: number, events: readonly RunInput[] = []): RunInput[] =>
  [
    { type: 'event', atMs: 0, event: 'start' } as const,
    ...events,
    ...Array.from({ length: untilS * 10 }, (_, i) => ({ type: 'clock', atMs: 100 * (i + 1) }) as const),
  ].sort((a, b) => a.atMs - b.atMs);

const spoken = (calls: readonly Call[]): string[] =>
  calls.map((c) => `${(c.startMs / 1000).toFixed(1)} ${c.utterance.text}`);

describe('a session indoors, by time alone', () => {
  const plan = planOf({
    place: 'indoors',
    legs: [
      { kind: 'warm-up', for: { timeS: 60 }, target: { effort: 'easy' } },
      {
        repeat: 2,
        legs: [
          { kind: 'work', for: { timeS: 300 }, target: { paceSPerKm: 290 } },
          { kind: 'recovery', for: { timeS: 60 } },
        ],
      },
    ],
  });

  test('changes its legs on the very moment, counted in', () => {
    const { calls, practice } = fold(plan, clockOnly(740));
    const changes = calls.filter((c) => c.saying.kind === 'leg' || c.saying.kind === 'done');
    expect(changes.slice(1).map((c) => c.startMs + 3000)).toEqual([60_000, 360_000, 420_000, 720_000]);
    expect(changes.slice(1).every((c) => 'tone' in c.saying && c.saying.tone === 'countdown')).toBe(true);
    expect(practice.endMs).toBe(720_000);
  });

  test('says what each leg asks, half of it, its last minute, the rest that is left', () => {
    const meant = fold(plan, clockOnly(740)).calls.map(({ startMs, saying }) => {
      const what =
        saying.kind === 'leg'
          ? `${saying.what} ${JSON.stringify(saying.length)} ${JSON.stringify(saying.target)}`
          : saying.kind === 'remaining'
            ? JSON.stringify(saying.left)
            : saying.kind;
      return `${Math.round(startMs / 1000)} ${what}`;
    });
    expect(meant).toEqual([
      '0 warm-up {"timeS":60} "easy"',
      '57 work {"timeS":300} {"sPerUnit":290,"unit":"km"}',
      '210 "half"',
      '300 {"timeS":60}',
      '357 recovery {"timeS":60} null',
      '390 {"timeS":30}',
      '417 work {"timeS":300} {"sPerUnit":290,"unit":"km"}',
      '570 "half"',
      '660 {"timeS":60}',
      '717 done',
    ]);
  });

  test('does not hang on how often the clock is told', () => {
    const seldom = clockOnly(740).filter((_, i) => i % 37 === 0);
    expect(spoken(fold(plan, seldom).calls)).toEqual(spoken(fold(plan, clockOnly(740)).calls));
  });

  test('calls never overlap', () => {
    const { calls } = fold(plan, clockOnly(740));
    for (const [i, call] of calls.entries())
      if (i > 0) expect(call.startMs).toBeGreaterThanOrEqual(calls[i - 1]?.endMs ?? 0);
  });
});

test('the countdown is as long as its tone: its last note falls on the change', () => {
  expect(COUNTDOWN_MS).toBe(1000 * COUNTDOWN_LEAD_S);
});

describe('presses', () => {
  const plan = planOf({
    place: 'indoors',
    legs: [
      { kind: 'warm-up', for: 'press' },
      { kind: 'work', for: { timeS: 200 } },
    ],
  });

  test('end a leg that waits for one', () => {
    const press = { type: 'event', atMs: 100_000, event: 'marker' } as const;
    const { practice } = fold(plan, clockOnly(320, [press]));
    expect(practice.results.map((r) => r.endMs)).toEqual([100_000, 300_000]);
  });

  test('ask in any other leg', () => {
    const first = { type: 'event', atMs: 10_000, event: 'marker' } as const;
    const second = { type: 'event', atMs: 50_000, event: 'marker' } as const;
    const { calls } = fold(plan, clockOnly(60, [first, second]));
    expect(calls.at(-1)?.saying).toMatchObject({ kind: 'remaining', left: { timeS: 160 } });
  });

  test('stop ends the session and says so', () => {
    const stop = { type: 'event', atMs: 30_000, event: 'stop' } as const;
    const { calls, practice } = fold(plan, clockOnly(60, [stop]));
    expect(practice.endMs).toBe(30_000);
    expect(calls.at(-1)?.saying.kind).toBe('done');
  });
});

describe('a ceiling on heart rate', () => {
  const plan = planOf({
    place: 'indoors',
    legs: [{ kind: 'work', for: { timeS: 600 }, heartMostBpm: 165 }],
  });
  const beats = (bpm: number): RunInput[] =>
    Array.from({ length: 600 }, (_, i) => ({ type: 'heart', atMs: 1000 * i, bpm }) as const);

  test('is a cue when it is passed for long, and then not at once again', () => {
    const { calls } = fold(plan, clockOnly(600, beats(172)));
    const heart = calls.filter((c) => c.saying.kind === 'heart');
    expect(heart.length).toBeGreaterThan(1);
    expect(heart[0]?.startMs).toBeGreaterThan(60_000);
    expect(heart[0]?.saying).toEqual({ kind: 'heart', bpm: 172, mostBpm: 165 });
    expect((heart[1]?.startMs ?? 0) - (heart[0]?.startMs ?? 0)).toBeGreaterThanOrEqual(85_000);
  });

  test('is silent below', () => {
    const { calls } = fold(plan, clockOnly(600, beats(160)));
    expect(calls.some((c) => c.saying.kind === 'heart')).toBe(false);
  });
});

describe('a foot pod indoors', () => {
  test('measures legs by distance', () => {
    const plan = planOf({
      place: 'indoors',
      legs: [{ kind: 'work', for: { distanceM: 1000 }, target: { paceSPerKm: 300 } }],
    });
    const pod = Array.from(
      { length: 400 },
      (_, i) => ({ type: 'footPod', atMs: 1000 * i, speedMps: 1000 / 300, stepsPerMin: 176 }) as const,
    );
    const { practice } = fold(plan, clockOnly(320, pod));
    expect(practice.endMs).toBeGreaterThan(298_000);
    expect(practice.endMs).toBeLessThan(302_000);
  });
});

describe('the pen deadline of a warm-up', () => {
  const closingAt = (closesS: number): PracticePlan => ({
    ...readyMade('raceWarmUp', demoPlan, { penClosesMs: 1000 * closesS }),
    place: 'indoors',
  });
  const wholeS = closingAt(9999).legs.reduce(
    (sum, l) => sum + (l.extent.by === 'time' ? l.extent.timeS : 0),
    0,
  );
  const pens = (calls: readonly Call[]): string[] =>
    calls.flatMap((c) =>
      c.saying.kind === 'pen' ? [`${Math.round(c.startMs / 1000)} ${c.utterance.text}`] : [],
    );

  test('with time to spare all legs are done, and the runner is told until it is time to go', () => {
    const { calls, practice } = fold(closingAt(1800), clockOnly(1900));
    expect(practice.results).toHaveLength(closingAt(1800).legs.length);
    expect((practice.endMs ?? 0) / 1000).toBeCloseTo(wholeS, 1);
    expect(pens(calls)).toEqual([
      expect.stringMatching(/^90\d Pen closes in fifteen minutes\.$/),
      expect.stringMatching(/^120\d Pen closes in ten minutes\.$/),
      expect.stringMatching(/^150\d Pen closes in five minutes\.$/),
      expect.stringMatching(/^168\d Go to the pen now\.$/),
    ]);
  });

  test('begun late, it is over two minutes before the pen closes, counted down as any end', () => {
    const { calls, practice } = fold(closingAt(720), clockOnly(800));
    expect((practice.endMs ?? 0) / 1000).toBeCloseTo(600, 1);
    expect(practice.results.length).toBeLessThan(closingAt(720).legs.length);
    const done = calls.find((c) => c.saying.kind === 'done');
    expect(((done?.startMs ?? 0) + COUNTDOWN_MS) / 1000).toBeCloseTo(600, 1);
    // Nothing is begun that the pen cuts off at once.
    expect(calls.filter((c) => c.saying.kind === 'leg' && c.startMs > 600_000)).toEqual([]);
    const go = calls.find((c) => c.utterance.text === 'Go to the pen now.');
    expect((go?.startMs ?? 0) / 1000).toBeGreaterThanOrEqual(600);
    expect((go?.endMs ?? Number.NaN) / 1000).toBeLessThan(630);
    const sorted = calls.toSorted((a, b) => a.startMs - b.startMs);
    for (const [i, c] of sorted.entries())
      expect(c.startMs).toBeGreaterThanOrEqual(sorted[i - 1]?.endMs ?? 0);
  });

  test('begun within the last two minutes, the runner is sent to the pen at once', () => {
    const { calls } = fold(closingAt(90), clockOnly(120));
    expect(pens(calls).map((text) => text.replace(/^\d+ /, ''))).toEqual(['Go to the pen now.']);
    expect(calls.find((c) => c.saying.kind === 'pen')?.startMs).toBeLessThan(20_000);
  });

  test('what is left is shown up to the cut', () => {
    let practice = beginPractice({ plan: closingAt(720), voice });
    for (const input of clockOnly(590)) practice = practiceStep(practice, input).practice;
    expect(practiceView(practice, 590_000).left).toEqual({ timeS: expect.closeTo(10, 1) });
  });

  test('who ends the session hears no more of it', () => {
    const stop: RunInput = { type: 'event', atMs: 400_000, event: 'stop' };
    const { calls } = fold(closingAt(1800), clockOnly(1900, [stop]));
    expect(pens(calls)).toEqual([]);
  });
});

describe('two times fifteen minutes on the road', () => {
  const plan = readyMade('twice15', demoPlan);

  test('legs by the clock change within 0.3 s; the result of a rep is near the truth', () => {
    const session = simulateSession({
      plan,
      runner: SESSION_STEADY,
      receiver: OPEN_SKY,
      penS: 10,
      seed: 4,
      podShare: null,
    });
    const { calls, practice } = fold(plan, session.inputs);
    const changes = calls.filter((c) => c.saying.kind === 'leg' || c.saying.kind === 'done').slice(1);
    expect(changes).toHaveLength(plan.legs.length);
    for (const [i, call] of changes.entries())
      expect(Math.abs((call.startMs + 3000 - session.startMs) / 1000 - (session.endsS[i] ?? 0))).toBeLessThan(
        0.3,
      );
    const work = practice.results.find((r) => r.leg.kind === 'work');
    const truthM = session.truth.distanceAtM(720 + 900) - session.truth.distanceAtM(720);
    expect(Math.abs((work?.distanceM ?? 0) / truthM - 1)).toBeLessThan(0.01);
    expect(calls.filter((c) => c.saying.kind === 'rep')).toHaveLength(2);
  });

  test('tells a runner who goes off too quick', () => {
    const session = simulateSession({
      plan,
      runner: { ...SESSION_STEADY, offShare: { 1: 0.05 } },
      receiver: OPEN_SKY,
      penS: 10,
      seed: 5,
      podShare: null,
    });
    const { calls } = fold(plan, session.inputs);
    const ease = calls.find((c) => c.saying.kind === 'ease');
    expect(((ease?.startMs ?? 0) - session.startMs) / 1000).toBeGreaterThan(720 + 40);
    expect(((ease?.startMs ?? 0) - session.startMs) / 1000).toBeLessThan(720 + 240);
    const target = plan.legs[1]?.target;
    const askedSPerKm = target?.by === 'pace' ? target.paceSPerKm : Number.NaN;
    const trueByS = 0.05 * askedSPerKm;
    const saidByS = ease?.saying.kind === 'ease' ? ease.saying.byS : Number.NaN;
    expect(Math.abs(saidByS - trueByS)).toBeLessThanOrEqual(5);
  });
});

describe('ready-made sessions', () => {
  test.each(READY_MADE)('%s goes through its own file and back', (which) => {
    const plan = readyMade(which, demoPlan, { penClosesMs: 1_809_851_400_000 });
    const text = practiceFile(plan, (ms) => new Date(ms).toISOString());
    expect(parseAnyPlan(text)).toEqual({ ok: true, value: { kind: 'practice', plan } });
  });

  test.each(READY_MADE)('%s asks for paces that get quicker with the goal', (which) => {
    const paces = (goalS: number): number[] =>
      readyMade(which, { ...demoPlan, goalS }).legs.flatMap((l) =>
        l.target.by === 'pace' ? [l.target.paceSPerKm] : [],
      );
    const [slow, quick] = [paces(7000), paces(6000)];
    expect(slow).toHaveLength(quick.length);
    for (const [i, pace] of slow.entries()) expect(pace).toBeGreaterThan(quick[i] ?? 0);
  });

  test('the long run asks for gel with water after it', () => {
    const items = readyMade('long', demoPlan).legs.flatMap((l) => l.take.map((t) => t.item));
    expect(items.slice(0, 2)).toEqual(['gel', 'water']);
  });
});

describe('a progression', () => {
  const longMinOf = (week: ReturnType<typeof progression>[number]): number =>
    week.sessions.find((s) => s.which === 'long')?.wish.longMin ?? 0;

  test('grows at most one thing a week and eases every fourth', () => {
    void fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 45, max: 140 }), (weeks, longMin) => {
        const plan = progression(weeks, longMin);
        const working = plan.filter((w) => !w.eases);
        for (const week of plan) expect(week.eases).toBe(week.number % 4 === 0);
        for (const [i, week] of working.entries()) {
          const before = working[i - 1];
          if (before === undefined) continue;
          const longGrew = longMinOf(week) > longMinOf(before);
          const thresholdGrew = JSON.stringify(week.sessions[0]) !== JSON.stringify(before.sessions[0]);
          expect(longGrew && thresholdGrew).toBe(false);
          expect(longMinOf(week) - longMinOf(before)).toBeLessThanOrEqual(10);
        }
        for (const week of plan.filter((w) => w.eases))
          expect(longMinOf(week)).toBeLessThan(longMinOf(plan[week.number - 2] ?? week));
      }),
    );
  });
});

describe('any list of inputs', () => {
  test('never throws, and its calls never overlap', () => {
    const inputs = fc.array(
      fc.record({ gapMs: fc.integer({ min: 0, max: 40_000 }), what: fc.integer({ min: 0, max: 5 }) }),
      { maxLength: 80 },
    );
    const plan = readyMade('easyStrides', demoPlan);
    void fc.assert(
      fc.property(inputs, (list) => {
        let atMs = 0;
        const made = list.map(({ gapMs, what }): RunInput => {
          atMs += gapMs;
          if (what === 0) return { type: 'event', atMs, event: 'start' };
          if (what === 1) return { type: 'event', atMs, event: 'marker' };
          if (what === 2) return { type: 'event', atMs, event: 'ask' };
          if (what === 3) return { type: 'heart', atMs, bpm: 150 };
          if (what === 4) return { type: 'footPod', atMs, speedMps: 3, stepsPerMin: null };
          return { type: 'clock', atMs };
        });
        const { calls } = fold(plan, made);
        for (const [i, call] of calls.entries())
          if (i > 0) expect(call.startMs).toBeGreaterThanOrEqual(calls[i - 1]?.endMs ?? 0);
      }),
      { numRuns: 60 },
    );
  });
});
