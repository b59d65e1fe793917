import { type Message, plural } from '../units/message.ts';
import { gpxTimeMs } from './gpxTime.ts';
import type { Gpx, GpxPath, GpxPoint } from './gpxTypes.ts';

/** GPX is six levels deep; what others put into extensions may be deeper, a bomb is deeper still. */
const MAX_DEPTH = 200;
/** A name goes on a screen. */
const MAX_NAME_CHARS = 200;
/** Enough of what stood there to know it again. */
const MAX_SHOWN_CHARS = 20;

const DECIMAL = /^\s*[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?\s*$/;

/** A number within bounds, else null. Not Number(): that takes an empty text for 0 and reads hexadecimal. */
const numberIn = (text: string | undefined, min: number, max: number): number | null => {
  if (text === undefined || !DECIMAL.test(text)) return null;
  const n = Number(text);
  return n >= min && n <= max ? n : null;
};

/** Dead Sea shore to above the highest pass; what is beyond is a receiver's fault, not a height. */
const MIN_ELEVATION_M = -500;
const MAX_ELEVATION_M = 9000;

interface OpenPoint {
  readonly tag: string;
  readonly depth: number;
  readonly latitudeDeg: number | null;
  readonly longitudeDeg: number | null;
  elevationM: number | null;
  timeMs: number | null;
  name: string | null;
}

interface OpenPath {
  name: string | null;
  segments: GpxPoint[][];
}

/** Where points end up: the tag of a point tells the kind of list it belongs to. */
const POINT_TAGS = new Set(['trkpt', 'rtept', 'wpt']);

export interface GpxCollector {
  readonly open: (tag: string, attributes: Readonly<Record<string, unknown>>) => void;
  readonly close: (tag: string) => void;
  readonly text: (text: string) => void;
  /** The first element's name, prefix taken off; null where there was none. */
  readonly root: () => string | null;
  /** The first attribute that was no place, as it stands in the file; null where all were, or it was not there. */
  readonly firstBad: () => string | null;
  readonly result: (moreFaults: readonly Message[]) => { readonly gpx: Gpx; readonly isGpx: boolean };
}

/** `gpx:trkpt` → `trkpt`: some writers give every element a prefix. */
const localName = (tag: string): string => tag.slice(tag.indexOf(':') + 1);

const usable = (path: OpenPath): GpxPath => ({
  name: path.name,
  segments: path.segments.filter((s) => s.length > 0),
});

/** Gathers a stream of XML events into a Gpx. Holds only what is open; knows nothing of XML itself. */
export const gpxCollector = (): GpxCollector => {
  const stack: string[] = [];
  const tracks: OpenPath[] = [];
  const routes: OpenPath[] = [];
  const waypoints: GpxPoint[] = [];
  const withoutPlace = { lat: 0, lon: 0 };
  let root: string | null = null;
  let firstBad: string | null = null;
  let fileName: string | null = null;
  let ignoredFrom = Number.POSITIVE_INFINITY;
  let point: OpenPoint | null = null;
  let path: OpenPath | null = null;
  let text: string | null = null;

  const placeOf = (at: Readonly<Record<string, unknown>>, name: string, mostDeg: number): number | null => {
    const found = String(at[name] ?? '');
    const deg = numberIn(found, -mostDeg, mostDeg);
    if (deg === null && found !== '') firstBad ??= `${name}="${found.slice(0, MAX_SHOWN_CHARS)}"`;
    return deg;
  };

  const openPoint = (tag: string, at: Readonly<Record<string, unknown>>): OpenPoint => ({
    tag,
    depth: stack.length,
    latitudeDeg: placeOf(at, 'lat', 90),
    longitudeDeg: placeOf(at, 'lon', 180),
    elevationM: null,
    timeMs: null,
    name: null,
  });

  const keepPoint = ({ tag, latitudeDeg, longitudeDeg, elevationM, timeMs, name }: OpenPoint): void => {
    if (latitudeDeg === null) withoutPlace.lat++;
    else if (longitudeDeg === null) withoutPlace.lon++;
    else {
      const kept: GpxPoint = { latitudeDeg, longitudeDeg, elevationM, timeMs, name };
      if (tag === 'wpt') waypoints.push(kept);
      else path?.segments.at(-1)?.push(kept);
    }
  };

  const open = (rawTag: string, attributes: Readonly<Record<string, unknown>>): void => {
    const tag = localName(rawTag);
    stack.push(tag);
    root ??= tag;
    if (stack.length > MAX_DEPTH) throw new Error('elements nested too deeply');
    if (stack.length > ignoredFrom) return;
    text = null;
    if (tag === 'extensions') ignoredFrom = stack.length;
    else if (tag === 'trk' || tag === 'rte') {
      path = { name: null, segments: [[]] };
      (tag === 'trk' ? tracks : routes).push(path);
    } else if (tag === 'trkseg') path?.segments.push([]);
    else if (POINT_TAGS.has(tag)) point = openPoint(tag, attributes);
    else if (tag === 'ele' || tag === 'time' || tag === 'name') text = '';
  };

  const takeText = (tag: string, value: string): void => {
    const parent = stack.at(-2);
    if (point && stack.length === point.depth + 1) {
      if (tag === 'ele') point.elevationM = numberIn(value, MIN_ELEVATION_M, MAX_ELEVATION_M);
      if (tag === 'time') point.timeMs = gpxTimeMs(value);
      if (tag === 'name') point.name = value.trim().slice(0, MAX_NAME_CHARS) || null;
    } else if (tag === 'name') {
      const name = value.trim().slice(0, MAX_NAME_CHARS) || null;
      if (parent === 'trk' || parent === 'rte') {
        if (path) path.name = name;
      } else if (parent === 'metadata' || parent === 'gpx') fileName = name;
    }
  };

  const close = (rawTag: string): void => {
    const tag = localName(rawTag);
    if (stack.length === ignoredFrom) ignoredFrom = Number.POSITIVE_INFINITY;
    else if (stack.length < ignoredFrom) {
      if (text !== null) takeText(tag, text);
      text = null;
      if (point && stack.length === point.depth) {
        keepPoint(point);
        point = null;
      } else if (tag === 'trk' || tag === 'rte') path = null;
    }
    stack.pop();
  };

  const result: GpxCollector['result'] = (moreFaults) => {
    const { lat, lon } = withoutPlace;
    const counted = [
      ...(lat > 0 ? [plural(lat, '{n} point without a usable lat', '{n} points without a usable lat')] : []),
      ...(lon > 0 ? [plural(lon, '{n} point without a usable lon', '{n} points without a usable lon')] : []),
    ];
    const full = (paths: readonly OpenPath[]): GpxPath[] =>
      paths.map(usable).filter((p) => p.segments.length > 0);
    const gpx = { name: fileName, tracks: full(tracks), routes: full(routes), waypoints };
    return {
      isGpx: root === 'gpx',
      gpx: { ...gpx, skipped: lat + lon, faults: [...counted, ...moreFaults] },
    };
  };

  return {
    open,
    close,
    text: (t) => {
      if (text !== null && text.length < MAX_NAME_CHARS) text += t;
    },
    root: () => root,
    firstBad: () => firstBad,
    result,
  };
};
