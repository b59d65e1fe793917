import { raceAloud } from '../../../src/core/aloud/aloud.ts';
import { defaultCheckpointsM } from '../../../src/core/plan/checkpoints.ts';
import type { RacePlan } from '../../../src/core/plan/racePlan.ts';
import { scheduleOf } from '../../../src/core/plan/schedule.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import { type AloudLine, linesOf, stripOf } from '../../../src/session/aloud/aloudFile.ts';
import type { Strip } from '../../../src/voice/file/strip.ts';
import { shippedSources, VOICE } from '../../voice/file/shipped.ts';

const every = (stepM: number, toM: number): number[] =>
  Array.from({ length: Math.floor(toM / stepM) }, (_, i) => (i + 1) * stepM).filter((m) => m < toM);

const MARATHON_M = 42_195;
/** The longest that is promised: a marathon in five hours, with much to say. */
export const fiveHours: RacePlan = {
  ...demoPlan,
  name: 'Five hours',
  distanceM: MARATHON_M,
  goalS: 5 * 3600,
  pacing: 'pace',
  opening: { untilM: 2000, quickerSPerKm: 5 },
  push: null,
  checkpointsM: defaultCheckpointsM(MARATHON_M),
  stations: every(2500, MARATHON_M).map((atM) => ({ atM, offers: ['water', 'drink'] })),
  fuel: every(6000, MARATHON_M).map((atM) => ({ item: 'gel', atM })),
};

export interface Made {
  readonly lines: readonly AloudLine[];
  readonly strip: Strip;
}

/** A plan's sound on the grid of frames, in the English voice. */
export const madeOf = (plan: RacePlan, leadS: number): Made => {
  const aloud = raceAloud(plan, scheduleOf(plan, null), VOICE, { leadS, places: 'boards' });
  const lines = linesOf(aloud);
  return { lines, strip: stripOf(lines, aloud.totalS, leadS, shippedSources()) };
};
