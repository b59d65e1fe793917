import { gpx as togeojson } from '@tmcw/togeojson';
import { DOMParser } from '@xmldom/xmldom';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PracticeDigest } from '../../src/core/review/practiceDigest.ts';
import type { RunInput } from '../../src/core/run/settings.ts';
import { practiceCsv } from '../../src/log/exportCsv.ts';
import { runGeoJson } from '../../src/log/exportGeoJson.ts';
import { runGpx } from '../../src/log/exportGpx.ts';
import { csvOf } from '../../src/log/exportTable.ts';
import { gpxFaults } from './gpxSchema.ts';

const at = (s: number, altitudeM: number | null = null): RunInput => ({
  type: 'fix',
  atMs: 1_800_000_000_000 + 1000 * s,
  fix: {
    timestampMs: 1_800_000_000_000 + 1000 * s,
    latitudeDeg: 53.5 + s * 1e-5,
    longitudeDeg: 7.25,
    accuracyM: 4,
    speedMps: 3.5,
    altitudeM,
  },
});
const run = [...Array.from({ length: 30 }, (_, s) => at(s, 2.5)), at(300), at(301)];

describe('GPX 1.1', () => {
  const text = runGpx('Quay & <Harbour> "10 km"', run);
  const dom = new DOMParser().parseFromString(text, 'text/xml');

  test('a run is valid against the schema', () => {
    expect(gpxFaults(text)).toEqual([]);
    expect(gpxFaults(runGpx('empty', []))).toEqual([]);
  });

  test('any run is, whatever its name, places and times', () => {
    const fix = fc.record({
      timestampMs: fc.integer({ min: 0, max: 4_000_000_000_000 }),
      latitudeDeg: fc.double({ min: -90, max: 90, noNaN: true }),
      longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
      accuracyM: fc.constant(4),
      speedMps: fc.constant(null),
      altitudeM: fc.option(fc.double({ min: -500, max: 9000, noNaN: true })),
    });
    void fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.array(fix, { maxLength: 20 }), (name, fixes) => {
        const inputs = fixes.map((f): RunInput => ({ type: 'fix', atMs: f.timestampMs, fix: f }));
        expect(gpxFaults(runGpx(name, inputs))).toEqual([]);
      }),
    );
  });

  test.each([
    ['ele after time', (t: string) => t.replace(/(<ele>[^<]*<\/ele>)(<time>[^<]*<\/time>)/, '$2$1')],
    ['two times', (t: string) => t.replace(/(<time>[^<]*<\/time>)(<\/trkpt>)/, '$1$1$2')],
    [
      'a speed, which the schema does not know',
      (t: string) => t.replace('</trkpt>', '<speed>3</speed></trkpt>'),
    ],
    ['a longitude of 180', (t: string) => t.replace('lon="7.25"', 'lon="180"')],
    ['a latitude with an exponent', (t: string) => t.replace(/lat="[^"]*"/, 'lat="5e1"')],
    ['a time of day', (t: string) => t.replace(/<time>[^<]*</, '<time>12:30</')],
    ['no creator', (t: string) => t.replace(/ creator="[^"]*"/, '')],
    ['version 1.0', (t: string) => t.replace('version="1.1"', 'version="1.0"')],
    ['another namespace', (t: string) => t.replace('xmlns="http://www.topografix.com/GPX/1/1"', 'xmlns="x"')],
  ])('(the check finds %s)', (_, spoil) => {
    const spoilt = spoil(text);
    expect(spoilt).not.toBe(text);
    let faults = 0;
    try {
      faults = gpxFaults(spoilt).length;
    } catch {
      faults = 1;
    }
    expect(faults).toBeGreaterThan(0);
  });

  test('gpx has the version, creator and namespace that the schema requires', () => {
    expect(dom.documentElement?.getAttribute('version')).toBe('1.1');
    expect(dom.documentElement?.getAttribute('creator')).not.toBe('');
    expect(dom.documentElement?.namespaceURI).toBe('http://www.topografix.com/GPX/1/1');
  });

  test('latitudes and longitudes are plain decimals in [-90, 90] and [-180, 180)', () => {
    void fc.assert(
      fc.property(fc.double({ min: -180, max: 180, noNaN: true }), (longitudeDeg) => {
        const [first] = run;
        if (first?.type !== 'fix') return;
        const written = runGpx('r', [{ ...first, fix: { ...first.fix, longitudeDeg } }]);
        const lon = /lon="([^"]*)"/.exec(written)?.[1] ?? '';
        expect(lon).toMatch(/^-?\d+(\.\d+)?$/);
        expect(Number(lon)).toBeGreaterThanOrEqual(-180);
        expect(Number(lon)).toBeLessThan(180);
      }),
    );
  });

  test('an independent reader (@tmcw/togeojson) finds the same points and the gap', () => {
    const read = togeojson(dom as unknown as Document);
    const geometry = read.features[0]?.geometry;
    expect(geometry?.type).toBe('MultiLineString');
    const lines = geometry?.type === 'MultiLineString' ? geometry.coordinates : [];
    expect(lines.map((l: readonly unknown[]) => l.length)).toEqual([30, 2]);
    expect(lines[0]?.[0]).toEqual([7.25, 53.5, 2.5]);
    expect(read.features[0]?.properties?.['name']).toBe('Quay & <Harbour> "10 km"');
  });
});

