import { ITEMS, type Item } from '../../core/plan/supplies.ts';
import type { Weekday } from '../../core/prepare/day/civil.ts';

/** A recent result as typed. */
export interface ResultDraft {
  /** In the plan's unit. */
  readonly distance: string;
  readonly time: string;
  readonly weeksAgo: string;
}

/** What the runner told about themselves and the day, as typed; empty where they did not say. */
export interface PrepareDraft {
  readonly results: readonly ResultDraft[];
  /** In the plan's unit. */
  readonly weekly: string;
  readonly massKg: string;
  readonly temperatureC: string;
  /** `2027-05-09`. */
  readonly date: string;
  /** `09:30`. */
  readonly start: string;
  readonly penClosesMin: string;
  readonly travelMin: string;
  readonly runDays: readonly Weekday[];
  readonly longRunDay: Weekday;
  readonly fuelHow: 'halfway' | 'tenMiles' | 'rate';
  readonly gPerHour: string;
  readonly item: Item;
  readonly itemG: string;
  /** Seconds from the gun to the line. */
  readonly lineAfterGunS: string;
  readonly aloud: boolean;
  /** Names this runner's calendar entries for good, so that a calendar replaces and does not double them. */
  readonly calendarId: string;
}

export const blankPrepare = (calendarId: string): PrepareDraft => ({
  results: [{ distance: '10', time: '', weeksAgo: '' }],
  weekly: '',
  massKg: '',
  temperatureC: '',
  date: '',
  start: '10:00',
  penClosesMin: '10',
  travelMin: '30',
  runDays: [1, 3, 5, 6],
  longRunDay: 6,
  fuelHow: 'halfway',
  gPerHour: '40',
  item: 'gel',
  itemG: '25',
  lineAfterGunS: '',
  aloud: false,
  calendarId,
});

const isText = (x: unknown): x is string => typeof x === 'string' && x.length <= 100;
const isWeekday = (x: unknown): x is Weekday => Number.isInteger(x) && Number(x) >= 0 && Number(x) <= 6;

const resultOf = (value: unknown): ResultDraft | null => {
  const { distance, time, weeksAgo } = (value ?? {}) as Record<string, unknown>;
  return isText(distance) && isText(time) && isText(weeksAgo) ? { distance, time, weeksAgo } : null;
};

/** What was kept, field by field; what is not as it should be gives way to the blank. */
export const prepareOf = (value: unknown, blank: PrepareDraft): PrepareDraft => {
  if (typeof value !== 'object' || value === null) return blank;
  const found = value as Readonly<Record<string, unknown>>;
  const text = (key: keyof PrepareDraft, otherwise: string): string => {
    const x = found[key];
    return isText(x) ? x : otherwise;
  };
  const results = Array.isArray(found['results'])
    ? found['results'].slice(0, 10).flatMap((r: unknown) => resultOf(r) ?? [])
    : [];
  const runDays = Array.isArray(found['runDays']) ? found['runDays'].filter(isWeekday) : [];
  const how = (['halfway', 'tenMiles', 'rate'] as const).find((h) => h === found['fuelHow']);
  return {
    results: results.length > 0 ? results : blank.results,
    weekly: text('weekly', blank.weekly),
    massKg: text('massKg', blank.massKg),
    temperatureC: text('temperatureC', blank.temperatureC),
    date: text('date', blank.date),
    start: text('start', blank.start),
    penClosesMin: text('penClosesMin', blank.penClosesMin),
    travelMin: text('travelMin', blank.travelMin),
    runDays: runDays.length > 0 ? [...new Set(runDays)].sort() : blank.runDays,
    longRunDay: isWeekday(found['longRunDay']) ? found['longRunDay'] : blank.longRunDay,
    fuelHow: how ?? blank.fuelHow,
    gPerHour: text('gPerHour', blank.gPerHour),
    item: ITEMS.find((i) => i === found['item']) ?? blank.item,
    itemG: text('itemG', blank.itemG),
    lineAfterGunS: text('lineAfterGunS', blank.lineAfterGunS),
    aloud: found['aloud'] === true,
    calendarId: text('calendarId', blank.calendarId),
  };
};
