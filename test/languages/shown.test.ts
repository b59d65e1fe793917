import { afterEach, describe, expect, test } from 'vitest';
import { readRacePlan } from '../../src/core/plan/parseRacePlan.ts';
import { SUPPLY_NAMES } from '../../src/core/plan/supplies.ts';
import { distanceText } from '../../src/core/prepare/format.ts';
import { decimalUpTo, listed, written } from '../../src/core/units/message.ts';
import { doorError } from '../../src/core/units/result.ts';
import { demoPlan } from '../../src/demo/race.ts';
import { refusal } from '../../src/languages/refusal.ts';
import { readIn, t } from '../../src/languages/text.ts';
import { distance, shortDistance, weekdayName } from '../../src/screens/format.ts';
import { draftOf, readDraft } from '../../src/session/plan/planDraft.ts';
import { dayCalendar, daySheetOf } from '../../src/session/prepare/prepareDay.ts';
import { blankPrepare } from '../../src/session/prepare/prepareDraft.ts';

/** A few invented texts: enough to see that the language is followed. */
const GERMAN = {
  'Get up': 'Aufstehen',
  'The race ends at {distance} {unit}: this lies beyond it.':
    'Das Rennen endet bei {distance} {unit}: Das liegt dahinter.',
  '{place}: expected {expected}, found {found}': '{place}: statt {expected} steht da {found}',
  'the file': 'die Datei',
  'nothing||found in a file': 'nichts',
  '{n} characters': '{n} Zeichen',
  '{n} mile': { one: '{n} Meile', other: '{n} Meilen' },
  '{n} miles': { one: '{n} Meile', other: '{n} Meilen' },
  water: 'Wasser',
};

afterEach(() => readIn('en', {}));

describe('figures', () => {
  test('are written as the language writes them', () => {
    expect([distance(5000, 'km'), shortDistance(5000, 'km'), shortDistance(21_097.5, 'km', 1)]).toEqual([
      '5.00',
      '5',
      '21.1',
    ]);
    readIn('de', GERMAN);
    expect([distance(5000, 'km'), shortDistance(5000, 'km'), shortDistance(21_097.5, 'km', 1)]).toEqual([
      '5,00',
      '5',
      '21,1',
    ]);
    expect([t(distanceText(1609.344, 'mile')), t(distanceText(2414.016, 'mile'))]).toEqual([
      '1 Meile',
      '1,5 Meilen',
    ]);
  });

  test('lose idle zeros and no more', () => {
    expect(
      [10, 10.5, 10.04, 0.999].map((n) => written({ text: '{n}', values: { n: decimalUpTo(n, 1) } })),
    ).toEqual(['10', '10.5', '10', '1']);
  });

  test('days of the week have the names of the language', () => {
    expect([weekdayName(0, 'long'), weekdayName(6, 'short')]).toEqual(['Monday', 'Sun']);
    readIn('de', GERMAN);
    expect([weekdayName(0, 'long'), weekdayName(6, 'short')]).toEqual(['Montag', 'So']);
  });
});

test('a list is each of its words in the language', () => {
  readIn('de', GERMAN);
  expect(t(listed([SUPPLY_NAMES.water, SUPPLY_NAMES.gel]))).toBe('Wasser, gel');
});

describe('refused input', () => {
  test('is said in the language, its figures in their places', () => {
    const far = { ...draftOf(demoPlan), stations: [{ at: '99', offers: ['water' as const] }] };
    const said = (): unknown => {
      const got = readDraft(far);
      return got.ok ? null : got.errors.map((e) => e.text);
    };
    expect(said()).toEqual(['The race ends at 21.1 km: this lies beyond it.']);
    readIn('de', GERMAN);
    expect(said()).toEqual(['Das Rennen endet bei 21,1 km: Das liegt dahinter.']);
  });

  test.each([
    ['nothing', 'die Datei: statt JSON steht da nichts'],
    ['12 characters', 'die Datei: statt JSON steht da 12 Zeichen'],
    ['"a piece of it"', 'die Datei: statt JSON steht da "a piece of it"'],
  ])('says what was found: %s', (found, said) => {
    readIn('de', GERMAN);
    expect(t(refusal(doorError('the file', 'JSON', found)))).toBe(said);
  });

  test('stays English for the terminal', () => {
    readIn('de', GERMAN);
    const got = readRacePlan({ distanceM: 5000, goalS: 1500, stations: [{ atM: 6000 }] });
    expect(got.ok ? null : got.error.expected).toBe('a place on the course of 5000 m');
  });
});

test('the calendar is in the language of the page', () => {
  const draft = { ...blankPrepare('id-1'), date: '2027-05-09' };
  const sheet = daySheetOf(draft, demoPlan, null, { year: 2027, month: 5, day: 1 });
  expect(dayCalendar(sheet, 'id-1', 0)).toContain('SUMMARY:Get up');
  readIn('de', GERMAN);
  expect(dayCalendar(sheet, 'id-1', 0)).toContain('SUMMARY:Aufstehen');
});
