import { gpx as toGeoJson } from '@tmcw/togeojson';
import { DOMParser } from '@xmldom/xmldom';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseGpx } from '../../src/core/course/gpx.ts';

// GPX 1.1 (topografix.com/GPX/1/1) as an independent reader understands it: @tmcw/togeojson over @xmldom/xmldom.

interface Read {
  readonly lines: number[][][];
  readonly points: number[][];
}

type Geometry =
  | { readonly type: 'Point'; readonly coordinates: number[] }
  | { readonly type: 'LineString'; readonly coordinates: number[][] }
  | { readonly type: 'MultiLineString'; readonly coordinates: number[][][] };

/** Positions [lon, lat, ele?] of every stretch of two points and more, and of every waypoint. */
const theirs = (text: string): Read => {
  const document = new DOMParser().parseFromString(text, 'text/xml');
  const collection = toGeoJson(document as unknown as Document);
  const features = collection.features as readonly { readonly geometry: Geometry }[];
  const lines = features.flatMap(({ geometry: g }) => {
    if (g?.type === 'LineString') return [g.coordinates];
    return g?.type === 'MultiLineString' ? g.coordinates : [];
  });
  return {
    lines,
    points: features.flatMap(({ geometry: g }) => (g?.type === 'Point' ? [g.coordinates] : [])),
  };
};

const ours = (text: string): Read => {
  const got = parseGpx(text);
  if (!got.ok) throw new Error(got.error.found);
  const position = (p: { longitudeDeg: number; latitudeDeg: number; elevationM: number | null }): number[] =>
    p.elevationM === null ? [p.longitudeDeg, p.latitudeDeg] : [p.longitudeDeg, p.latitudeDeg, p.elevationM];
  const paths = [...got.value.tracks, ...got.value.routes].flatMap((p) => p.segments);
  return {
    lines: paths.filter((s) => s.length > 1).map((s) => s.map(position)),
    points: got.value.waypoints.map(position),
  };
};

const degrees = (max: number): fc.Arbitrary<number> =>
  fc.integer({ min: -max * 1e7, max: max * 1e7 }).map((n) => n / 1e7);
const point = fc.record({
  lat: degrees(90),
  lon: degrees(180),
  ele: fc.option(fc.integer({ min: -4000, max: 80_000 }).map((n) => n / 10)),
});
type Point = { lat: number; lon: number; ele: number | null };

const tag = (name: string, { lat, lon, ele }: Point): string =>
  `<${name} lat="${lat}" lon="${lon}">${ele === null ? '' : `<ele>${ele}</ele>`}<name>a &amp; b</name><time>2027-05-09T08:30:00Z</time></${name}>`;
const files = fc
  .record({
    waypoints: fc.array(point, { minLength: 1, maxLength: 3 }),
    route: fc.array(point, { minLength: 2, maxLength: 6 }),
    tracks: fc.array(
      fc.array(fc.array(point, { minLength: 2, maxLength: 8 }), { minLength: 1, maxLength: 3 }),
      {
        maxLength: 3,
      },
    ),
  })
  .map(
    ({ waypoints, route, tracks }) =>
      `<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1" xmlns:e="urn:e">` +
      `${waypoints.map((p) => tag('wpt', p)).join('\n')}<rte>${route.map((p) => tag('rtept', p)).join('')}</rte>` +
      `${tracks
        .map(
          (segments) =>
            `<trk><name>t</name>${segments
              .map((s) => `<trkseg>${s.map((p) => tag('trkpt', p)).join('')}</trkseg>`)
              .join('')}<extensions><e:ele>3</e:ele></extensions></trk>`,
        )
        .join('')}</gpx>`,
  );

describe('GPX 1.1', () => {
  it('is read as an independent reader reads it', () => {
    fc.assert(
      fc.property(files, (text) => {
        const [a, b] = [ours(text), theirs(text)];
        expect(a.points).toEqual(b.points);
        // Theirs lists routes and tracks in another order.
        const inOrder = (lines: number[][][]): string[] => lines.map((l) => JSON.stringify(l)).sort();
        expect(inOrder(a.lines)).toEqual(inOrder(b.lines));
      }),
      { numRuns: 40 },
    );
  });
});
