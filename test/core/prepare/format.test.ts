import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CAUTIONS, cautionTexts as cautionTextsMessage } from '../../../src/core/prepare/cautions.ts';
import {
  distanceText as distanceTextMessage,
  durationText,
  paceText as paceTextMessage,
  raceText as raceTextMessage,
  roughDurationText,
  timeOfDayText,
} from '../../../src/core/prepare/format.ts';
import { chanceText as chanceTextMessage, Z_FOUR_FIFTHS, Z_HALF } from '../../../src/core/prepare/normal.ts';
import { normalBelow } from '../../../src/core/units/normal.ts';
import { inEnglish } from '../../support/english.ts';

const distanceText = inEnglish(distanceTextMessage);
const paceText = inEnglish(paceTextMessage);
const raceText = inEnglish(raceTextMessage);
const chanceText = inEnglish(chanceTextMessage);
const cautionTexts = inEnglish(cautionTextsMessage);

describe('figures in sentences', () => {
  test.each([
    [0, '0:00'],
    [59.6, '1:00'],
    [2501.9, '41:42'],
    [3599.6, '1:00:00'],
    [36_000, '10:00:00'],
    [-65, '-1:05'],
    [-0.2, '0:00'],
  ])('%d s is %s', (s, text) => {
    expect(durationText(s)).toBe(text);
  });

  test.each([
    [5964, '1:39:00'],
    [5972, '1:40:00'],
    [1276, '21:20'],
    [2399, '40:00'],
  ])('an estimate of %d s is %s', (s, text) => {
    expect(roughDurationText(s)).toBe(text);
  });

  // Common practice, no source: 90 min for a half is 4:16 per km and 6:52 per mile.
  test('paces and places', () => {
    expect(paceText(5400 / 21.0975, 'km')).toBe('4:16 per km');
    expect(paceText(5400 / 21.0975, 'mile')).toBe('6:52 per mile');
    expect(distanceText(1500, 'km')).toBe('1.5 km');
    expect(distanceText(10_000, 'km')).toBe('10 km');
    expect(distanceText(1609.344, 'mile')).toBe('1 mile');
    expect(distanceText(10_548.75, 'mile')).toBe('6.55 miles');
    expect([21_097.5, 21_097.494, 42_195, 12_000].map(raceText)).toEqual([
      'half marathon',
      'half marathon',
      'marathon',
      '12 km',
    ]);
  });

  test('times of day fold into the day', () => {
    expect([425, 1439, 1440, -150].map(timeOfDayText)).toEqual(['07:05', '23:59', '00:00', '21:30']);
    void fc.assert(
      fc.property(fc.integer({ min: -5000, max: 5000 }), (m) => {
        expect(timeOfDayText(m)).toBe(timeOfDayText(m + 1440));
        expect(timeOfDayText(m)).toMatch(/^([01]\d|2[0-3]):[0-5]\d$/);
      }),
    );
  });
});

describe('chance', () => {
  test('the normal distribution at its usual places', () => {
    // Tables of the normal distribution: 1.96 leaves 2.5 % above.
    expect(normalBelow(0)).toBeCloseTo(0.5, 6);
    expect(normalBelow(1.959964)).toBeCloseTo(0.975, 6);
    expect(normalBelow(-1.959964)).toBeCloseTo(0.025, 6);
    expect(normalBelow(Z_HALF)).toBeCloseTo(0.75, 6);
    expect(normalBelow(Z_FOUR_FIFTHS)).toBeCloseTo(0.9, 6);
  });

  test.each([
    [0.01, 'less than 1 in 20'],
    [0.07, 'about 1 in 10'],
    [0.5, 'about even'],
    [0.72, 'about 7 in 10'],
    [0.94, 'about 9 in 10'],
    [0.99, 'more than 19 in 20'],
  ])('%d is %s', (chance, text) => {
    expect(chanceText(chance)).toBe(text);
  });
});

describe('cautions', () => {
  test('each is said once, in the order asked for', () => {
    expect(cautionTexts(['heat', 'thirst', 'heat'])).toEqual([CAUTIONS.heat.text, CAUTIONS.thirst.text]);
  });

  test('the ones that matter most say what to do', () => {
    expect(CAUTIONS.general.text).toMatch(/not medical advice.*doctor/);
    expect(CAUTIONS.chest.text).toMatch(/stop, get help/);
    expect(CAUTIONS.thirst.text).toMatch(/Drink to thirst/);
    expect(CAUTIONS.rules.text).toMatch(/race's rules.*local law/);
    for (const { text } of Object.values(CAUTIONS)) expect(text).toMatch(/[.!]$/);
  });
});
