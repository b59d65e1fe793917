import type { CourseLine } from '../../core/course/line.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { scheduleOf } from '../../core/plan/schedule.ts';
import { calendarFile } from '../../core/prepare/day/calendar.ts';
import { type CivilDate, dayNumber, isCivilDate, weekdayOf } from '../../core/prepare/day/civil.ts';
import { raceDayEvents, taperEvents } from '../../core/prepare/day/events.ts';
import { planRaceDay, type RaceDayItem } from '../../core/prepare/day/raceDay.ts';
import { parseRaceDayWish } from '../../core/prepare/day/raceDayWish.ts';
import { planTaper, type Taper } from '../../core/prepare/day/taper.ts';
import { expectedOf } from '../../languages/refusal.ts';
import { t } from '../../languages/text.ts';
import { numberOf } from '../plan/planTexts.ts';
import type { PrepareDraft } from './prepareDraft.ts';
import { massOf } from './prepareFuel.ts';
import { temperatureOf, weeklyKmOf } from './prepareGoal.ts';

export interface DaySheet {
  /** Null where the date is not given. */
  readonly date: CivilDate | null;
  /** Days from today; negative when it is over. */
  readonly daysAway: number | null;
  readonly items: readonly RaceDayItem[];
  /** A sentence by field; only what stands in the way. */
  readonly errors: Readonly<Partial<Record<'start' | 'penClosesMin' | 'travelMin', string>>>;
  /** Null without a date or a weekly distance. */
  readonly taper: Taper | null;
}

/** `2027-05-09`; null where it is no date. */
const dateOf = (text: string): CivilDate | null => {
  const m = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text.trim());
  if (m === null) return null;
  const date = { year: Number(m[1]), month: Number(m[2]), day: Number(m[3]) };
  return isCivilDate(date) ? date : null;
};

const minuteOf = (text: string): number | null => {
  const m = /^(\d{1,2}):(\d\d)/.exec(text.trim());
  const minute = m === null ? Number.NaN : Number(m[1]) * 60 + Number(m[2]);
  return minute >= 0 && minute < 1440 ? minute : null;
};

const FIELDS = { startMinute: 'start', penClosesMin: 'penClosesMin', travelMin: 'travelMin' } as const;

const itemsOf = (draft: PrepareDraft, durationS: number): Pick<DaySheet, 'items' | 'errors'> => {
  const got = parseRaceDayWish({
    startMinute: minuteOf(draft.start) ?? Number.NaN,
    penClosesMin: numberOf(draft.penClosesMin) ?? Number.NaN,
    travelMin: numberOf(draft.travelMin) ?? Number.NaN,
    temperatureC: temperatureOf(draft),
    durationS,
    massKg: massOf(draft),
  });
  if (got.ok) return { items: planRaceDay(got.value), errors: {} };
  const field = Object.entries(FIELDS).find(([place]) => place === got.error.place)?.[1] ?? 'start';
  return { items: [], errors: { [field]: t('This needs {expected}.', { expected: expectedOf(got.error) }) } };
};

export const daySheetOf = (
  draft: PrepareDraft,
  plan: RacePlan,
  course: CourseLine | null,
  today: CivilDate,
): DaySheet => {
  const date = dateOf(draft.date);
  const weeklyKm = weeklyKmOf(draft, plan.unit);
  const { runDays, longRunDay } = draft;
  return {
    date,
    daysAway: date === null ? null : dayNumber(date) - dayNumber(today),
    ...itemsOf(draft, scheduleOf(plan, course).timeAtS(plan.distanceM)),
    taper:
      date === null || weeklyKm === null
        ? null
        : planTaper({
            raceWeekday: weekdayOf(date),
            weeklyKm,
            runDays: runDays.includes(longRunDay) ? runDays : [...runDays, longRunDay],
            longRunDay,
            goalPaceSPerKm: (1000 * plan.goalS) / plan.distanceM,
            raceDistanceM: plan.distanceM,
            unit: plan.unit,
          }),
  };
};

/** The calendar file of the day and, where there is one, of the taper, in the language of the screens; null without a date. */
export const dayCalendar = (sheet: DaySheet, calendarId: string, nowMs: number): string | null => {
  if (sheet.date === null || sheet.items.length === 0) return null;
  const events = [
    ...raceDayEvents(sheet.items, sheet.date, calendarId, t),
    ...(sheet.taper === null ? [] : taperEvents(sheet.taper, sheet.date, calendarId, t)),
  ];
  return calendarFile(events, nowMs);
};
