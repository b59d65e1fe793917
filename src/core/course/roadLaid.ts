import { type Corner, coneM, cornerAt, cornerDoubtM2, foot } from './corners.ts';
import { coneFromSteps, hasEvenSteps, type Pass } from './evenSteps.ts';
import { cornersOf, type Laid, lay, type Meeting, type PassesOf, type Vertex } from './lay.ts';
import type { Road, RoadPass } from './road.ts';
import { at, type Polyline, type Run, runsOf } from './runs.ts';

/** A road laid once from all its passes, and run as often as it was. */
export interface RoadLaid {
  readonly vertices: readonly Vertex[];
  readonly corners: readonly Corner[];
  /** Vertices at which a pass is complete, but the last: there the distance is known. */
  readonly seams: readonly number[];
}

const backwards = (run: Run): Run => ({ ...run, dirE: -run.dirE, dirN: -run.dirN });

/** The points of one pass over a run of the merged road, counted in the direction of the first pass. */
const passOf = (line: Polyline, { source }: Road, run: Run, { from, to, backward }: RoadPass): Pass => {
  const points = Array.from(source.subarray(run.from, run.to + 1)).filter((i) => i >= from && i <= to);
  points.sort((a, b) => (backward ? b - a : a - b));
  return {
    count: points.map((i) => (backward ? -i : i)),
    alongM: points.map((i) => foot(run, at(line.eastM, i), at(line.northM, i)).t),
  };
};

/**
 * Where a road begins and turns, points of all passes lie in a heap, and a little run out of them has no direction: its
 * points lie on the next run's line as well, within so many standard deviations of the shake.
 */
const TIP_SDS = 4;
const withoutTips = (line: Polyline, runs: readonly Run[], shake: number): Run[] => {
  const liesOn = (run: Run, other: Run | undefined): boolean => {
    if (!other) return false;
    for (let i = run.from; i <= run.to; i++) {
      const [e, n] = [at(line.eastM, i), at(line.northM, i)];
      const onto = foot(other, e, n);
      if (Math.hypot(e - onto.e, n - onto.n) > TIP_SDS * shake) return false;
    }
    return true;
  };
  const kept = runs.filter((run, k) => {
    if (k > 0 && k + 1 < runs.length) return true;
    return !liesOn(run, k === 0 ? runs[1] : runs[k - 1]);
  });
  const to = runs.at(-1)?.to;
  return kept.map((run, k) => ({
    ...run,
    from: k === 0 ? 0 : run.from,
    to: k + 1 === kept.length && to !== undefined ? to : run.to,
  }));
};

/** The vertices as they stand for the points of one pass, in the order of the first. */
const seenBy = (vertices: readonly Vertex[], { index }: RoadPass): Vertex[] =>
  vertices.map((v) => {
    const i = Math.floor(v.index);
    const a = at(index, i);
    return { ...v, index: a + (v.index - i) * ((index[i + 1] ?? a) - a) };
  });

/** The cone at the end of the way out, with how badly its place is known. */
const coneOf = (
  line: Polyline,
  road: Road,
  { runs, vertices }: Laid,
  even: boolean,
  sigmaM: number,
  legM: number,
) => {
  const [last, end] = [runs.at(-1), vertices.at(-1)];
  const [out, back] = road.passes;
  if (!last || !end || !out || !back) return null;
  const told = even
    ? coneFromSteps(passOf(line, road, last, out), passOf(line, road, last, back), sigmaM)
    : null;
  const seenM = foot(last, end.eastM, end.northM).t;
  const endM = told?.alongM ?? Math.min(seenM + legM, Math.max(seenM, coneM(line, last, out.to, legM)));
  const before = cornerDoubtM2(last, backwards(last), sigmaM, legM);
  const doubtM2 = told?.doubtM2 ?? before;
  return {
    eastM: last.eastM + endM * last.dirE,
    northM: last.northM + endM * last.dirN,
    index: out.to,
    doubtM2,
    left: Math.sqrt(doubtM2 / before),
    run: last,
  };
};

