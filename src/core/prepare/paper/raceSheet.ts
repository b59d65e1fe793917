import type { RacePlan } from '../../plan/racePlan.ts';
import type { Schedule } from '../../plan/schedule.ts';
import { splitsAt } from '../../plan/splits.ts';
import { SUPPLY_NAMES } from '../../plan/supplies.ts';
import { type Message, message } from '../../units/message.ts';
import { type DistanceUnit, M_PER_KM } from '../../units/units.ts';
import { type CautionKey, cautionTexts } from '../cautions.ts';
import type { RaceDayItem } from '../day/raceDay.ts';
import { distanceText, durationText, paceText, raceText, timeOfDayText } from '../format.ts';
import { drinksAt, waterStations } from '../fuel/water.ts';
import { legTexts } from './legs.ts';

/** A text of the page; a plain string is the same in every language. */
type Text = string | Message;

/** One page for the wall or the pocket: everything as text, in the order to print it. */
export interface RaceSheet {
  readonly title: string;
  readonly facts: readonly { readonly label: Message; readonly text: Text }[];
  /** The clock of the day; empty where it was not planned. */
  readonly day: readonly { readonly time: string; readonly what: Message; readonly why: Message }[];
  readonly legs: readonly Message[];
  /** Times at the checkpoints and the finish, with the pace since the row above in both units. */
  readonly checkpoints: readonly {
    readonly place: Message;
    readonly time: string;
    readonly perKm: Message;
    readonly perMile: Message;
  }[];
  /** When the race closes a place. */
  readonly cutOffs: readonly { readonly place: Message; readonly time: Message }[];
  /** Gels, food and water in the order of the course. */
  readonly supplies: readonly { readonly place: Message; readonly text: Message }[];
  readonly cautions: readonly Message[];
}

const ALWAYS: readonly CautionKey[] = ['chest', 'thirst', 'practised', 'rules', 'general'];

const goalText = (time: string, goalBy: RacePlan['goalBy']): Message =>
  goalBy === 'own'
    ? message('{time} by your own clock', { time })
    : message("{time} by the gun's clock", { time });

const pacerText = ({ flagS, by }: NonNullable<RacePlan['pacer']>): Message => {
  const time = durationText(flagS);
  return by === 'gun'
    ? message('flag {time}, by the gun', { time })
    : message('flag {time}, by their own clock', { time });
};

const facts = (plan: RacePlan, schedule: Schedule): RaceSheet['facts'] => {
  const paceSPerKm = (plan.goalS / plan.distanceM) * M_PER_KM;
  const { secondGoal, pacer } = plan;
  return [
    { label: message('Race'), text: raceText(plan.distanceM) },
    { label: message('Goal'), text: goalText(durationText(plan.goalS), plan.goalBy) },
    {
      label: message('Goal pace'),
      text: message('{perKm}, {perMile}', {
        perKm: paceText(paceSPerKm, 'km'),
        perMile: paceText(paceSPerKm, 'mile'),
      }),
    },
    { label: message('The plan finishes in'), text: durationText(schedule.timeAtS(plan.distanceM)) },
    ...(secondGoal === undefined
      ? []
      : [
          {
            label: secondGoal.kind === 'safe' ? message('Safe goal') : message('Dream goal'),
            text: durationText(secondGoal.goalS),
          },
        ]),
    ...(pacer === undefined ? [] : [{ label: message('Pacer'), text: pacerText(pacer) }]),
  ];
};

const checkpoints = (plan: RacePlan, schedule: Schedule, unit: DistanceUnit): RaceSheet['checkpoints'] =>
  splitsAt(schedule, plan.checkpointsM).map((split) => ({
    place: split.atM >= plan.distanceM ? message('finish||place') : distanceText(split.atM, unit, 2),
    time: durationText(split.timeS),
    perKm: paceText(split.paceSPerKm, 'km'),
    perMile: paceText(split.paceSPerKm, 'mile'),
  }));

const supplies = (plan: RacePlan, unit: DistanceUnit): RaceSheet['supplies'] => {
  const waters = waterStations(plan.stations);
  // The water that a gel is taken with is the first one after it.
  const stops = plan.fuel.map((f) => ({ waterAtM: waters.find((m) => m >= f.atM) ?? null }));
  const rows = [
    ...plan.fuel.map((f) => ({ atM: f.atM, text: SUPPLY_NAMES[f.item] })),
    ...drinksAt(plan.stations, stops).map((d) => ({
      atM: d.atM,
      text: message('water: {text}', { text: d.text }),
    })),
  ];
  return rows.sort((a, b) => a.atM - b.atM).map((r) => ({ place: distanceText(r.atM, unit), text: r.text }));
};

/** The race sheet of a plan; `day` from planRaceDay, or empty. */
export const planRaceSheet = (
  plan: RacePlan,
  schedule: Schedule,
  unit: DistanceUnit,
  day: readonly RaceDayItem[],
): RaceSheet => ({
  title: plan.name,
  facts: facts(plan, schedule),
  day: day.map((item) => ({ time: timeOfDayText(item.clockMin), what: item.title, why: item.reason })),
  legs: legTexts(plan, unit),
  checkpoints: checkpoints(plan, schedule, unit),
  cutOffs: (plan.cutOffs ?? []).map((c) => ({
    place: distanceText(c.atM, unit, 2),
    time: message('{time} after the gun', { time: durationText(c.timeS) }),
  })),
  supplies: supplies(plan, unit),
  cautions: cautionTexts([...ALWAYS, ...(plan.fuel.length > 0 ? (['stomach', 'diabetes'] as const) : [])]),
});
