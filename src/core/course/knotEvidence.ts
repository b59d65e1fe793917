import { type PointRow, rowSums } from './pointRow.ts';

/**
 * How well a broken line with given knots explains a row of points: the points lie on it at their own steps, each shaken
 * by σ per axis; where the corners are on the ground is not asked, it is integrated out. Knots form a chain, so what
 * the points to one side of a knot say of its place is a Gaussian, and it is carried from knot to knot as in a Kalman
 * filter: a change of one knot costs a look at its two neighbours, not at the whole line.
 *
 * Costs are -2 log of a probability (but for what is the same for all knots). Without the logarithm of the determinants,
 * which a plain penalty for each knot leaves out, the best broken line has its corners up to a step away from the road's.
 */

/** Knots per step: where between two points a street turned is known to about the shake, not better. */
export const GRID = 8;

/** How long streets of so many steps are: the trace of the tool that set the points. */
export interface StepLaw {
  readonly stepM: number;
  /** A street of n steps is n × stepM + moreM long: tools that cut each street into equal parts make this negative. */
  readonly moreM: number;
  /** Standard deviation of a street's length around that: in metres, and as a share of the length. */
  readonly sdM: number;
  readonly share: number;
}

/** [precision EE, EN, NN, information E, N, cost] of a knot's place. */
export type Message = Float64Array;
const SIZE = 6;
// What the points of a leg tell of its ends a and b, and what its length by the law does.
const [AA, AB, BB, AE, AN, BE, BN, GEE, GEN, GNN, GE, GN, OWN, LEG_SIZE] = [
  0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13,
];
export const message = (): Message => Float64Array.of(1e-9, 0, 1e-9, 0, 0, 0);

export interface KnotEvidence {
  /** Where the chain ends, in parts of a step; it begins at 0. */
  readonly end: number;
  readonly obey: (law: StepLaw) => void;
  /** Takes a message over the leg from one knot to a later one. */
  readonly pass: (from: Message, x: number, y: number, to: Message) => void;
  /** What lies behind each of the knots, one message after the other. */
  readonly behind: (knots: readonly number[]) => Float64Array;
  /** The same for one knot, anew. */
  readonly behindOne: (messages: Float64Array, k: number, x: number, y: number) => void;
  /** Cost of all points, where what lies before a knot meets what lies behind knot k. */
  readonly meet: (before: Message, messages: Float64Array, k: number) => number;
  readonly cost: (knots: readonly number[]) => number;
  /** Most probable places of the knots, metres. */
  readonly places: (knots: readonly number[]) => {
    readonly eastM: Float64Array;
    readonly northM: Float64Array;
  };
}

