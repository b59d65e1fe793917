import { type Message, written } from '../../units/message.ts';
import { cautionTexts } from '../cautions.ts';
import type { CalendarEvent } from './calendar.ts';
import { addDays, type CivilDate, civilTime } from './civil.ts';
import type { RaceDayItem } from './raceDay.ts';
import type { Taper } from './taper.ts';

/** What rings: the moments that a runner must not miss. */
const RINGING: readonly RaceDayItem['kind'][] = ['wake', 'leave', 'warmUp', 'pen'];

const paragraphs = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n');

/** How a calendar's texts are written; English where nothing else is asked for. */
type Write = (text: Message) => string;
const inEnglish: Write = (text) => written(text);

/**
 * Race day as events. `uidBase` must be the runner's own and lasting, such as a UUID kept with the plan: each event's
 * UID is made of it and of what the event is.
 */
export const raceDayEvents = (
  items: readonly RaceDayItem[],
  date: CivilDate,
  uidBase: string,
  write: Write = inEnglish,
): readonly CalendarEvent[] =>
  items.map((item) => ({
    uid: `${item.kind}-${uidBase}`,
    time: {
      kind: 'clock',
      from: civilTime(date, item.clockMin),
      until: civilTime(date, item.clockMin + item.untilMin - item.fromMin),
    },
    title: write(item.title),
    detail: paragraphs(write(item.reason), ...cautionTexts(item.cautions).map(write)),
    rings: RINGING.includes(item.kind),
  }));

/** The taper as whole-day events, rest days and race day left out. */
export const taperEvents = (
  taper: Taper,
  raceDate: CivilDate,
  uidBase: string,
  write: Write = inEnglish,
): readonly CalendarEvent[] =>
  taper.days
    .filter((day) => day.kind !== 'rest' && day.kind !== 'race')
    .map((day) => ({
      uid: `taper${-day.dayOffset}-${uidBase}`,
      time: { kind: 'day', date: addDays(raceDate, day.dayOffset) },
      title: write(day.title),
      detail: write(day.detail),
      rings: false,
    }));
