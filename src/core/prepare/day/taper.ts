import { type Message, message } from '../../units/message.ts';
import type { CautionKey } from '../cautions.ts';
import { read, type Source } from '../source.ts';
import type { Weekday } from './civil.ts';
import { type SessionGoal, type SessionKind, sessionText } from './session.ts';
import { shareOut } from './shareOut.ts';

/** What the runner usually does in a week. */
export interface TaperWish extends SessionGoal {
  /** Weekday of the race. */
  readonly raceWeekday: Weekday;
  readonly weeklyKm: number;
  /** The usual run days, each once, at least one; the long-run day is one of them. */
  readonly runDays: readonly Weekday[];
  readonly longRunDay: Weekday;
}

export interface TaperDay {
  /** Days from the race: -14 to 0. */
  readonly dayOffset: number;
  readonly weekday: Weekday;
  readonly kind: SessionKind;
  /** 0 on a rest day. */
  readonly distanceM: number;
  readonly title: Message;
  readonly detail: Message;
}

export interface Taper {
  /** Fourteen days and race day, in order. */
  readonly days: readonly TaperDay[];
  /** How much less than the usual week each of the two weeks is (race apart), per cent. */
  readonly cutPercent: readonly [first: number, second: number];
  readonly source: Source;
  readonly cautions: readonly CautionKey[];
}

/**
 * Bosquet et al. 2007 (27 studies, abstract read): volume down 41-60 % worked best, over two weeks, with intensity and
 * frequency kept. Both weeks lie inside that range; the second, nearer the race, lower.
 */
export const VOLUME_KEPT: readonly [first: number, second: number] = [0.56, 0.42];

/** Shares of a week's distance: only their ratios count (common practice, no source). */
const WEIGHT: Readonly<Record<SessionKind, number>> = {
  rest: 0,
  easy: 1,
  long: 2,
  sharp: 1.2,
  primer: 0.5,
  race: 0,
};
/** The long run of race week is an easy run a little longer, and only this far from the race (common practice). */
const LAST_LONG_DAY = -6;
/** Best and latest days for the last hard running of each week: legs need two to four days (common practice, no source). */
const SHARP_DAYS = { first: [-11, -10, -12, -9, -13, -8, -14], second: [-4, -5, -3, -6, -7] } as const;

const weekdayAt = (raceWeekday: Weekday, dayOffset: number): Weekday =>
  ((((raceWeekday + dayOffset) % 7) + 7) % 7) as Weekday;

const kindsOf = (
  wish: TaperWish,
  offsets: readonly number[],
  sharpDays: readonly number[],
): readonly SessionKind[] => {
  const runs = (offset: number): boolean => wish.runDays.includes(weekdayAt(wish.raceWeekday, offset));
  const isLong = (offset: number): boolean =>
    runs(offset) && weekdayAt(wish.raceWeekday, offset) === wish.longRunDay && offset <= LAST_LONG_DAY;
  // A hard day next to the long run is taken only where the week leaves no other.
  const free = sharpDays.filter((o) => runs(o) && !isLong(o));
  const sharp = free.find((o) => !isLong(o - 1) && !isLong(o + 1)) ?? free[0];
  return offsets.map((offset) => {
    if (!runs(offset)) return 'rest';
    if (isLong(offset)) return 'long';
    if (offset === sharp) return 'sharp';
    return offset === -1 ? 'primer' : 'easy';
  });
};

const FIRST_WEEK = [-14, -13, -12, -11, -10, -9, -8];
const SECOND_WEEK = [-7, -6, -5, -4, -3, -2, -1];
const STEP_M = 100;

const weekOf = (
  wish: TaperWish,
  offsets: readonly number[],
  sharpDays: readonly number[],
  kept: number,
): TaperDay[] => {
  const kinds = kindsOf(wish, offsets, sharpDays);
  const hasSharp = kinds.includes('sharp');
  const distances = shareOut(
    wish.weeklyKm * 1000 * kept,
    kinds.map((kind) => WEIGHT[kind]),
    STEP_M,
  );
  return offsets.map((dayOffset, i) => {
    const kind = kinds[i] ?? 'rest';
    const distanceM = distances[i] ?? 0;
    const weekday = weekdayAt(wish.raceWeekday, dayOffset);
    return { dayOffset, weekday, kind, distanceM, ...sessionText(kind, distanceM, hasSharp, wish) };
  });
};

/** The last two weeks for this runner's usual week. The figures are finite, weeklyKm above 0. */
export const planTaper = (wish: TaperWish): Taper => {
  const race: TaperDay = {
    dayOffset: 0,
    weekday: wish.raceWeekday,
    kind: 'race',
    distanceM: wish.raceDistanceM,
    ...sessionText('race', wish.raceDistanceM, true, wish),
  };
  return {
    days: [
      ...weekOf(wish, FIRST_WEEK, SHARP_DAYS.first, VOLUME_KEPT[0]),
      ...weekOf(wish, SECOND_WEEK, SHARP_DAYS.second, VOLUME_KEPT[1]),
      race,
    ],
    cutPercent: [100 * (1 - VOLUME_KEPT[0]), 100 * (1 - VOLUME_KEPT[1])],
    source: read(
      message('Bosquet et al. 2007: two weeks, volume down 41 to 60 %, intensity and frequency kept'),
    ),
    cautions: ['ill', 'training', 'general'],
  };
};
