import { type CourseLine, measureLine } from '../../core/course/line.ts';
import type { Input } from '../../core/estimate/input.ts';
import { planeAt, pointOn } from '../../core/geo/ruler.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { NO_PRESSES, simulate } from '../../sensors/simulated.ts';
import { TOWN } from '../../sensors/simulatedReceiver.ts';
import { type RunnerModel, STEADY } from '../../sensors/simulatedRunner.ts';

/** Carried away by the first kilometre, tired at the end: there is something to be called. */
const human = (distanceM: number): RunnerModel => ({
  ...STEADY,
  tooQuick: { untilM: Math.min(1500, 0.1 * distanceM), share: 0.03 },
  fade: { fromM: 0.7 * distanceM, share: 0.02 },
});

/** At sea off the coast of an invented town, where no road is. */
const OUT_AT_SEA = { latitudeDeg: 54.1, longitudeDeg: 7.3 };
const CORNERS = 180;

/** A round course of a given length, for a plan without one. */
const roundLine = (distanceM: number): CourseLine => {
  const plane = planeAt(OUT_AT_SEA);
  const radiusM = distanceM / (2 * Math.PI);
  const points = Array.from({ length: CORNERS + 1 }, (_, i) => {
    const angle = (2 * Math.PI * i) / CORNERS;
    return { ...pointOn(plane, radiusM * Math.sin(angle), radiusM * Math.cos(angle)), elevationM: null };
  });
  const line = measureLine(points, distanceM);
  if (line === null) throw new Error('a circle has a length');
  return line;
};

const PEN_S = 20;
const SEED = 11;

/** A run of the plan by a simulated runner with a phone, in town. */
export const practiceTape = (plan: RacePlan, course: CourseLine | null): readonly Input[] =>
  simulate({
    plan,
    line: course ?? roundLine(plan.distanceM),
    runner: human(plan.distanceM),
    receiver: TOWN,
    presses: NO_PRESSES,
    penS: PEN_S,
    seed: SEED,
  }).inputs;
