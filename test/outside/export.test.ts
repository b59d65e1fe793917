import { gpx as togeojson } from '@tmcw/togeojson';
import { DOMParser } from '@xmldom/xmldom';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RunInput } from '../../src/core/run/settings.ts';
import { runGeoJson } from '../../src/log/exportGeoJson.ts';
import { runGpx } from '../../src/log/exportGpx.ts';
import { csvOf } from '../../src/log/exportTable.ts';

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

/**
 * GPX 1.1 schema, topografix.com/GPX/1/1/gpx.xsd: the order of elements in each sequence (memory; wptType, trkType,
 * trksegType, metadataType, gpxType), of those that are written here.
 */
const ORDER: Readonly<Record<string, readonly string[]>> = {
  gpx: ['metadata', 'wpt', 'rte', 'trk', 'extensions'],
  metadata: ['name', 'desc', 'author', 'copyright', 'link', 'time', 'keywords', 'bounds', 'extensions'],
  trk: ['name', 'cmt', 'desc', 'src', 'link', 'number', 'type', 'extensions', 'trkseg'],
  trkseg: ['trkpt', 'extensions'],
  trkpt: ['ele', 'time', 'magvar', 'geoidheight', 'name', 'cmt', 'desc', 'src', 'link', 'sym', 'type', 'fix'],
};

interface Node {
  readonly nodeName: string;
  readonly childNodes: ArrayLike<Node>;
}

const disorder = (node: Node): string[] => {
  const children = Array.from(node.childNodes).filter((n) => !n.nodeName.startsWith('#'));
  const order = ORDER[node.nodeName];
  const places = order ? children.map((c) => order.indexOf(c.nodeName)) : [];
  const own = places.some((p, i) => p < 0 || p < (places[i - 1] ?? 0)) ? [node.nodeName] : [];
  return [...own, ...children.flatMap(disorder)];
};

describe('GPX 1.1', () => {
  const text = runGpx('Quay & <Harbour> "10 km"', run);
  const dom = new DOMParser().parseFromString(text, 'text/xml');

  test('its elements stand in the order of the schema', () => {
    expect(dom.documentElement && disorder(dom.documentElement as unknown as Node)).toEqual([]);
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

/** RFC 4180 section 2, as a reader of its grammar: records by CRLF, fields by comma, quotes doubled inside quotes. */
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

describe('GeoJSON, RFC 7946', () => {
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
