import type { RacePlan } from '../../plan/racePlan.ts';
import type { Schedule } from '../../plan/schedule.ts';
import type { Item, Offer } from '../../plan/supplies.ts';
import { type Message, message } from '../../units/message.ts';
import { type DistanceUnit, M_PER_KM, metresPer } from '../../units/units.ts';
import { distanceText } from '../format.ts';

/** Something to take, printed as a mark in the row of the next line below it. */
export interface BandMark {
  /** `station`: offered there; `fuel`: carried, to be taken there. */
  readonly from: 'station' | 'fuel';
  readonly what: Offer | Item;
  readonly atM: number;
}

/** One line of the band. */
export interface BandRow {
  readonly atM: number;
  /** `5`, `6.21 miles`, `half`, `finish`: boards are bare numbers in the band's unit, everything else says its unit. */
  readonly label: string | Message;
  readonly kind: 'board' | 'checkpoint' | 'finish';
  /** Checkpoints and the finish. */
  readonly bold: boolean;
  /** Planned own-clock time, exact; print it rounded to the second. */
  readonly timeS: number;
  /** Planned time since the row above, from the rounded times, so that the printed column adds up. */
  readonly splitS: number;
  /** The second goal's time here; null where there is none. */
  readonly otherTimeS: number | null;
  /** What comes after the row above and up to this one, in order. */
  readonly marks: readonly BandMark[];
}

export interface WristBand {
  readonly unit: DistanceUnit;
  readonly name: string;
  readonly rows: readonly BandRow[];
}

/** Places nearer than this are one line to a runner. */
const SAME_PLACE_M = 1;

const same = (a: number, b: number): boolean => Math.abs(a - b) <= SAME_PLACE_M;

/** Every board of the unit, every checkpoint and the finish, ascending, each place once; near twins yield to the checkpoint. */
const placesM = (plan: RacePlan, unit: DistanceUnit): readonly number[] => {
  const unitM = metresPer(unit);
  const boards = Array.from({ length: Math.floor(plan.distanceM / unitM) }, (_, i) => (i + 1) * unitM);
  const own = plan.checkpointsM.filter((m) => m < plan.distanceM - SAME_PLACE_M);
  const free = boards.filter((m) => m < plan.distanceM - SAME_PLACE_M && !own.some((c) => same(c, m)));
  return [...free, ...own, plan.distanceM].sort((a, b) => a - b);
};

const labelOf = (atM: number, plan: RacePlan, unit: DistanceUnit): string | Message => {
  if (same(atM, plan.distanceM)) return message('finish||place');
  const units = atM / metresPer(unit);
  if (same(Math.round(units) * metresPer(unit), atM)) return String(Math.round(units));
  if (same(atM, plan.distanceM / 2)) return message('half||place');
  // A 5 km mat in a race by miles is still the 5 km mat.
  return same(Math.round(atM / M_PER_KM) * M_PER_KM, atM)
    ? distanceText(atM, 'km')
    : distanceText(atM, unit, 2);
};

const marksOf = (plan: RacePlan): readonly BandMark[] =>
  [
    ...plan.stations.flatMap((s) => s.offers.map((what) => ({ from: 'station' as const, what, atM: s.atM }))),
    ...plan.fuel.map((f) => ({ from: 'fuel' as const, what: f.item, atM: f.atM })),
  ].sort((a, b) => a.atM - b.atM);

/** The band of a plan: rows down to the finish. `other` is the schedule of a second goal, to print beside. */
export const planWristBand = (
  plan: RacePlan,
  schedule: Schedule,
  unit: DistanceUnit,
  other: Schedule | null,
): WristBand => {
  const marks = marksOf(plan);
  let aboveM = -1;
  let aboveS = 0;
  const rows = placesM(plan, unit).map((atM): BandRow => {
    const timeS = schedule.timeAtS(atM);
    const finish = same(atM, plan.distanceM);
    const bold = finish || plan.checkpointsM.some((c) => same(c, atM));
    const row: BandRow = {
      atM,
      label: labelOf(atM, plan, unit),
      kind: finish ? 'finish' : bold ? 'checkpoint' : 'board',
      bold,
      timeS,
      splitS: Math.round(timeS) - aboveS,
      otherTimeS: other === null ? null : other.timeAtS(atM),
      marks: marks.filter((m) => m.atM > aboveM && m.atM <= atM),
    };
    aboveM = atM;
    aboveS = Math.round(timeS);
    return row;
  });
  return { unit, name: plan.name, rows };
};
