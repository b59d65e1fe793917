import type { PacerHeading } from '../../plan/pacer.ts';
import { type Advice, adviceFor, isOffFlag } from '../../plan/pacerAdvice.ts';
import type { Pacer } from '../../plan/racePlan.ts';
import { durationText, roughDurationText } from '../format.ts';

export interface PacerAdvice {
  readonly advice: Advice;
  /** Heading less goal by the clock of the goal, seconds: above 0 the pacer is slower than the goal. */
  readonly againstGoalS: number;
  readonly text: string;
}

/** Off the flag in words; nothing is made of what the error covers. */
const flagText = ({ offFlag }: PacerHeading, pacer: Pacer): string => {
  const off = Math.round(Math.abs(offFlag.s));
  const flag = durationText(pacer.flagS);
  if (!isOffFlag(offFlag))
    return `The ${flag} pacer is on their time, give or take ${Math.ceil(offFlag.sdS)} s`;
  const side = offFlag.s > 0 ? 'behind' : 'ahead of';
  return `The ${flag} pacer is about ${off} s ${side} their flag, give or take ${Math.ceil(offFlag.sdS)} s`;
};

const SAY: Readonly<Record<Advice, string>> = {
  with: 'Go with them.',
  'let go': 'Let them go: that is quicker than your goal.',
  'go past': 'Do not wait for them: that is slower than your goal. Move past when there is room.',
  unsure: 'Too early to tell. Press again further on.',
};

/** Whether to go with the pacer. `goalS` by the clock named in `goalBy`, as in the plan. */
export const pacerAdvice = (
  heading: PacerHeading,
  pacer: Pacer,
  goalS: number,
  goalBy: 'own' | 'gun',
): PacerAdvice => {
  const by = goalBy === 'own' ? heading.runnerOwn : heading.gun;
  const againstGoalS = by.s - goalS;
  const advice = adviceFor(againstGoalS, by.sdS);
  const finish = roughDurationText(heading.runnerOwn.s);
  return {
    advice,
    againstGoalS,
    text:
      advice === 'unsure'
        ? `${SAY.unsure} So far they head for about ${finish} on your clock.`
        : `${flagText(heading, pacer)}; staying level finishes in about ${finish} on your clock. ${SAY[advice]}`,
  };
};
