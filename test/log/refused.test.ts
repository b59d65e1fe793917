import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import type { DoorError, Result } from '../../src/core/units/result.ts';
import { screen as german } from '../../src/languages/de/screen.ts';
import { expectedOf, foundOf } from '../../src/languages/refusal.ts';
import { decodeText } from '../../src/log/decodeText.ts';
import { importRuns } from '../../src/log/importRun.ts';

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (c) => c.charCodeAt(0));
const fixAt = (s: number): string =>
  JSON.stringify({ timestamp: 1000 * s, coords: { latitude: 54 + s / 1000, longitude: 7 } });

describe('why a file was not taken is said in the language of the screens', () => {
  const rows: readonly (readonly [string, Result<unknown, DoorError>])[] = [
    ['a packed file', decodeText(gzipSync('{}'))],
    ['a file of an archive', decodeText(bytesOf('PK\u0003\u0004'))],
    ['bytes', decodeText(bytesOf('\u0001\u00ff\0\u00ff'))],
    ['an empty file', importRuns('', null)],
    ['another file', importRuns('time;place', null)],
    ['a GPX of nothing', importRuns('<gpx></gpx>', null)],
    ['a course', importRuns('<gpx><trk><trkseg><trkpt lat="1" lon="2"/></trkseg></trk></gpx>', null)],
    ['places', importRuns('<gpx><wpt lat="1" lon="2"/></gpx>', null)],
    ['a step', importRuns(fixAt(1), null)],
  ];
  test.each(rows)('%s', (_what, got) => {
    if (got.ok) throw new Error('taken');
    const found = foundOf(got.error);
    if (typeof found === 'string') throw new Error(`shown as it is: ${found}`);
    for (const { text } of [expectedOf(got.error), found])
      expect([text, german[text]]).not.toContain(undefined);
  });

  test('a flight', () => {
    const got = importRuns(Array.from({ length: 90 }, (_, s) => fixAt(s)).join('\n'), null);
    if (got.ok) throw new Error('taken');
    expect(german[expectedOf(got.error).text]).toBeDefined();
    expect(foundOf(got.error)).toBe('9.9 km, 1.5 min');
  });
});
