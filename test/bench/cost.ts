import type { Input } from '../../src/core/estimate/input.ts';
import { beginRun } from '../../src/core/run/run.ts';
import { step } from '../../src/core/run/step.ts';
import { spoken as english } from '../../src/languages/en/spoken.ts';
import { voiceOf } from '../../src/voice/utter.ts';
import { count, resting } from './odometer.ts';
import { median } from './stats.ts';
import { fixed, printTable } from './table.ts';
import { planOf, type World, worldOf } from './worlds.ts';

const voice = voiceOf(english.pack, english.words);
const ROUNDS = 5;
/** Kilometres of each course that are really run: the cost of a fix is asked, not that of a longer race. */
const RUN_M = 4000;

const secondsOf = (work: () => void): number => {
  const fromMs = performance.now();
  work();
  return (performance.now() - fromMs) / 1000;
};

/** Median of some rounds, since others use the machine too; one before them, for the compiler. */
const timed = (work: () => void): number => {
  work();
  return median(Array.from({ length: ROUNDS }, () => secondsOf(work)));
};

/** Laying out plan and course comes once in a race, before the start: it is no part of a fix. */
const through = (world: World, inputs: readonly Input[]): (() => void) => {
  const begun = beginRun({ plan: world.plan, course: world.given, voice });
  return () => {
    let run = begun;
    for (const input of inputs) run = step(run, input).run;
  };
};

/** The odometer is far quicker than a clock tick: many rounds in one. */
const ODOMETER_ROUNDS = 100;

const odometerSeconds = (inputs: readonly Input[]): number =>
  timed(() => {
    let sumM = 0;
    for (let round = 0; round < ODOMETER_ROUNDS; round++) {
      let odometer = resting;
      for (const input of inputs) if (input.type === 'fix') odometer = count(odometer, input.fix);
      sumM += odometer.sumM;
    }
    if (!(sumM > 0)) throw new Error('the odometer stood still');
  }) / ODOMETER_ROUNDS;

const fixesIn = (inputs: readonly Input[]): number => inputs.filter((i) => i.type === 'fix').length;

/** What a fix costs, as a ratio to a plain odometer on the same fixes, on courses of 5 to 100 km; and a whole race. */
export const printCost = (): void => {
  const rows: string[][] = [];
  let shortest = Number.NaN;
  for (const distanceM of [5000, 21097.5, 42195, 100000]) {
    const plan = planOf({ distanceM, goalS: distanceM * 0.27 });
    const world = worldOf({ plan, shape: 'city', reception: 'town', seed: 3 });
    const untilMs = world.run.startMs + 1000 * (world.run.truth.crossingS(RUN_M) ?? 0);
    const inputs = world.run.inputs.filter((i) => i.atMs <= untilMs);
    const fixes = fixesIn(inputs);
    const perFix = timed(through(world, inputs)) / fixes;
    const plain = odometerSeconds(inputs) / fixes;
    if (Number.isNaN(shortest)) shortest = perFix;
    rows.push([
      `${fixed(distanceM / 1000, 1)} km`,
      String(world.given?.alongM.length ?? 0),
      fixed(perFix * 1e6, 0),
      fixed(perFix / plain, 0),
      fixed(perFix / shortest, 2),
    ]);
  }
  printTable(
    `Cost of a fix (first ${RUN_M} m, everything from fix to calls)`,
    ['course', 'points in its line', 'µs here', 'times a plain odometer', 'times the 5 km course'],
    rows,
  );

  const half = worldOf({ shape: 'city', reception: 'town', seed: 3 });
  const wholeS = secondsOf(through(half, half.run.inputs));
  const raceS = half.run.truth.crossingS(half.plan.distanceM) ?? Number.NaN;
  printTable(
    'A whole half marathon',
    ['fixes', 'seconds here', 'times faster than the race'],
    [[String(fixesIn(half.run.inputs)), fixed(wholeS, 2), fixed(raceS / wholeS, 0)]],
  );
};