/** Out along the road to the cone and home along the same vertices. */
const outAndHome = (
  line: Polyline,
  road: Road,
  laid: Laid,
  even: boolean,
  sigmaM: number,
  legM: number,
): (Omit<RoadLaid, 'corners'> & { readonly meetings: readonly Meeting[] }) | null => {
  const cone = coneOf(line, road, laid, even, sigmaM, legM);
  const [out, back] = road.passes;
  if (!cone || !out || !back) return null;
  const way = laid.vertices.slice(0, -1);
  const [home, ...homeward] = seenBy(way, back).reverse();
  if (!home) return null;
  const turn = way.length;
  const { eastM, northM, index } = cone;
  return {
    // Doubt counts on the way to its vertex: the cone's comes in on both sides of it.
    vertices: [
      ...seenBy(way, out),
      { eastM, northM, index, doubtM2: cone.doubtM2 / 2, addM: 0 },
      { ...home, doubtM2: home.doubtM2 + cone.doubtM2 / 2 },
      ...homeward,
    ],
    seams: [turn],
    meetings: [
      ...laid.meetings,
      { vertex: turn, before: cone.run, after: backwards(cone.run), sigmaM, left: cone.left },
      ...laid.meetings.toReversed().map((m) => ({
        ...m,
        vertex: 2 * turn - m.vertex,
        before: backwards(m.after),
        after: backwards(m.before),
      })),
    ],
  };
};

/** Lap after lap; where one ends and the next begins, the line's own first and last point say where the mat lies. */
const lapAfterLap = (line: Polyline, road: Road, { vertices, meetings, runs }: Laid) => {
  const [pass, run, end] = [road.passes[0], runs[0], line.eastM.length - 1];
  if (!pass || !run) return null;
  const mat = foot(
    run,
    (at(line.eastM, 0) + at(line.eastM, end)) / 2,
    (at(line.northM, 0) + at(line.northM, end)) / 2,
  );
  const [seen, edge] = [seenBy(vertices, pass), 0.5];
  const from = seen.findIndex((v) => v.index > edge);
  const to = seen.findLastIndex((v) => v.index < pass.to - edge);
  if (from < 0 || to <= from) return null;
  const seam: Vertex = { eastM: mat.e, northM: mat.n, index: 0, doubtM2: 0, addM: 0 };
  const lap = [seam, ...vertices.slice(from, to + 1)];
  const inLap = meetings.filter(({ vertex }) => vertex >= from && vertex <= to);
  const last = { ...seam, index: vertices.length === 0 ? 0 : road.source.length - 1 };
  return {
    vertices: [...road.passes.flatMap((p) => seenBy(lap, p)), ...seenBy([last], road.passes.at(-1) ?? pass)],
    seams: road.passes.slice(1).map((_, k) => (k + 1) * lap.length),
    meetings: road.passes.flatMap((_, k) =>
      inLap.map((m) => ({ ...m, vertex: m.vertex - from + 1 + k * lap.length })),
    ),
  };
};

/**
 * Lays a road that is run more than once.
 * @param sigmaM the shake; `legM` the usual way from point to point of one pass
 * @returns null where too little of it could be laid
 */
export const layRoad = (line: Polyline, road: Road, sigmaM: number, legM: number): RoadLaid | null => {
  const { merged, passes } = road;
  const shakes = (points: number): Float64Array => new Float64Array(points).fill(sigmaM);
  const count = merged.eastM.length;
  const mergedLegM = (legM * (passes[0] ? passes[0].to - passes[0].from + 1 : count)) / count;
  const even = hasEvenSteps(line, runsOf(line, shakes(line.eastM.length), legM), sigmaM);
  const passesOf: PassesOf = (before, after) =>
    even ? passes.map((p) => [passOf(line, road, before, p), passOf(line, road, after, p)] as const) : [];
  const runs = withoutTips(merged, runsOf(merged, shakes(count), mergedLegM), sigmaM);
  const laid = lay(merged, shakes(count), mergedLegM, runs, passesOf, legM);
  const first = laid.runs[0];
  if (!first) return null;
  const run = passes[1]?.backward
    ? outAndHome(line, road, laid, even, sigmaM, legM)
    : lapAfterLap(line, road, laid);
  if (!run) return null;
  const begins = passes[1]?.backward ? [0] : [0, ...run.seams];
  return {
    vertices: run.vertices,
    seams: run.seams,
    corners: [
      ...begins.map((vertex) => cornerAt(vertex, null, first, sigmaM, mergedLegM)),
      ...cornersOf(run.meetings, mergedLegM),
    ].sort((a, b) => a.vertex - b.vertex),
  };
};
