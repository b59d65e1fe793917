import type { RacePlan } from '../plan/racePlan.ts';
import { metresPer } from '../units/units.ts';
import type { Digest } from './digest.ts';
import type { Fade, RanOpening, StationCost } from './parts.ts';

/** What the summary is written from. */
export interface SummaryFacts {
  readonly plan: RacePlan;
  readonly digest: Digest;
  readonly opening: RanOpening | null;
  readonly fade: Fade | null;
  readonly stations: readonly StationCost[];
}

const clock = (s: number): string => {
  const whole = Math.round(Math.abs(s));
  const [h, m, rest] = [Math.floor(whole / 3600), Math.floor((whole % 3600) / 60), whole % 60];
  const two = (n: number): string => String(n).padStart(2, '0');
  return h > 0 ? `${h}:${two(m)}:${two(rest)}` : `${m}:${two(rest)}`;
};
const secondsText = (s: number): string => {
  const whole = Math.round(Math.abs(s));
  return whole >= 100 ? clock(whole) : `${whole} s`;
};
const place = (m: number, { unit }: RacePlan): string =>
  `${(m / metresPer(unit)).toFixed(1)} ${unit === 'km' ? 'km' : 'mi'}`;

/** A goal missed or made by less than this is a goal met. */
const MET_S = 2;
/** Slower or quicker by less than this over half a race is even. */
const EVEN_SHARE = 0.01;
const FADED_SHARE = 0.03;
/** A station that costs less is none of the reasons. */
const DEAR_S = 5;

const resultLine = ({ plan, digest }: SummaryFacts): string => {
  const goal = `the goal of ${clock(plan.goalS)}`;
  if (digest.finishS === null)
    return `The run ended at ${place(digest.distanceM, plan)}; ${goal} was not reached.`;
  // By the gun the goal is another clock: the last call has it.
  const aheadS = digest.samples.at(-1)?.aheadS ?? plan.goalS - digest.finishS;
  const meant = digest.samples.length > 0 ? aheadS : plan.goalS - digest.finishS;
  const time = clock(digest.finishS);
  if (Math.abs(meant) < MET_S) return `Finished in ${time}: on plan to the second or two.`;
  const side = meant > 0 ? 'ahead of' : 'behind';
  return `Finished in ${time}, ${secondsText(meant)} ${side} the plan.`;
};

const openingLine = ({ plan, opening }: SummaryFacts): string => {
  if (opening === null) return 'The opening is not in the log.';
  const off = Math.round(Math.abs(opening.ranSPerKm - opening.plannedSPerKm));
  const to = `The first ${place(opening.untilM, plan)}`;
  if (opening.verdict === 'capped') return `${to} went as planned: the opening was capped.`;
  return opening.verdict === 'tooQuick'
    ? `${to} went ${off} s/km quicker than planned: the opening was not capped.`
    : `${to} went ${off} s/km slower than planned.`;
};

const lostLine = ({ plan, fade }: SummaryFacts): string => {
  if (fade === null) return 'There is too little of the run to say where time was won and lost.';
  const part = (x: { fromM: number; toM: number }): string =>
    `${place(x.fromM, plan)} to ${place(x.toM, plan)}`;
  const { worst, best } = fade;
  const lost = worst.lostS > 0 ? `Most was lost from ${part(worst)} (${secondsText(worst.lostS)})` : '';
  const won = best.lostS < 0 ? `most was won from ${part(best)} (${secondsText(best.lostS)})` : '';
  if (lost === '') return won === '' ? 'No part won or lost time.' : `M${won.slice(1)}; no part lost time.`;
  return won === '' ? `${lost}.` : `${lost}, ${won}.`;
};

const evenLine = ({ fade, stations }: SummaryFacts): string => {
  const dear = stations.filter((s) => s.lostS >= DEAR_S);
  const sumS = dear.reduce((sum, s) => sum + s.lostS, 0);
  const cost =
    dear.length === 0
      ? ''
      : ` ${dear.length === 1 ? 'One station' : `${dear.length} stations`} cost ${secondsText(sumS)}.`;
  if (fade === null) return `The halves cannot be compared.${cost}`;
  const percent = Math.abs(100 * fade.share).toFixed(1);
  if (Math.abs(fade.share) < EVEN_SHARE) return `The two halves were even.${cost}`;
  return `The second half was ${percent} % ${fade.share > 0 ? 'slower' : 'quicker'} than the first, hills and legs taken out.${cost}`;
};

const nextLine = (facts: SummaryFacts): string => {
  const { opening, fade, digest, stations, plan } = facts;
  const costS = stations.reduce((sum, s) => sum + Math.max(0, s.lostS), 0);
  if (digest.finishS === null)
    return 'Next time: find out first why it ended; with pain or illness, ask a doctor.';
  if (opening?.verdict === 'tooQuick' && (fade?.share ?? 0) > FADED_SHARE)
    return 'Next time: hold the opening back; what it won was paid for in the second half. Practise it three times.';
  if ((fade?.share ?? 0) > FADED_SHARE)
    return 'Next time: a goal a little slower, or longer threshold and long runs before it.';
  if (costS > 0.005 * digest.finishS)
    return 'Next time: practise drinking on the move; the stations cost more than the pace did.';
  if (opening?.verdict === 'tooQuick')
    return 'Next time: cap the opening. It cost nothing seen this time; it is the first thing that does.';
  const aheadS = digest.samples.at(-1)?.aheadS ?? 0;
  if (aheadS > 0.01 * plan.goalS)
    return 'Next time: a goal a little quicker is realistic, on a day and a course like this one.';
  if (aheadS < -0.01 * plan.goalS)
    return 'Next time: hold the plan against this result before setting the goal.';
  return 'Next time: the same again.';
};

/** Five lines: the result, the opening, where time was won and lost, how even it was, what to try next. */
export const summaryOf = (facts: SummaryFacts): readonly [string, string, string, string, string] => [
  resultLine(facts),
  openingLine(facts),
  lostLine(facts),
  evenLine(facts),
  nextLine(facts),
];
