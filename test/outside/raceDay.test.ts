import { describe, expect, test } from 'vitest';
import { planRaceDay as planRaceDayMessage } from '../../src/core/prepare/day/raceDay.ts';
import { planTaper, VOLUME_KEPT } from '../../src/core/prepare/day/taper.ts';
import { inEnglish } from '../support/english.ts';

const planRaceDay = inEnglish(planRaceDayMessage);

const day = planRaceDay({
  startMinute: 600,
  penClosesMin: 15,
  travelMin: 30,
  temperatureC: 12,
  durationS: 6600,
  massKg: null,
});
const at = (kind: string) => day.find((item) => item.kind === kind);

describe('Bosquet et al. 2007, 27 studies (abstract read): the taper', () => {
  const taper = planTaper({
    raceWeekday: 5,
    weeklyKm: 40,
    runDays: [0, 2, 4, 6],
    longRunDay: 6,
    goalPaceSPerKm: 300,
    raceDistanceM: 10_000,
    unit: 'mile',
  });

  test('two weeks, volume down 41-60 % (effect 0.72 ± 0.36)', () => {
    expect(taper.days.filter((d) => d.kind !== 'race')).toHaveLength(14);
    for (const kept of VOLUME_KEPT) {
      expect(1 - kept).toBeGreaterThanOrEqual(0.41);
      expect(1 - kept).toBeLessThanOrEqual(0.6);
    }
    expect(taper.cutPercent.every((cut) => cut >= 41 && cut <= 60)).toBe(true);
  });

  test('intensity kept (0.33 ± 0.14): a session with goal pace in each week', () => {
    expect(taper.days.filter((d) => d.kind === 'sharp').map((d) => d.dayOffset)).toHaveLength(2);
  });

  test('frequency kept (0.35 ± 0.17): four runs a week, as usual', () => {
    expect(taper.days.filter((d) => d.kind !== 'race' && d.distanceM > 0)).toHaveLength(8);
  });
});

describe('Wallis and Podlogar 2022 (read): the meal 1 to 4 hours before', () => {
  test('breakfast', () => {
    expect(at('breakfast')?.fromMin).toBeLessThanOrEqual(-60);
    expect(at('breakfast')?.fromMin).toBeGreaterThanOrEqual(-240);
  });
});

describe('common practice, no source', () => {
  test('10 to 20 min easy, then 4 to 6 strides, ending just before the pen closes', () => {
    const warmUp = at('warmUp');
    const easyMin = (warmUp?.untilMin ?? 0) - (warmUp?.fromMin ?? 0);
    expect(easyMin).toBe(15);
    expect(at('strides')?.title).toBe('5 strides');
    // The pen closes at -15: strides end 8 min before, the kit is off 5 min before.
    expect(at('strides')?.untilMin).toBe(-23);
  });
});
