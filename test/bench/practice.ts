import type { Call } from '../../src/core/cues/call.ts';
import { readPracticePlan } from '../../src/core/plan/parsePracticePlan.ts';
import type { Leg, PracticePlan } from '../../src/core/plan/practicePlan.ts';
import { COUNTDOWN_MS } from '../../src/core/practice/cues.ts';
import { beginPractice } from '../../src/core/practice/practice.ts';
import { practiceFlush, practiceStep } from '../../src/core/practice/step.ts';
import { spoken as english } from '../../src/languages/en/spoken.ts';
import {
  SESSION_STEADY,
  type SessionRunner,
  type SimulatedSession,
  simulateSession,
} from '../../src/sensors/simulatedPractice.ts';
import { OPEN_SKY, type ReceiverModel, TOWN } from '../../src/sensors/simulatedReceiver.ts';
import { voiceOf } from '../../src/voice/utter.ts';
import { legLimitSdM } from './legLimit.ts';
import { knownLoop } from './loops.ts';
import { mean, quantile } from './stats.ts';
import { fixed, printTable } from './table.ts';

const voice = voiceOf(english.pack, english.words);

const planOf = (value: unknown): PracticePlan => {
  const got = readPracticePlan(value);
  if (!got.ok) throw new Error(JSON.stringify(got.error));
  return got.value;
};

/** Two threshold legs by the clock; and thousands by distance, for the places where legs end. */
const easy = (timeS: number, kind: string): object => ({ kind, for: { timeS }, target: { effort: 'easy' } });
export const TWO_BY_15 = planOf({
  kind: 'practice',
  name: '2 x 15 min',
  legs: [
    easy(600, 'warm-up'),
    {
      repeat: 2,
      legs: [
        { kind: 'work', for: { timeS: 900 }, target: { paceSPerKm: 290 } },
        { kind: 'recovery', for: { timeS: 180 }, target: { effort: 'easy' } },
      ],
    },
    easy(300, 'cool-down'),
  ],
});
export const THOUSANDS = planOf({
  kind: 'practice',
  name: '5 x 1000 m',
  legs: [
    easy(600, 'warm-up'),
    {
      repeat: 5,
      legs: [
        { kind: 'work', for: { distanceM: 1000 }, target: { paceSPerKm: 270 } },
        { kind: 'recovery', for: { distanceM: 400 }, target: { effort: 'easy' } },
      ],
    },
    easy(300, 'cool-down'),
  ],
});

/** Longer than any session here. */
const LONGEST_M = 20_000;

interface Done {
  readonly session: SimulatedSession;
  readonly calls: readonly Call[];
}

export const doSession = (
  plan: PracticePlan,
  receiver: ReceiverModel,
  runner: SessionRunner,
  seed: number,
  podShare: number | null = null,
  isKnown = false,
): Done => {
  const loop = isKnown ? knownLoop(seed, LONGEST_M) : null;
  const road = loop === null ? {} : { road: () => loop.road };
  const session = simulateSession({ plan, runner, receiver, penS: 10, seed, podShare, ...road });
  const calls: Call[] = [];
  let practice = beginPractice({ plan: loop === null ? plan : { ...plan, course: loop.course }, voice });
  for (const input of session.inputs) {
    const next = practiceStep(practice, input);
    practice = next.practice;
    calls.push(...next.calls);
  }
  calls.push(...practiceFlush(practice).calls);
  return { session, calls };
};

/** Seconds by which each change of leg was told late (+) or early (-): the last note of its countdown falls on it. */
export const changeErrorsS = (
  plan: PracticePlan,
  { session, calls }: Done,
  by: Leg['extent']['by'],
): number[] => {
  const told = calls.filter((c) => c.saying.kind === 'leg' || c.saying.kind === 'done').slice(1);
  return plan.legs.flatMap((leg, i) => {
    const call = told[i];
    if (leg.extent.by !== by || call === undefined) return [];
    return [(call.startMs + COUNTDOWN_MS - session.startMs) / 1000 - (session.endsS[i] ?? Number.NaN)];
  });
};

/**
 * A leg by distance is told from one change to the next: what was run between the two calls, against what the leg asks,
 * in seconds at the pace of the leg. + is too long, so late. (Our runner changes pace where the leg truly ends, not at
 * the call, so that seconds by the clock would be seconds of jogging.)
 */
