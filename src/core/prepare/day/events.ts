import { cautionTexts } from '../cautions.ts';
import type { CalendarEvent } from './calendar.ts';
import { addDays, type CivilDate, civilTime } from './civil.ts';
import type { RaceDayItem } from './raceDay.ts';
import type { Taper } from './taper.ts';

/** What rings: the moments that a runner must not miss. */
const RINGING: readonly RaceDayItem['kind'][] = ['wake', 'leave', 'warmUp', 'pen'];

const paragraphs = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n');

/**
 * Race day as events. `uidBase` must be the runner's own and lasting, such as a UUID kept with the plan: each event's
 * UID is made of it and of what the event is.
 */
export const raceDayEvents = (
  items: readonly RaceDayItem[],
  date: CivilDate,
  uidBase: string,
): readonly CalendarEvent[] =>
  items.map((item) => ({
    uid: `${item.kind}-${uidBase}`,
    time: {
      kind: 'clock',
      from: civilTime(date, item.clockMin),
      until: civilTime(date, item.clockMin + item.untilMin - item.fromMin),
    },
    title: item.title,
    detail: paragraphs(item.reason, ...cautionTexts(item.cautions)),
    rings: RINGING.includes(item.kind),
  }));

/** The taper as whole-day events, rest days and race day left out. */
export const taperEvents = (taper: Taper, raceDate: CivilDate, uidBase: string): readonly CalendarEvent[] =>
  taper.days
    .filter((day) => day.kind !== 'rest' && day.kind !== 'race')
    .map((day) => ({
      uid: `taper${-day.dayOffset}-${uidBase}`,
      time: { kind: 'day', date: addDays(raceDate, day.dayOffset) },
      title: day.title,
      detail: day.detail,
      rings: false,
    }));
