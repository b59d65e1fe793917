import type { Voice } from '../cues/voicePort.ts';
import type { Leg, PracticePlan } from '../plan/practicePlan.ts';
import { doneCue, legCue, takeCue } from '../practice/cues.ts';
import { type DoorError, doorError, err, ok, type Result } from '../units/result.ts';
import { M_PER_KM } from '../units/units.ts';
import { type Aloud, framed } from './aloud.ts';
import { settleCalls } from './settleCalls.ts';
import { atMoment, IMPORTANCE, type Wish } from './wish.ts';

/** Something to take may be told so much later than its time. */
const TAKE_LATE_S = 30;
/** The first leg is told after the countdown's last note; the later ones bring their own countdown. */
const FIRST_AT_S = 1;

/** How long a leg takes by the clock, seconds; null where only the runner can tell. */
const legS = ({ extent, target }: Leg): number | null => {
  if (extent.by === 'time') return extent.timeS;
  if (extent.by === 'press' || target.by !== 'pace') return null;
  return (extent.distanceM / M_PER_KM) * target.paceSPerKm;
};

const takes = (leg: Leg, beginS: number, lengthS: number): readonly Wish[] =>
  leg.take.map((taking) => {
    const { at } = taking;
    const share = 'timeS' in at || leg.extent.by !== 'distance' ? 0 : at.distanceM / leg.extent.distanceM;
    const atS = beginS + ('timeS' in at ? at.timeS : share * lengthS);
    return {
      ...atMoment(atS, takeCue(taking, 0).saying, IMPORTANCE.fuel, null),
      untilS: atS + TAKE_LATE_S,
    };
  });

/** The change into a leg: told so that the last note of its countdown falls on the change. */
const change = (plan: PracticePlan, leg: Leg, beginS: number): Wish => {
  const cue = legCue(leg, plan.unit, beginS * 1000, beginS > 0);
  const atS = beginS > 0 ? cue.dueMs / 1000 : FIRST_AT_S;
  return atMoment(atS, cue.saying, IMPORTANCE.start, null, cue.onlyShort ? 'short' : 'long');
};

/**
 * A practice session by the clock: each leg at its time, legs by distance at the pace that they ask for. Refused where a
 * leg ends by a press, or by distance without a pace: no clock can tell when.
 */
export const sessionAloud = (plan: PracticePlan, voice: Voice, leadS: number): Result<Aloud, DoorError> => {
  const wishes: Wish[] = [];
  let atS = 0;
  for (const [i, leg] of plan.legs.entries()) {
    const lengthS = legS(leg);
    if (lengthS === null) return err(doorError(`legs[${i}]`, 'an end that a clock can tell', leg.extent.by));
    wishes.push(change(plan, leg, atS), ...takes(leg, atS, lengthS));
    atS += lengthS;
  }
  const done = doneCue(plan.unit, atS * 1000, true, atS, null);
  wishes.push(atMoment(done.dueMs / 1000, done.saying, IMPORTANCE.start, null));
  return ok(framed(settleCalls(wishes, voice), atS, leadS));
};