export const legErrorsS = (plan: PracticePlan, { session, calls }: Done): number[] => {
  const told = calls.filter((c) => c.saying.kind === 'leg' || c.saying.kind === 'done').slice(1);
  const atS = (i: number): number => {
    const call = told[i];
    return call === undefined ? Number.NaN : (call.startMs + COUNTDOWN_MS - session.startMs) / 1000;
  };
  return plan.legs.flatMap(({ extent }, i) => {
    if (extent.by !== 'distance') return [];
    const [fromS, toS] = [i > 0 ? atS(i - 1) : 0, atS(i)];
    const ranM = session.truth.distanceAtM(toS) - session.truth.distanceAtM(fromS);
    const tookS = (session.endsS[i] ?? Number.NaN) - (i > 0 ? (session.endsS[i - 1] ?? Number.NaN) : 0);
    return [((ranM - extent.distanceM) / extent.distanceM) * tookS];
  });
};

/** Nine in ten of a normal error lie within so many standard deviations. */
const NINETY = 1.645;

/** What nine in ten legs would be off by at best, with such a receiver alone, seconds. */
const limitS = (plan: PracticePlan, receiver: ReceiverModel, session: SimulatedSession): number => {
  const sds = plan.legs.flatMap(({ extent }, i) => {
    if (extent.by !== 'distance') return [];
    const tookS = (session.endsS[i] ?? 0) - (i > 0 ? (session.endsS[i - 1] ?? 0) : 0);
    return [(legLimitSdM(receiver, Math.round(tookS)) / extent.distanceM) * tookS];
  });
  return NINETY * Math.sqrt(mean(sds.map((sd) => sd * sd)));
};

const NEAR_S_PER_KM = 3;
const MINUTE_S = 60;

/** Ease or quicken to a runner whose pace over the minute before was as asked, within 3 s/km, or on its other side. */
export const falseAlarms = (plan: PracticePlan, { session, calls }: Done): number =>
  calls.filter(({ saying, startMs }) => {
    if (saying.kind !== 'ease' && saying.kind !== 'quicken') return false;
    const atS = (startMs - session.startMs) / 1000;
    const index = session.endsS.findIndex((s) => s > atS);
    const target = plan.legs[index]?.target;
    if (target?.by !== 'pace') return true;
    const fromS = Math.max(session.endsS[index - 1] ?? 0, atS - MINUTE_S);
    const wayM = session.truth.distanceAtM(atS) - session.truth.distanceAtM(fromS);
    const slowerS = (1000 * (atS - fromS)) / wayM - target.paceSPerKm;
    return (saying.kind === 'ease' ? -slowerS : slowerS) < NEAR_S_PER_KM;
  }).length;

const most = (xs: readonly number[]): number => Math.max(...xs.map(Math.abs));
/** A foot pod fresh from its box, wrong by this share at five minutes a kilometre and by another at other paces. */
const POD_SHARE = 0.03;

const RECEIVED = [
  ['open', OPEN_SKY, null, false],
  ['open, foot pod', OPEN_SKY, POD_SHARE, false],
  ['open, on a known loop', OPEN_SKY, null, true],
  ['town', TOWN, null, false],
  ['town, foot pod', TOWN, POD_SHARE, false],
  ['town, on a known loop', TOWN, null, true],
] as const;

/** Sessions by ear: do legs change on their moment, and is the runner left alone who does what was asked? */
export const printPractice = (seeds: readonly number[]): void => {
  const runners = [
    ['truly even', { ...SESSION_STEADY, waverShare: 0 }],
    ['waver 1.2 %', SESSION_STEADY],
  ] as const;
  printTable(
    `Practice: 2 x 15 min and 5 x 1000 m (${seeds.length} sessions a row, no course line but on a known loop)`,
    [
      'reception',
      'runner',
      'clock legs off, most',
      'distance legs off, 90 %',
      'most',
      'limit of the receiver, 90 %',
      'false alarms in 30 min, mean',
      'most',
    ],
    RECEIVED.flatMap(([name, receiver, podShare, isKnown]) =>
      runners.map(([who, runner]) => {
        const byClock = seeds.map((seed) => doSession(TWO_BY_15, receiver, runner, seed, podShare, isKnown));
        const byDistance = seeds.map((seed) =>
          doSession(THOUSANDS, receiver, runner, seed, podShare, isKnown),
        );
        const clock = byClock.flatMap((d) => changeErrorsS(TWO_BY_15, d, 'time'));
        const way = byDistance.flatMap((d) => legErrorsS(THOUSANDS, d)).map(Math.abs);
        const alarms = byClock.map((d) => falseAlarms(TWO_BY_15, d));
        const [first] = byDistance;
        return [
          name,
          who,
          `${fixed(most(clock), 2)} s`,
          `${fixed(quantile(way, 0.9), 2)} s`,
          `${fixed(most(way), 2)} s`,
          first === undefined || podShare !== null || isKnown
            ? '–'
            : `${fixed(limitS(THOUSANDS, receiver, first.session), 2)} s`,
          fixed(mean(alarms), 2),
          String(Math.max(...alarms)),
        ];
      }),
    ),
  );
};