/**
 * RFC 4180 section 2, as a reader of its grammar [seen: two copies of it]: records by CRLF, fields by comma, quotes
 * doubled inside quotes.
 */
const readCsv = (text: string): string[][] => {
  const records: string[][] = [];
  let record: string[] = [];
  let i = 0;
  while (i < text.length) {
    let value = '';
    if (text[i] === '"') {
      for (i++; text[i] !== '"' || text[i + 1] === '"'; i++) {
        if (text[i] === '"') i++;
        value += text[i];
      }
      i++;
    } else while (i < text.length && text[i] !== ',' && text[i] !== '\r') value += text[i++];
    record.push(value);
    if (text[i] === ',') {
      i++;
      if (text[i] === '\r') record.push('');
    }
    if (text[i] === '\r') {
      expect(text[i + 1]).toBe('\n');
      i += 2;
      records.push(record);
      record = [];
    }
  }
  return records;
};

describe('CSV, RFC 4180', () => {
  test('whatever stands in a field comes back', () => {
    const rows = fc.array(
      fc.tuple(fc.string(), fc.string(), fc.string({ unit: fc.constantFrom('"', ',', '\r', '\n', 'a') })),
      { minLength: 1 },
    );
    void fc.assert(
      fc.property(rows, (table) => {
        expect(readCsv(csvOf(['a', 'b', 'c'], table))).toEqual([['a', 'b', 'c'], ...table]);
      }),
    );
  });
});

describe('the table of a session', () => {
  const digest: PracticeDigest = {
    version: 1,
    kind: 'practice',
    startMs: 0,
    endS: 20,
    legs: [
      {
        kind: 'warm-up',
        rep: null,
        target: { by: 'free' },
        timeS: 10,
        distanceM: 30,
        distanceSdM: 1,
        aheadS: null,
        heartBpm: null,
      },
      {
        kind: 'work',
        rep: null,
        target: { by: 'pace', paceSPerKm: 280 },
        timeS: 10,
        distanceM: 35,
        distanceSdM: 1,
        aheadS: 0,
        heartBpm: 150,
      },
    ],
    calls: [],
    samples: [
      { atS: 5, paceSPerKm: 330.04, askedSPerKm: null, heartBpm: null },
      { atS: 15, paceSPerKm: 281.26, askedSPerKm: 280, heartBpm: 150.4 },
    ],
    podFactor: null,
    alarms: 0,
  };

  test('names the leg of each row', () => {
    expect(readCsv(practiceCsv(digest))).toEqual([
      ['atS', 'leg', 'kind', 'paceSPerKm', 'askedSPerKm', 'heartBpm', 'call', 'why'],
      ['5', '1', 'warm-up', '330', '', '', '', ''],
      ['15', '2', 'work', '281.3', '280', '150', '', ''],
    ]);
  });
});

describe('GeoJSON, RFC 7946 [3.1.1 seen: quoted; the other sections from memory]', () => {
  const map = JSON.parse(runGeoJson('r', run, [], 0)) as {
    type: string;
    features: {
      type: string;
      geometry: { type: string; coordinates: number[][] } | null;
      properties: unknown;
    }[];
  };

  test('3.1.1: longitude first, then latitude, then height; 3.1.4: a line has two positions or more', () => {
    expect(map.features[0]?.geometry?.coordinates[0]).toEqual([7.25, 53.5, 2.5]);
    expect(map.features[0]?.geometry?.coordinates.length).toBeGreaterThanOrEqual(2);
  });

  test('3.2, 3.3: features have geometry and properties; 4: no member crs', () => {
    expect(map.type).toBe('FeatureCollection');
    for (const feature of map.features) {
      expect(feature.type).toBe('Feature');
      expect(feature).toHaveProperty('geometry');
      expect(feature).toHaveProperty('properties');
    }
    expect(map).not.toHaveProperty('crs');
  });

  test('3.2: a run without a way has a geometry of null', () => {
    const none = JSON.parse(runGeoJson('r', [], [], 0)) as { features: { geometry: unknown }[] };
    expect(none.features[0]?.geometry).toBeNull();
  });
});