/** @param meanSteps how many steps a street usually has */
export const knotEvidence = (row: PointRow, sigmaM: number, meanSteps: number): KnotEvidence => {
  const sums = rowSums(row);
  const last = sums.before.length - 2;
  const end = last * GRID;
  const weight = 1 / (sigmaM * sigmaM);
  let law: StepLaw = { stepM: 1, moreM: 0, sdM: 1, share: 0 };
  // What one leg says of its ends, by the names below. One array: a leg is looked at hundreds of thousands of times.
  const leg = new Float64Array(LEG_SIZE);
  /** What a street of a length costs by itself, for each length in parts of a step; NaN where nobody asked yet. */
  const owns = new Float64Array(end + 1);

  const between = (values: Float64Array, from: number, to: number): number =>
    (values[to] as number) - (values[from] as number);

  const look = (x: number, y: number): void => {
    const from = sums.before[Math.ceil(x / GRID)] as number;
    const to = sums.before[y === end ? last + 1 : Math.ceil(y / GRID)] as number;
    const start = x / GRID;
    const steps = (y - x) / GRID;
    const n = between(sums.count, from, to);
    const s = between(sums.step, from, to);
    const e = between(sums.east, from, to);
    const m = between(sums.north, from, to);
    const se = between(sums.stepEast, from, to);
    const sm = between(sums.stepNorth, from, to);
    // b = (step - start) / steps is a point's share of the later end.
    const sumB = (s - n * start) / steps;
    const sumBB = (between(sums.step2, from, to) - 2 * start * s + n * start * start) / (steps * steps);
    const eastB = (se - start * e) / steps;
    const northB = (sm - start * m) / steps;
    leg[AA] = weight * (n - 2 * sumB + sumBB);
    leg[AB] = weight * (sumB - sumBB);
    leg[BB] = weight * sumBB;
    leg[AE] = weight * (e - eastB);
    leg[AN] = weight * (m - northB);
    leg[BE] = weight * eastB;
    leg[BN] = weight * northB;
    const lengthM = Math.max(1, law.stepM * steps + law.moreM);
    const variance = law.sdM * law.sdM + law.share * law.share * lengthM * lengthM;
    // A street may go anywhere (1/length along an arc) and be of any length; the law says how long its steps make it.
    if (Number.isNaN(owns[y - x]))
      owns[y - x] = 2 * Math.log(meanSteps * GRID * lengthM) + Math.log(2 * Math.PI * variance);
    leg[OWN] = owns[y - x] as number;
    leg.fill(0, GEE, OWN);
    if (n < 2) return;
    // Along its own points' direction, by regression on their steps.
    const east = se - (s * e) / n;
    const north = sm - (s * m) / n;
    const size = Math.sqrt(east * east + north * north) || 1;
    const u = east / size;
    const v = north / size;
    const g = 1 / variance;
    leg[GEE] = g * u * u;
    leg[GEN] = g * u * v;
    leg[GNN] = g * v * v;
    leg[GE] = g * lengthM * u;
    leg[GN] = g * lengthM * v;
    leg[OWN] = (leg[OWN] as number) + g * lengthM * lengthM;
  };

  const swap = (i: number, j: number): void => {
    const kept = leg[i] as number;
    leg[i] = leg[j] as number;
    leg[j] = kept;
  };
  const turnRound = (): void => {
    swap(AA, BB);
    swap(AE, BE);
    swap(AN, BN);
    leg[GE] = -(leg[GE] as number);
    leg[GN] = -(leg[GN] as number);
  };

  const eliminate = (from: Float64Array, f: number, to: Float64Array, t: number): void => {
    const [aa, ab, bb] = [leg[AA] as number, leg[AB] as number, leg[BB] as number];
    const [gEE, gEN, gNN] = [leg[GEE] as number, leg[GEN] as number, leg[GNN] as number];
    const [gE, gN] = [leg[GE] as number, leg[GN] as number];
    const xx = (from[f] as number) + aa + gEE;
    const xy = (from[f + 1] as number) + gEN;
    const yy = (from[f + 2] as number) + aa + gNN;
    const rx = (from[f + 3] as number) + (leg[AE] as number) - gE;
    const ry = (from[f + 4] as number) + (leg[AN] as number) - gN;
    const det = xx * yy - xy * xy;
    const [ox, oxy, oy] = [ab - gEE, -gEN, ab - gNN];
    const sx = (yy * rx - xy * ry) / det;
    const sy = (xx * ry - xy * rx) / det;
    const pxx = (yy * ox - xy * oxy) / det;
    const pxy = (yy * oxy - xy * oy) / det;
    const pyx = (xx * oxy - xy * ox) / det;
    const pyy = (xx * oy - xy * oxy) / det;
    const cost = (from[f + 5] as number) + (leg[OWN] as number) - (rx * sx + ry * sy) + Math.log(det);
    to[t] = bb + gEE - (ox * pxx + oxy * pyx);
    to[t + 1] = gEN - (ox * pxy + oxy * pyy);
    to[t + 2] = bb + gNN - (oxy * pxy + oy * pyy);
    to[t + 3] = (leg[BE] as number) + gE - (ox * sx + oxy * sy);
    to[t + 4] = (leg[BN] as number) + gN - (oxy * sx + oy * sy);
    to[t + 5] = cost;
  };

  const joined = (a: Float64Array, i: number, b: Float64Array, j: number): number[] =>
    [0, 1, 2, 3, 4].map((k) => (a[i + k] as number) + (b[j + k] as number));

  const behindOne: KnotEvidence['behindOne'] = (messages, k, x, y) => {
    look(x, y);
    turnRound();
    eliminate(messages, SIZE * (k + 1), messages, SIZE * k);
  };
  const behind: KnotEvidence['behind'] = (knots) => {
    const messages = new Float64Array(SIZE * knots.length);
    messages.set(message(), SIZE * (knots.length - 1));
    for (let k = knots.length - 2; k >= 0; k--)
      behindOne(messages, k, knots[k] as number, knots[k + 1] as number);
    return messages;
  };
  const pass: KnotEvidence['pass'] = (from, x, y, to) => {
    look(x, y);
    eliminate(from, 0, to, 0);
  };
  const meet: KnotEvidence['meet'] = (before, messages, k) => {
    const j = SIZE * k;
    const xx = (before[0] as number) + (messages[j] as number);
    const xy = (before[1] as number) + (messages[j + 1] as number);
    const yy = (before[2] as number) + (messages[j + 2] as number);
    const hx = (before[3] as number) + (messages[j + 3] as number);
    const hy = (before[4] as number) + (messages[j + 4] as number);
    const det = xx * yy - xy * xy;
    const told = (yy * hx * hx - 2 * xy * hx * hy + xx * hy * hy) / det;
    return (before[5] as number) + (messages[j + 5] as number) + Math.log(det) - told;
  };

  return {
    end,
    obey: (next) => {
      law = next;
      owns.fill(Number.NaN);
    },
    pass,
    behind,
    behindOne,
    meet,
    cost: (knots) => meet(message(), behind(knots), 0),
    places: (knots) => {
      const messages = behind(knots);
      const eastM = new Float64Array(knots.length);
      const northM = new Float64Array(knots.length);
      const [e0, n0] = [row.eastM[0] as number, row.northM[0] as number];
      const before = message();
      const next = message();
      knots.forEach((x, k) => {
        const [xx, xy, yy, hx, hy] = joined(before, 0, messages, SIZE * k) as [
          number,
          number,
          number,
          number,
          number,
        ];
        const det = xx * yy - xy * xy;
        eastM[k] = e0 + (yy * hx - xy * hy) / det;
        northM[k] = n0 + (xx * hy - xy * hx) / det;
        const y = knots[k + 1];
        if (y === undefined) return;
        pass(before, x, y, next);
        before.set(next);
      });
      return { eastM, northM };
    },
  };
};
