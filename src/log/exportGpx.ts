import type { Fix } from '../core/estimate/input.ts';
import type { RunInput } from '../core/run/settings.ts';

/**
 * A run's fixes as GPX 1.1, elements in the order of the schema (metadata: name, then time; trkpt: ele, then time), so
 * that any reader takes it. What GPX has no place for stays in the log.
 */

const NAMESPACE = 'http://www.topografix.com/GPX/1/1';
const SCHEMA = `${NAMESPACE} http://www.topografix.com/GPX/1/1/gpx.xsd`;

/** What XML 1.0 allows (section 2.2): tab, line breaks, and everything from the space on but surrogates and two odd ones. */
const isAllowed = (char: string): boolean => {
  const code = char.codePointAt(0) ?? 0;
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
};

const xml = (text: string): string =>
  [...text]
    .filter(isAllowed)
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

/** Plain decimals: xsd:decimal knows no exponent. */
const decimal = (x: number, digits: number): string => {
  const text = x.toFixed(digits).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
};

/** A tenth of a millimetre on the ground. */
const DEGREE_DIGITS = 9;

const point = ({ latitudeDeg, longitudeDeg, altitudeM, timestampMs }: Fix): string => {
  // Longitude 180 is outside of the schema: it is the same meridian as -180.
  const rounded = Number(longitudeDeg.toFixed(DEGREE_DIGITS));
  const lon = decimal(rounded >= 180 ? rounded - 360 : rounded, DEGREE_DIGITS);
  const ele = altitudeM === null ? '' : `<ele>${decimal(altitudeM, 3)}</ele>`;
  const time = `<time>${new Date(timestampMs).toISOString()}</time>`;
  return `      <trkpt lat="${decimal(latitudeDeg, DEGREE_DIGITS)}" lon="${lon}">${ele}${time}</trkpt>`;
};

/** Without fixes this long a new segment begins: nobody knows the way between. */
const NEW_SEGMENT_MS = 60_000;

/** @param name  of the run; @param inputs  its log, in order of arrival. Fixes are put in order of their own time. */
export const runGpx = (name: string, inputs: readonly RunInput[]): string => {
  const fixes = inputs
    .flatMap((i) => (i.type === 'fix' ? [i.fix] : []))
    .sort((a, b) => a.timestampMs - b.timestampMs)
    .filter((f, i, all) => f.timestampMs !== all[i - 1]?.timestampMs);
  const segments: Fix[][] = [];
  for (const fix of fixes) {
    const last = segments.at(-1)?.at(-1);
    if (last === undefined || fix.timestampMs - last.timestampMs > NEW_SEGMENT_MS) segments.push([fix]);
    else segments.at(-1)?.push(fix);
  }
  const first = fixes[0];
  const time = first === undefined ? '' : `<time>${new Date(first.timestampMs).toISOString()}</time>`;
  return `${[
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<gpx version="1.1" creator="Soundline" xmlns="${NAMESPACE}" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation="${SCHEMA}">`,
    `  <metadata><name>${xml(name)}</name>${time}</metadata>`,
    `  <trk><name>${xml(name)}</name>`,
    ...segments.flatMap((s) => ['    <trkseg>', ...s.map(point), '    </trkseg>']),
    '  </trk>',
    '</gpx>',
  ].join('\n')}\n`;
};
