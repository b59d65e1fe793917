import { contentLines, escapeText } from './calendarText.ts';
import { addDays, type CivilDate, type CivilTime, dateOfDay } from './civil.ts';

/** When an event is: a span of the clock, or a whole day. */
export type EventTime =
  | { readonly kind: 'clock'; readonly from: CivilTime; readonly until: CivilTime }
  | { readonly kind: 'day'; readonly date: CivilDate };

export interface CalendarEvent {
  /** Names this event for good: the same on every export, so that a calendar replaces and does not double. */
  readonly uid: string;
  readonly time: EventTime;
  readonly title: string;
  readonly detail: string;
  /** Rings at the beginning of the event. */
  readonly rings: boolean;
}

const MS_PER_DAY = 86_400_000;
const two = (n: number): string => String(n).padStart(2, '0');

const dateText = ({ year, month, day }: CivilDate): string =>
  `${String(year).padStart(4, '0')}${two(month)}${two(day)}`;

/** A floating time (RFC 5545, 3.3.5, form 1): by the clocks of wherever the runner then is. */
const floatingText = ({ date, minuteOfDay }: CivilTime): string =>
  `${dateText(date)}T${two(Math.floor(minuteOfDay / 60))}${two(minuteOfDay % 60)}00`;

/** An instant in UTC (form 2), from milliseconds of the Unix epoch. */
const utcText = (timestampMs: number): string => {
  const day = Math.floor(timestampMs / MS_PER_DAY);
  const s = Math.floor((timestampMs - day * MS_PER_DAY) / 1000);
  return `${dateText(dateOfDay(day))}T${two(Math.floor(s / 3600))}${two(Math.floor(s / 60) % 60)}${two(s % 60)}Z`;
};

const timeLines = (time: EventTime): readonly string[] =>
  time.kind === 'clock'
    ? [`DTSTART:${floatingText(time.from)}`, `DTEND:${floatingText(time.until)}`]
    : // The end of a whole day is the next one, not included (3.6.1).
      [`DTSTART;VALUE=DATE:${dateText(time.date)}`, `DTEND;VALUE=DATE:${dateText(addDays(time.date, 1))}`];

/** An event of no length has no DTEND: it would have to lie after DTSTART (3.8.2.2). */
const isMoment = (time: EventTime): boolean =>
  time.kind === 'clock' && floatingText(time.from) === floatingText(time.until);

const eventLines = (event: CalendarEvent, stamp: string): readonly string[] => [
  'BEGIN:VEVENT',
  `UID:${escapeText(event.uid)}`,
  `DTSTAMP:${stamp}`,
  ...timeLines(event.time).slice(0, isMoment(event.time) ? 1 : 2),
  `SUMMARY:${escapeText(event.title)}`,
  ...(event.detail === '' ? [] : [`DESCRIPTION:${escapeText(event.detail)}`]),
  // A day without training, or with, does not make the runner busy.
  ...(event.time.kind === 'day' ? ['TRANSP:TRANSPARENT'] : []),
  ...(event.rings
    ? [
        'BEGIN:VALARM',
        'ACTION:DISPLAY',
        `DESCRIPTION:${escapeText(event.title)}`,
        'TRIGGER:PT0S',
        'END:VALARM',
      ]
    : []),
  'END:VEVENT',
];

/**
 * A calendar file, RFC 5545, as text to be stored in UTF-8. `stampMs` is the time of the export, milliseconds of the
 * Unix epoch (DTSTAMP). At least one event.
 */
export const calendarFile = (events: readonly CalendarEvent[], stampMs: number): string =>
  contentLines([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Soundline//Race preparation//EN',
    'CALSCALE:GREGORIAN',
    ...events.flatMap((event) => eventLines(event, utcText(stampMs))),
    'END:VCALENDAR',
  ]);
