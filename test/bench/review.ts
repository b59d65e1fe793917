import { digestOf } from '../../src/core/review/digest.ts';
import { reviewOf } from '../../src/core/review/review.ts';
import { spoken as english } from '../../src/languages/en/spoken.ts';
import { voiceOf } from '../../src/voice/utter.ts';
import { count, resting } from './odometer.ts';
import { median } from './stats.ts';
import { fixed, printTable } from './table.ts';
import { planOf, worldOf } from './worlds.ts';

const voice = voiceOf(english.pack, english.words);
const ROUNDS = 5;

const secondsOf = (work: () => void): number => {
  const fromMs = performance.now();
  work();
  return (performance.now() - fromMs) / 1000;
};
const timed = (work: () => void): number => median(Array.from({ length: ROUNDS }, () => secondsOf(work)));

/** A marathon of five hours: what putting its review together costs, once; and what opening it costs ever after. */
export const printReview = (): void => {
  const plan = planOf({ distanceM: 42_195, goalS: 18_000 });
  const { run, given } = worldOf({ plan, shape: 'city', reception: 'open', seed: 3 });
  const config = { plan, course: given, voice };
  const digest = digestOf(config, run.inputs);
  const text = JSON.stringify(digest);
  const foldS = secondsOf(() => digestOf(config, run.inputs));
  const openS = timed(() => reviewOf(JSON.parse(text), plan, given));
  const plainS = timed(() => {
    let odometer = resting;
    for (const input of run.inputs) if (input.type === 'fix') odometer = count(odometer, input.fix);
    if (!(odometer.sumM > 0)) throw new Error('the odometer stood still');
  });
  printTable(
    'Review of a marathon in five hours',
    [
      'fixes',
      'put together once, s here',
      'opened, s here',
      'opened, as odometer passes over the log',
      'kB kept',
    ],
    [
      [
        String(digest.fixes),
        fixed(foldS, 2),
        fixed(openS, 3),
        fixed(openS / plainS, 1),
        fixed(text.length / 1000, 0),
      ],
    ],
  );
};
