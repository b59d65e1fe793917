/**
 * Bends. A recording cuts them between its points, shake makes them longer, and streets fitted to them are chords of
 * them: where a line bends all the time its length is less certain than on straight streets, and more so the tighter it
 * bends. A corner turns once, and brings in about a metre.
 */

/**
 * Directions are taken over chords of this, so far apart that a corner lies in one of them at most: four that turn the
 * same way from each to the next are a bend, and a corner is none.
 */
const CHORD_M = 20;
const APART_M = 27;
const OFFSETS_M = [-1.5 * APART_M, -0.5 * APART_M, 0.5 * APART_M, 1.5 * APART_M];
/**
 * Variance of length per metre is this times the square of the curvature (1/m): a bend of a running track, 115 m round
 * 37 m, is then known to 5 m. Measured on laid tracks, stadiums and spirals of points every 12 m.
 */
const DOUBT_M2 = 300;
/** Tighter than a track no runner's road bends for long. */
const MOST_PER_M = 1 / 30;

const turn = (from: number, to: number): number => {
  const rad = to - from;
  return rad - 2 * Math.PI * Math.round(rad / (2 * Math.PI));
};

/**
 * Variance of length, per metre, that bends bring in at each vertex.
 * @param sumM way along the line at each vertex, rising
 */
export const bendDoubts = (eastM: Float64Array, northM: Float64Array, sumM: Float64Array): Float64Array => {
  const last = sumM.length - 1;
  const at = (values: Float64Array, i: number): number => values[i] as number;
  /** The vertex by a distance, looked for from another one on, for distances that rise. */
  const walker = () => {
    let i = 0;
    return (d: number): readonly [number, number] => {
      while (i < last - 1 && at(sumM, i + 1) <= d) i++;
      const legM = at(sumM, i + 1) - at(sumM, i);
      const k = Math.min(1, Math.max(0, (d - at(sumM, i)) / legM));
      return [
        at(eastM, i) + k * (at(eastM, i + 1) - at(eastM, i)),
        at(northM, i) + k * (at(northM, i + 1) - at(northM, i)),
      ];
    };
  };
  const offsets = OFFSETS_M.map((off) => ({ off, begin: walker(), end: walker() }));
  return sumM.map((d) => {
    const headings = offsets.map(({ off, begin, end }) => {
      const [e0, n0] = begin(d + off - CHORD_M / 2);
      const [e1, n1] = end(d + off + CHORD_M / 2);
      return Math.atan2(e1 - e0, n1 - n0);
    });
    const turns = headings.slice(1).map((heading, i) => turn(headings[i] as number, heading));
    const oneWay = turns.every((t) => t > 0) || turns.every((t) => t < 0);
    const perM = oneWay ? Math.min(...turns.map(Math.abs)) / APART_M : 0;
    return DOUBT_M2 * Math.min(MOST_PER_M, perM) ** 2;
  });
};
