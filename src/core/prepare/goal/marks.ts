import { metresPer, pacePer } from '../../units/units.ts';

/** What a goal means on the way. */
export interface GoalMark {
  readonly name: '5K' | '10K' | 'half-way' | 'finish';
  readonly atM: number;
  readonly timeS: number;
}

export interface GoalMeaning {
  readonly paceSPerKm: number;
  readonly paceSPerMile: number;
  readonly speedMps: number;
  /** 5K, 10K, half-way and finish, as far as the race is that long; ascending. */
  readonly marks: readonly GoalMark[];
}

const FIVE_K_M = 5000;
const TEN_K_M = 10_000;
/** A mark this near to another one is the same to a runner. */
const SAME_PLACE_M = 1;

/**
 * Goal time in pace and at the usual marks. `timeAtS` is the plan's schedule where there is one; else even pace,
 * goalS / distanceM. Metres, seconds.
 */
export const goalMeaning = (
  distanceM: number,
  goalS: number,
  timeAtS: (distanceM: number) => number = (d) => (goalS * d) / distanceM,
): GoalMeaning => {
  const paceSPerKm = (goalS / distanceM) * metresPer('km');
  const mark = (name: GoalMark['name'], atM: number): GoalMark => ({ name, atM, timeS: timeAtS(atM) });
  const candidates = [
    mark('5K', FIVE_K_M),
    mark('10K', TEN_K_M),
    mark('half-way', distanceM / 2),
    mark('finish', distanceM),
  ];
  const marks = candidates
    .filter((m) => m.name === 'finish' || m.atM < distanceM - SAME_PLACE_M)
    // A 10K's 5K is its half-way: said once, as half-way.
    .filter((m) => m.name === 'half-way' || Math.abs(m.atM - distanceM / 2) > SAME_PLACE_M)
    .sort((a, b) => a.atM - b.atM);
  return {
    paceSPerKm,
    paceSPerMile: pacePer('mile', paceSPerKm),
    speedMps: distanceM / goalS,
    marks,
  };
};
