import { describe, expect, test } from 'vitest';
import { again } from '../../../../src/core/cues/again.ts';
import { beginFuel, lookForFuel } from '../../../../src/core/cues/rules/fuel.ts';
import { beginSignal } from '../../../../src/core/cues/rules/signal.ts';
import { beginStations, lookForStation } from '../../../../src/core/cues/rules/station.ts';
import { momentAt, racePlanned } from '../moments.ts';

describe('station', () => {
  test('is announced about a minute before it comes, 200 to 300 m', () => {
    // 3.38 m/s: a minute is 203 m.
    expect(lookForStation(beginStations, momentAt({ distanceM: 4490 }))).toBeNull();
    expect(lookForStation(beginStations, momentAt({ distanceM: 4500 }))?.cue?.saying).toEqual({
      kind: 'station',
      offers: ['water'],
      inM: 200,
    });
    expect(
      lookForStation(beginStations, momentAt({ distanceM: 4410, speedMps: 6 }))?.cue?.saying,
    ).toMatchObject({ inM: 290 });
    expect(lookForStation(beginStations, momentAt({ distanceM: 4490, speedMps: 1.5 }))).toBeNull();
  });

  test('is not announced once it is in sight', () => {
    expect(lookForStation(beginStations, momentAt({ distanceM: 4650 }))).toEqual({
      watch: { next: 1 },
      cue: null,
    });
  });

  test('one that offers nothing is none', () => {
    const race = racePlanned({ stations: [{ atM: 4700, offers: [] }] });
    expect(lookForStation(beginStations, momentAt({ race, distanceM: 4500 }))).toBeNull();
  });

  test('a cue that had to wait says how far it is now, and nothing when it is there', () => {
    const cue = lookForStation(beginStations, momentAt({ distanceM: 4500 }))?.cue;
    if (!cue) throw new Error('no cue');
    expect(again(cue, momentAt({ distanceM: 4548 }), beginSignal)?.saying).toMatchObject({ inM: 152 });
    expect(again(cue, momentAt({ distanceM: 4645 }), beginSignal)).toBeNull();
  });
});

describe('fuel', () => {
  const at = (stationM: number) => {
    const race = racePlanned({ stations: [{ atM: stationM, offers: ['water'] }] });
    return lookForFuel(beginFuel, momentAt({ race, distanceM: 10_098 }))?.cue?.saying;
  };

  test('is announced a minute before, with water where a station comes close behind it', () => {
    expect(at(10_500)).toEqual({ kind: 'fuel', item: 'gel', inM: 202, withWater: true });
    expect(at(10_300)).toMatchObject({ withWater: true });
    expect(at(10_700)).toMatchObject({ withWater: false });
    expect(at(10_200)).toMatchObject({ withWater: false });
  });

  test('a plan that is not in order is put in order', () => {
    const race = racePlanned({
      fuel: [
        { item: 'chews', atM: 9000 },
        { item: 'gel', atM: 3000 },
      ],
    });
    expect(race.fuel.map((f) => f.atM)).toEqual([3000, 9000]);
  });

  test('a cue that had to wait says how far it is now', () => {
    const cue = lookForFuel(beginFuel, momentAt({ distanceM: 10_100 }))?.cue;
    if (!cue) throw new Error('no cue');
    expect(again(cue, momentAt({ distanceM: 10_150 }), beginSignal)?.saying).toMatchObject({ inM: 150 });
    expect(again(cue, momentAt({ distanceM: 10_250 }), beginSignal)).toBeNull();
  });
});
