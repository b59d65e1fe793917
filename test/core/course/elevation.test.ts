import { describe, expect, it } from 'vitest';
import { climbM, slopeProfile } from '../../../src/core/course/elevation.ts';
import { measureLine } from '../../../src/core/course/line.ts';

/** 8 km due north, a point every 20 m, heights as a function of the distance. */
const courseWith = (heightM: ((m: number) => number) | null) => {
  const points = Array.from({ length: 401 }, (_, i) => ({
    latitudeDeg: 54 + (i * 20) / 111_300,
    longitudeDeg: 7,
    elevationM: heightM ? heightM(i * 20) : null,
  }));
  const line = measureLine(points, 8000);
  if (!line) throw new Error('no line');
  return line;
};

const slopesOf = (heightM: (m: number) => number): { stepM: number; slopes: Float64Array } => {
  const profile = slopeProfile(courseWith(heightM));
  if (!profile) throw new Error('no profile');
  return profile;
};

describe('slopeProfile', () => {
  it('is null without heights', () => {
    expect(slopeProfile(courseWith(null))).toBeNull();
  });

  it('keeps a steady slope, to the very ends', () => {
    for (const slope of slopesOf((m) => 0.03 * m).slopes) expect(slope).toBeCloseTo(0.03, 6);
  });

  it('keeps a hill of 1 km nearly whole', () => {
    const { stepM, slopes } = slopesOf((m) => Math.min(50, Math.max(0, 0.05 * (m - 3000))));
    expect(slopes[Math.floor(3500 / stepM)]).toBeCloseTo(0.05, 3);
    expect(climbM({ stepM, slopes })).toBeCloseTo(50, 1);
  });

  it('takes a house beside the road for no hill', () => {
    const { slopes } = slopesOf((m) => (m >= 4000 && m < 4040 ? 12 : 0));
    expect(Math.max(...slopes)).toBeLessThan(0.03);
  });

  it('makes little of heights rounded to a metre', () => {
    const { slopes } = slopesOf((m) => Math.round(0.002 * m));
    for (const slope of slopes) expect(Math.abs(slope - 0.002)).toBeLessThan(0.006);
  });

  it('believes no cliff', () => {
    const { slopes } = slopesOf((m) => (m < 4000 ? 0 : 800));
    expect(Math.max(...slopes)).toBe(0.3);
  });
});
