import type { SaidCall } from '../core/review/digest.ts';
import type { RunInput } from '../core/run/settings.ts';
import { written } from '../core/units/message.ts';

/**
 * A run as GeoJSON (RFC 7946): the way as a line, every call as a point where it sounded. Positions are longitude,
 * latitude and, where known, height above the WGS 84 ellipsoid in metres.
 */

type Position = readonly [number, number] | readonly [number, number, number];

interface Feature {
  readonly type: 'Feature';
  readonly geometry:
    | { readonly type: 'LineString'; readonly coordinates: readonly Position[] }
    | { readonly type: 'Point'; readonly coordinates: Position }
    | null;
  readonly properties: Readonly<Record<string, unknown>>;
}

const positionOf = (longitude: number, latitude: number, height: number | null): Position =>
  height === null ? [longitude, latitude] : [longitude, latitude, height];

/** @param startMs  engine ms of own clock 0 */
export const runGeoJson = (
  name: string,
  inputs: readonly RunInput[],
  calls: readonly SaidCall[],
  startMs: number,
): string => {
  const fixes = inputs.flatMap((i) => (i.type === 'fix' ? [{ atMs: i.atMs, fix: i.fix }] : []));
  const positions = fixes.map(({ fix }) => positionOf(fix.longitudeDeg, fix.latitudeDeg, fix.altitudeM));
  // A line has two points or more; less is no line.
  const geometry = positions.length < 2 ? null : ({ type: 'LineString', coordinates: positions } as const);
  const times = fixes.map(({ fix }) => fix.timestampMs);
  const way: Feature = { type: 'Feature', geometry, properties: { name, timestampsMs: times } };
  let i = 0;
  const said = calls.flatMap((call): Feature[] => {
    const atMs = startMs + 1000 * call.startS;
    while (i < fixes.length - 1 && (fixes[i + 1]?.atMs ?? 0) <= atMs) i++;
    const at = fixes[i]?.fix;
    if (at === undefined) return [];
    const { kind, text, startS, why } = call;
    return [
      {
        type: 'Feature',
        geometry: { type: 'Point', coordinates: positionOf(at.longitudeDeg, at.latitudeDeg, at.altitudeM) },
        properties: { kind, text, startS, why: written(why) },
      },
    ];
  });
  return `${JSON.stringify({ type: 'FeatureCollection', features: [way, ...said] })}\n`;
};
