import type { RacePlan } from '../plan/racePlan.ts';
import { decimal, type Message, message, plural } from '../units/message.ts';
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
const place = (m: number, { unit }: RacePlan): Message =>
  message('{distance} {unit}', {
    distance: decimal(m / metresPer(unit), 1),
    unit: unit === 'km' ? 'km' : 'mi',
  });

/** A goal missed or made by less than this is a goal met. */
const MET_S = 2;
/** Slower or quicker by less than this over half a race is even. */
const EVEN_SHARE = 0.01;
const FADED_SHARE = 0.03;
/** A station that costs less is none of the reasons. */
const DEAR_S = 5;

const resultLine = ({ plan, digest }: SummaryFacts): Message => {
  if (digest.finishS === null)
    return message('The run ended at {place}; the goal of {time} was not reached.', {
      place: place(digest.distanceM, plan),
      time: clock(plan.goalS),
    });
  // By the gun the goal is another clock: the last call has it.
  const aheadS = digest.samples.at(-1)?.aheadS ?? plan.goalS - digest.finishS;
  const meant = digest.samples.length > 0 ? aheadS : plan.goalS - digest.finishS;
  const time = clock(digest.finishS);
  if (Math.abs(meant) < MET_S) return message('Finished in {time}: on plan to the second or two.', { time });
  const values = { time, off: secondsText(meant) };
  return meant > 0
    ? message('Finished in {time}, {off} ahead of the plan.', values)
    : message('Finished in {time}, {off} behind the plan.', values);
};

const openingLine = ({ plan, opening }: SummaryFacts): Message => {
  if (opening === null) return message('The opening is not in the log.');
  const off = Math.round(Math.abs(opening.ranSPerKm - opening.plannedSPerKm));
  const values = { distance: place(opening.untilM, plan), off };
  if (opening.verdict === 'capped')
    return message('The first {distance} went as planned: a good opening.', values);
  return opening.verdict === 'tooQuick'
    ? message('The first {distance} went {off} s/km quicker than planned: too quick an opening.', values)
    : message('The first {distance} went {off} s/km slower than planned.', values);
};

const lostLine = ({ plan, fade }: Pick<SummaryFacts, 'plan' | 'fade'>): Message => {
  if (fade === null) return message('There is too little of the run to say where time was won and lost.');
  const { worst, best } = fade;
  const lost = {
    from: place(worst.fromM, plan),
    to: place(worst.toM, plan),
    lost: secondsText(worst.lostS),
  };
  const won = {
    wonFrom: place(best.fromM, plan),
    wonTo: place(best.toM, plan),
    won: secondsText(best.lostS),
  };
  const [hasLost, hasWon] = [worst.lostS > 0, best.lostS < 0];
  if (hasLost && hasWon)
    return message(
      'Most was lost from {from} to {to} ({lost}), most was won from {wonFrom} to {wonTo} ({won}).',
      { ...lost, ...won },
    );
  if (hasLost) return message('Most was lost from {from} to {to} ({lost}).', lost);
  if (hasWon) return message('Most was won from {wonFrom} to {wonTo} ({won}); no part lost time.', won);
  return message('No part won or lost time.');
};

const halvesLine = (fade: Fade | null): Message => {
  if (fade === null) return message('The halves cannot be compared.');
  if (Math.abs(fade.share) < EVEN_SHARE) return message('The two halves were even.');
  const percent = decimal(Math.abs(100 * fade.share), 1);
  return fade.share > 0
    ? message(
        'The second half was {percent} % slower than the first, hills and changes of target taken out.',
        { percent },
      )
    : message(
        'The second half was {percent} % quicker than the first, hills and changes of target taken out.',
        {
          percent,
        },
      );
};

const evenLine = ({ fade, stations }: SummaryFacts): Message => {
  const halves = halvesLine(fade);
  const dear = stations.filter((s) => s.lostS >= DEAR_S);
  if (dear.length === 0) return halves;
  const time = secondsText(dear.reduce((sum, s) => sum + s.lostS, 0));
  const cost = plural(dear.length, 'One station cost {time}.', '{n} stations cost {time}.', { time });
  return message('{halves} {cost}', { halves, cost });
};

const nextLine = (facts: SummaryFacts): Message => {
  const { opening, fade, digest, stations, plan } = facts;
  const costS = stations.reduce((sum, s) => sum + Math.max(0, s.lostS), 0);
  if (digest.finishS === null)
    return message('Next time: find out first why it ended; with pain or illness, ask a doctor.');
  if (opening?.verdict === 'tooQuick' && (fade?.share ?? 0) > FADED_SHARE)
    return message(
      'Next time: hold the opening back; what it won was paid for in the second half. Practise it three times.',
    );
  if ((fade?.share ?? 0) > FADED_SHARE)
    return message('Next time: a goal a little slower, or longer threshold and long runs before it.');
  if (costS > 0.005 * digest.finishS)
    return message('Next time: practise drinking on the move; the stations cost more than the pace did.');
  if (opening?.verdict === 'tooQuick')
    return message(
      'Next time: hold the opening back. It cost nothing seen this time; it is the first thing that does.',
    );
  const aheadS = digest.samples.at(-1)?.aheadS ?? 0;
  if (aheadS > 0.01 * plan.goalS)
    return message('Next time: a goal a little quicker is realistic, on a day and a course like this one.');
  if (aheadS < -0.01 * plan.goalS)
    return message('Next time: hold the plan against this result before setting the goal.');
  return message('Next time: the same again.');
};

/** Five lines: the result, the opening, where time was won and lost, how even it was, what to try next. */
export const summaryOf = (facts: SummaryFacts): readonly [Message, Message, Message, Message, Message] => [
  resultLine(facts),
  openingLine(facts),
  lostLine(facts),
  evenLine(facts),
  nextLine(facts),
];

/** Three lines for a run that nobody planned: how long it took, where time was won and lost, how even it was. */
export const summaryWithoutPlan = ({
  plan,
  digest,
  fade,
}: Pick<SummaryFacts, 'plan' | 'digest' | 'fade'>): readonly [Message, Message, Message] => [
  message('The run took {time}. It came without a plan, so it is held against an even one.', {
    time: clock(digest.finishS ?? digest.samples.at(-1)?.atS ?? plan.goalS),
  }),
  lostLine({ plan, fade }),
  halvesLine(fade),
];
