import { describe, expect, it } from 'vitest';
import { parseGpx } from '../../src/core/course/gpx.ts';
import { type Recording, recordingOf } from '../../src/log/recordedTrack.ts';

const track = (points: readonly (readonly [lat: string, time: string])[]): string =>
  `<gpx><trk><trkseg>${points
    .map(
      ([lat, time]) =>
        `<trkpt lat="${lat}" lon="7">${time ? `<time>2027-05-09T08:${time}Z</time>` : ''}</trkpt>`,
    )
    .join('')}</trkseg></trk></gpx>`;

const record = (text: string): Recording => {
  const gpx = parseGpx(text);
  const got = gpx.ok ? recordingOf(gpx.value) : gpx;
  if (!got.ok) throw new Error(got.error.expected);
  return got.value;
};

describe('recordingOf', () => {
  it('gives fixes that state neither speed nor accuracy, at the time of their points', () => {
    const { inputs } = record(track([['54', '30:00']]));
    expect(inputs).toEqual([
      {
        type: 'fix',
        atMs: 1_809_851_400_000,
        fix: {
          timestampMs: 1_809_851_400_000,
          latitudeDeg: 54,
          longitudeDeg: 7,
          accuracyM: null,
          speedMps: null,
          altitudeM: null,
        },
      },
    ]);
  });

  it('puts points in order, leaves doubles and points without a time out, and counts them', () => {
    const got = record(
      track([
        ['1', '30:02'],
        ['2', '30:00'],
        ['3', ''],
        ['4', '30:02'],
        ['x', '30:03'],
        ['5', '30:01'],
      ]),
    );
    expect(got.inputs.map((i) => (i.type === 'fix' ? i.fix.latitudeDeg : 0))).toEqual([2, 5, 1]);
    expect(got.skipped).toBe(3);
    expect(got.faults).toEqual([
      '1 point without a usable lat',
      '1 point without a time',
      '1 point at the time of another',
    ]);
  });

  it('leaves a point of 1970 out', () => {
    const text = track([
      ['1', '30:00'],
      ['2', '30:01'],
      ['3', '30:02'],
    ]).replace('2027-05-09T08:30:00', '1970-01-01T00:00:00');
    expect(record(text)).toMatchObject({ skipped: 1, faults: ['1 point days away from the rest'] });
  });

  it('refuses a track without times', () => {
    const gpx = parseGpx(track([['1', '']]));
    expect(gpx.ok && recordingOf(gpx.value)).toEqual({
      ok: false,
      error: {
        place: 'the file',
        expected: 'a track whose points have a time',
        found: '1 without one: a course, no recording',
      },
    });
  });
});
