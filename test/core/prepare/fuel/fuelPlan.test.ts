import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scheduleOf } from '../../../../src/core/plan/schedule.ts';
import type { Offer } from '../../../../src/core/plan/supplies.ts';
import {
  BEFORE_WATER_M,
  type FuelWish,
  planFuel as planFuelMessage,
} from '../../../../src/core/prepare/fuel/fuelPlan.ts';
import { drinksAt as drinksAtMessage } from '../../../../src/core/prepare/fuel/water.ts';
import { inEnglish } from '../../../support/english.ts';
import { bareHalf, fullHalf, HALF_M } from '../plans.ts';

const planFuel = inEnglish(planFuelMessage);
const drinksAt = inEnglish(drinksAtMessage);

const wish = (change: Partial<FuelWish>): FuelWish => ({
  distanceM: HALF_M,
  schedule: scheduleOf(bareHalf, null),
  stations: fullHalf.stations,
  choice: { how: 'halfway' },
  item: 'gel',
  itemG: 25,
  ...change,
});

describe('a gel by place', () => {
  test('at half-way waits for the next water, past a station with sports drink', () => {
    const { stops, carried, carriedG } = planFuel(wish({}));
    expect(stops).toMatchObject([{ wantedM: HALF_M / 2, atM: 12_300 - BEFORE_WATER_M, waterAtM: 12_300 }]);
    expect([carried, carriedG]).toEqual([1, 25]);
  });

  test('at 10 miles', () => {
    expect(planFuel(wish({ choice: { how: 'tenMiles' } })).stops[0]?.waterAtM).toBe(17_000);
  });

  test('10 miles in a 10K: none, and it says why', () => {
    const tenK = { ...bareHalf, distanceM: 10_000, goalS: 2900 };
    const plan = planFuel(
      wish({ distanceM: 10_000, schedule: scheduleOf(tenK, null), choice: { how: 'tenMiles' } }),
    );
    expect(plan.stops).toEqual([]);
    expect(plan.notes.join()).toContain('ends before 10 miles');
    expect(plan.notes.join()).toContain('Under an hour');
  });

  test('without water stays where it is, and says so', () => {
    const plan = planFuel(wish({ stations: [] }));
    expect(plan.stops[0]).toMatchObject({ atM: HALF_M / 2, waterAtM: null });
    expect(plan.notes).toEqual(['No water follows one of these: carry some, or move it by hand.']);
  });

  test('a long wait for water is told', () => {
    expect(planFuel(wish({ stations: fullHalf.stations.slice(4) })).notes.join()).toContain('waits long');
  });
});

describe('gels by rate', () => {
  test('40 g an hour on a half in 1:44: two, the rate that it comes to is said', () => {
    const plan = planFuel(wish({ choice: { how: 'rate', gPerHour: 40 } }));
    // 25 g every 37.5 min, none after 1:29.
    expect(plan.stops.map((s) => Math.round(s.wantedM))).toEqual([7607, 15_215]);
    expect(plan.stops.map((s) => s.waterAtM)).toEqual([9600, 17_000]);
    expect(plan.gPerHour).toBeCloseTo(50 / (6240 / 3600), 10);
    expect(plan.notes.join()).toContain('comes to 29 g an hour');
  });

  test('a rate outside what is usual is questioned', () => {
    expect(planFuel(wish({ choice: { how: 'rate', gPerHour: 75 } })).notes.join()).toContain(
      '30 to 60 g an hour is usual',
    );
    expect(planFuel(wish({ choice: { how: 'rate', gPerHour: 45 } })).notes.join()).not.toContain('is usual');
  });

  test('always with its cautions', () => {
    const { cautions } = planFuel(wish({}));
    for (const key of ['practised', 'stomach', 'thirst', 'diabetes']) expect(cautions).toContain(key);
    expect(planFuel(wish({ item: 'caffeine gel' })).cautions).toContain('caffeine');
  });

  const offers = fc.array(fc.constantFrom<Offer>('water', 'drink', 'sponge'), { minLength: 1, maxLength: 3 });
  const anyWish = fc
    .record({
      distanceM: fc.double({ min: 5000, max: 60_000, noNaN: true }),
      paceSPerKm: fc.double({ min: 180, max: 500, noNaN: true }),
      stations: fc.array(fc.record({ part: fc.double({ min: 0, max: 1, noNaN: true }), offers }), {
        maxLength: 15,
      }),
      choice: fc.oneof(
        fc.constant({ how: 'halfway' } as const),
        fc.constant({ how: 'tenMiles' } as const),
        fc.record({ how: fc.constant('rate' as const), gPerHour: fc.integer({ min: 0, max: 120 }) }),
      ),
      itemG: fc.integer({ min: 5, max: 60 }),
    })
    .map(({ distanceM, paceSPerKm, stations, choice, itemG }) =>
      wish({
        distanceM,
        schedule: scheduleOf({ ...bareHalf, distanceM, goalS: (distanceM / 1000) * paceSPerKm }, null),
        stations: stations.map((s) => ({ atM: s.part * distanceM, offers: s.offers })),
        choice,
        itemG,
      }),
    );

  test('laws: on the course, in order, never early, 15 min apart, and water follows wherever it is claimed', () => {
    void fc.assert(
      fc.property(anyWish, (w) => {
        const { stops, carriedG } = planFuel(w);
        expect(carriedG).toBe(stops.length * w.itemG);
        for (const [i, stop] of stops.entries()) {
          const before = stops[i - 1];
          expect(stop.atM).toBeGreaterThanOrEqual(stop.wantedM);
          expect(stop.atM).toBeLessThan(w.distanceM);
          if (before) expect(stop.timeS - before.timeS).toBeGreaterThanOrEqual(900 - 1e-6);
          if (stop.waterAtM === null) continue;
          expect(stop.waterAtM).toBeGreaterThanOrEqual(stop.atM);
          expect(stop.waterAtM - stop.atM).toBeLessThanOrEqual(BEFORE_WATER_M + 1e-9);
          expect(w.stations.some((s) => s.atM === stop.waterAtM && s.offers.includes('water'))).toBe(true);
        }
      }),
    );
  });
});

describe('water', () => {
  test('is sips, after the gel or by thirst', () => {
    const drinks = drinksAt(fullHalf.stations, planFuel(wish({})).stops);
    expect(drinks.map((d) => d.atM)).toEqual([4700, 9600, 12_300, 17_000]);
    expect(drinks[2]?.text).toBe('Two or three sips after the gel.');
    expect(drinks[0]?.text).toContain('if you are thirsty');
  });
});
