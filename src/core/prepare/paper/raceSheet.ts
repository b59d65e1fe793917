import type { RacePlan } from '../../plan/racePlan.ts';
import type { Schedule } from '../../plan/schedule.ts';
import { splitsAt } from '../../plan/splits.ts';
import { type DistanceUnit, M_PER_KM } from '../../units/units.ts';
import { type CautionKey, cautionTexts } from '../cautions.ts';
import type { RaceDayItem } from '../day/raceDay.ts';
import { distanceText, durationText, paceText, raceText, timeOfDayText } from '../format.ts';
import { drinksAt, waterStations } from '../fuel/water.ts';
import { legTexts } from './legs.ts';

/** One page for the wall or the pocket: everything as text, in the order to print it. */
export interface RaceSheet {
  readonly title: string;
  readonly facts: readonly { readonly label: string; readonly text: string }[];
  /** The clock of the day; empty where it was not planned. */
  readonly day: readonly { readonly time: string; readonly what: string; readonly why: string }[];
  readonly legs: readonly string[];
  /** Times at the checkpoints and the finish, with the pace since the row above in both units. */
  readonly checkpoints: readonly {
    readonly place: string;
    readonly time: string;
    readonly perKm: string;
    readonly perMile: string;
  }[];
  /** When the race closes a place. */
  readonly cutOffs: readonly { readonly place: string; readonly time: string }[];
  /** Gels, food and water in the order of the course. */
  readonly supplies: readonly { readonly place: string; readonly text: string }[];
  readonly cautions: readonly string[];
}

const ALWAYS: readonly CautionKey[] = ['chest', 'thirst', 'practised', 'rules', 'general'];

const facts = (plan: RacePlan, schedule: Schedule): RaceSheet['facts'] => {
  const paceSPerKm = (plan.goalS / plan.distanceM) * M_PER_KM;
  return [
    { label: 'Race', text: raceText(plan.distanceM) },
    {
      label: 'Goal',
      text: `${durationText(plan.goalS)} by ${plan.goalBy === 'own' ? 'your own clock' : "the gun's clock"}`,
    },
    { label: 'Goal pace', text: `${paceText(paceSPerKm, 'km')}, ${paceText(paceSPerKm, 'mile')}` },
    { label: 'The plan finishes in', text: durationText(schedule.timeAtS(plan.distanceM)) },
    ...(plan.secondGoal === undefined
      ? []
      : [
          {
            label: plan.secondGoal.kind === 'safe' ? 'Safe goal' : 'Dream goal',
            text: durationText(plan.secondGoal.goalS),
          },
        ]),
    ...(plan.pacer === undefined
      ? []
      : [
          {
            label: 'Pacer',
            text: `flag ${durationText(plan.pacer.flagS)}, ${plan.pacer.by === 'gun' ? 'by the gun' : 'by their own clock'}`,
          },
        ]),
  ];
};

const checkpoints = (plan: RacePlan, schedule: Schedule, unit: DistanceUnit): RaceSheet['checkpoints'] =>
  splitsAt(schedule, plan.checkpointsM).map((split) => ({
    place: split.atM >= plan.distanceM ? 'finish' : distanceText(split.atM, unit, 2),
    time: durationText(split.timeS),
    perKm: paceText(split.paceSPerKm, 'km'),
    perMile: paceText(split.paceSPerKm, 'mile'),
  }));

const supplies = (plan: RacePlan, unit: DistanceUnit): RaceSheet['supplies'] => {
  const waters = waterStations(plan.stations);
  // The water that a gel is taken with is the first one after it.
  const stops = plan.fuel.map((f) => ({ waterAtM: waters.find((m) => m >= f.atM) ?? null }));
  const rows = [
    ...plan.fuel.map((f) => ({ atM: f.atM, text: f.item })),
    ...drinksAt(plan.stations, stops).map((d) => ({ atM: d.atM, text: `water: ${d.text}` })),
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
    time: `${durationText(c.timeS)} after the gun`,
  })),
  supplies: supplies(plan, unit),
  cautions: cautionTexts([...ALWAYS, ...(plan.fuel.length > 0 ? (['stomach', 'diabetes'] as const) : [])]),
});
