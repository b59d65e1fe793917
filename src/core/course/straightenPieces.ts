import type { Polyline } from './runs.ts';
import { type Straightened, straighten } from './straighten.ts';

/** A straightened line, and the vertices at which its gaps begin. */
export interface Pieced extends Straightened {
  readonly gaps: readonly number[];
}

const joined = (parts: readonly Float64Array[]): Float64Array => {
  const all = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
  let from = 0;
  for (const part of parts) {
    all.set(part, from);
    from += part.length;
  }
  return all;
};

/**
 * Straightens what lies between the gaps piece by piece: over a gap the streets before and behind it say nothing of each
 * other.
 * @param gaps the points at which gaps begin
 */
export const straightenPieces = (line: Polyline, gaps: readonly number[], steps: 'whole' | 'cut'): Pieced => {
  if (gaps.length === 0) return { ...straighten(line, steps), gaps };
  const ends = [...gaps.map((i) => i + 1), line.eastM.length];
  const pieces = ends.map((to, k) => {
    const from = k === 0 ? 0 : (ends[k - 1] as number);
    return {
      from,
      ...straighten({ eastM: line.eastM.slice(from, to), northM: line.northM.slice(from, to) }, steps),
    };
  });
  const before = pieces.map((_, k) => pieces.slice(0, k).reduce((sum, p) => sum + p.eastM.length, 0));
  return {
    eastM: joined(pieces.map((p) => p.eastM)),
    northM: joined(pieces.map((p) => p.northM)),
    index: joined(pieces.map((p) => p.index.map((i) => i + p.from))),
    doubtM2: joined(pieces.map((p) => p.doubtM2)),
    addM: joined(pieces.map((p) => p.addM)),
    corners: pieces.flatMap((p, k) =>
      p.corners.map((c) => ({ ...c, vertex: c.vertex + (before[k] as number) })),
    ),
    doubtM2PerM: Math.max(...pieces.map((p) => p.doubtM2PerM)),
    shakeM: Math.max(...pieces.map((p) => p.shakeM)),
    // A road run again is known as such only where the whole of it was recorded.
    seams: [],
    gaps: before.slice(1).map((n) => n - 1),
  };
};
