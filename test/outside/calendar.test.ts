import * as fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { type CalendarEvent, calendarFile } from '../../src/core/prepare/day/calendar.ts';
import { contentLines, escapeText } from '../../src/core/prepare/day/calendarText.ts';
import { raceDayEvents, taperEvents } from '../../src/core/prepare/day/events.ts';
import { planRaceDay } from '../../src/core/prepare/day/raceDay.ts';
import { planTaper } from '../../src/core/prepare/day/taper.ts';
import { HALF_MORNING, HALF_TAPER } from '../core/prepare/raceDays.ts';

// The independent parser: ical.js.
const STAMP_MS = Date.UTC(2027, 2, 1, 18, 30, 5);
const DATE = { year: 2027, month: 3, day: 28 };

const eventsIn = (file: string): ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(file)).getAllSubcomponents('vevent').map((v) => new ICAL.Event(v));

const octets = (text: string): number => new TextEncoder().encode(text).length;

const dayEvents = raceDayEvents(planRaceDay(HALF_MORNING), DATE, 'a3f1@soundline');
const taper = planTaper(HALF_TAPER);
const all = [...dayEvents, ...taperEvents(taper, DATE, 'a3f1@soundline')];
const file = calendarFile(all, STAMP_MS);

describe('race day and taper through an independent parser', () => {
  const parsed = eventsIn(file);

  test('every event arrives, with its own lasting UID and the stamp of the export', () => {
    expect(parsed).toHaveLength(all.length);
    expect(new Set(parsed.map((e) => e.uid)).size).toBe(all.length);
    expect(parsed[0]?.uid).toBe('wake-a3f1@soundline');
    for (const event of parsed)
      expect(String(event.component.getFirstPropertyValue('dtstamp'))).toBe('2027-03-01T18:30:05Z');
  });

  test('times float with the place, whole days are days', () => {
    const gun = parsed.find((e) => e.summary === 'Gun');
    expect(String(gun?.startDate)).toBe('2027-03-28T09:30:00');
    expect(gun?.startDate.zone.tzid).toBe('floating');
    const warmUp = parsed.find((e) => e.summary.startsWith('Warm-up'));
    expect([String(warmUp?.startDate), String(warmUp?.endDate)]).toEqual([
      '2027-03-28T08:49:00',
      '2027-03-28T09:04:00',
    ]);
    const primer = parsed.find((e) => e.uid.startsWith('taper1-'));
    expect(primer?.startDate.isDate).toBe(true);
    expect([String(primer?.startDate), String(primer?.endDate)]).toEqual(['2027-03-27', '2027-03-28']);
  });

  test('what must not be missed rings', () => {
    const ringing = parsed.filter((e) => e.component.getFirstSubcomponent('valarm') !== null);
    expect(ringing.map((e) => e.summary)).toEqual(['Get up', 'Leave', 'Warm-up: 15 min easy', 'In the pen']);
  });

  test('texts come back as they were, with their cautions', () => {
    for (const [i, event] of parsed.entries()) {
      expect(event.summary).toBe(all[i]?.title);
      expect(event.description).toBe(all[i]?.detail);
    }
    expect(parsed.find((e) => e.summary === 'Breakfast')?.description).toContain(
      'Race day is for what you have practised',
    );
  });
});

describe('RFC 5545 [seen: its rules on lines, folding and escapes, quoted]', () => {
  const halves = fc
    .array(fc.integer({ min: 0xd7f0, max: 0xe00f }), { maxLength: 60 })
    .map((codes) => String.fromCharCode(...codes));
  const anyText = fc.oneof(
    halves,
    fc.string({ unit: 'binary', maxLength: 300 }),
    fc.string({ unit: 'grapheme', maxLength: 300 }),
  );
  const eventOf = (title: string, detail: string): CalendarEvent => ({
    uid: 'one',
    time: { kind: 'day', date: DATE },
    title,
    detail,
    rings: true,
  });

  test('3.1: CRLF ends every line, none is longer than 75 octets, and no character is split', () => {
    void fc.assert(
      fc.property(anyText, anyText, (title, detail) => {
        const text = calendarFile([eventOf(title, detail)], STAMP_MS);
        const lines = text.split('\r\n');
        expect(lines.pop()).toBe('');
        for (const line of lines) {
          expect(octets(line)).toBeLessThanOrEqual(75);
          // biome-ignore lint/suspicious/noControlCharactersInRegex: the standard forbids them
          expect(line).not.toMatch(/[\u0000-\u0008\n-\u001f\u007f]/);
        }
        // A split character would not survive the way through UTF-8.
        expect(
          new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(new TextEncoder().encode(text)),
        ).toBe(text);
      }),
    );
  });

  test('3.3.11: any text comes back through the parser, less what cannot stand in a calendar', () => {
    void fc.assert(
      fc.property(anyText, (text) => {
        const [event] = eventsIn(calendarFile([eventOf('t', `.${text}`)], STAMP_MS));
        const stripped = `.${text}`
          .replace(/\p{Surrogate}/gu, '\ufffd')
          .replace(/\r\n?/g, '\n')
          // biome-ignore lint/suspicious/noControlCharactersInRegex: the standard forbids them
          .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');
        expect(event?.description).toBe(stripped);
      }),
    );
  });

  test('3.3.11: the four escapes', () => {
    expect(escapeText('a\\b;c,d\ne')).toBe('a\\\\b\\;c\\,d\\ne');
  });

  test('3.1: a line of exactly 75 octets is left alone, one more is folded', () => {
    expect(contentLines(['x'.repeat(75)])).toBe(`${'x'.repeat(75)}\r\n`);
    expect(contentLines(['x'.repeat(76)])).toBe(`${'x'.repeat(75)}\r\n x\r\n`);
    expect(contentLines([`${'x'.repeat(74)}é`])).toBe(`${'x'.repeat(74)}\r\n é\r\n`);
  });

  test('a race in the night: the evening before lies on the day before', () => {
    const events = raceDayEvents(
      planRaceDay({
        startMinute: 15,
        penClosesMin: 0,
        travelMin: 0,
        temperatureC: null,
        durationS: 3000,
        massKg: null,
      }),
      { year: 2027, month: 1, day: 1 },
      'x',
    );
    const [wake] = eventsIn(calendarFile(events, STAMP_MS));
    expect(String(wake?.startDate)).toBe('2026-12-31T21:15:00');
  });
});
