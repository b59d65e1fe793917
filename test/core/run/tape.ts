import { type CourseLine, measureLine, pointAtM } from '../../../src/core/course/line.ts';
import type { Call } from '../../../src/core/cues/call.ts';
import type { EventName, Fix, Input } from '../../../src/core/estimate/input.ts';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';
import type { RacePlan } from '../../../src/core/plan/racePlan.ts';
import { beginRun, type Run } from '../../../src/core/run/run.ts';
import type { RunInput, Settings } from '../../../src/core/run/settings.ts';
import { flush, step } from '../../../src/core/run/step.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';
import { plainVoice } from '../cues/voices.ts';

/** Own clock 0 of every tape. */
export const START_MS = 1_800_000_000_250;

/** 3 km in 15 minutes with everything in it. */
export const plan: RacePlan = {
  version: 1,
  kind: 'race',
  name: 'Three',
  distanceM: 3000,
  goalS: 900,
  goalBy: 'own',
  unit: 'km',
  pacing: 'pace',
  opening: { untilM: 500, quickerSPerKm: 5 },
  push: { fromM: 2400, quickerSPerKm: 4 },
  checkpointsM: [1500, 2500],
  stations: [{ atM: 1200, offers: ['water'] }],
  fuel: [{ item: 'gel', atM: 2000 }],
};

const ORIGIN = { latitudeDeg: 54, longitudeDeg: 7 };
const VERTICES = 20;

/** An L of a road: north, then east. */
const courseOf = (distanceM: number): CourseLine => {
  const plane = planeAt(ORIGIN);
  const points = Array.from({ length: VERTICES + 1 }, (_, i) => {
    const m = (i / VERTICES) * distanceM;
    const half = distanceM / 2;
    return { ...pointOn(plane, Math.max(0, m - half), Math.min(m, half)), elevationM: null };
  });
  const line = measureLine(points, distanceM);
  if (!line) throw new Error('no line');
  return line;
};

export interface Wish {
  readonly plan?: RacePlan;
  /** True speed at a second of the own clock, m/s. */
  readonly speedAt?: (s: number) => number;
  /** Fixes come only where this holds, by own clock. */
  readonly heard?: (s: number) => boolean;
  readonly events?: readonly { readonly atS: number; readonly event: EventName }[];
  readonly penS?: number;
  readonly seed?: number;
}

export interface Tape {
  readonly plan: RacePlan;
  readonly course: CourseLine;
  readonly inputs: readonly Input[];
  /** True own-clock second at a place; Infinity where the runner never came. */
  readonly crossingS: (distanceM: number) => number;
}

const AFTER_S = 15;
const STEP_S = 0.25;
/** Receivers speak of a moment ago. */
const LAG_S = 0.4;
/** No tape is longer than twice the plan of three kilometres. */
const MOST_STEPS = 8000;

/** A run along the course as a good receiver hears it. */
export const tapeOf = (wish: Wish = {}): Tape => {
  const racePlan = wish.plan ?? plan;
  const course = courseOf(racePlan.distanceM);
  const { normal } = chanceOf(wish.seed ?? 1);
  const evenMps = racePlan.distanceM / racePlan.goalS;
  const speedAt = wish.speedAt ?? (() => evenMps);
  // Places at quarter seconds; beyond the finish for a while, or as long as the runner stands around.
  const places = [0];
  while ((places.at(-1) ?? 0) < racePlan.distanceM + evenMps * AFTER_S && places.length < MOST_STEPS)
    places.push((places.at(-1) ?? 0) + Math.max(0, speedAt((places.length - 1) * STEP_S)) * STEP_S);
  const placeAt = (s: number): number => (s < 0 ? 0 : (places[Math.floor(s / STEP_S)] ?? places.at(-1) ?? 0));
  const inputs: Input[] = (wish.events ?? [{ atS: 0, event: 'start' }]).map(({ atS, event }) => ({
    type: 'event',
    atMs: START_MS + atS * 1000,
    event,
  }));
  for (let s = -(wish.penS ?? 20); s <= (places.length - 1) * STEP_S; s++) {
    if (wish.heard && !wish.heard(s)) continue;
    const m = placeAt(s - LAG_S);
    const on = pointAtM(course, Math.min(m, racePlan.distanceM + 100));
    const fix: Fix = {
      timestampMs: START_MS + s * 1000,
      ...pointOn(planeAt(on), 0.7 * normal(), 0.7 * normal()),
      accuracyM: 4,
      speedMps: s < 0 ? 0 : Math.max(0, speedAt(s) + 0.1 * normal()),
      altitudeM: null,
    };
    inputs.push({ type: 'fix', atMs: START_MS + s * 1000 + 120, fix });
  }
  inputs.sort((a, b) => a.atMs - b.atMs);
  const crossingS = (distanceM: number): number => {
    const i = places.findIndex((m) => m >= distanceM);
    const from = places[i - 1] ?? 0;
    return i < 0
      ? Number.POSITIVE_INFINITY
      : (i - 1 + (distanceM - from) / ((places[i] ?? 0) - from)) * STEP_S;
  };
  return { plan: racePlan, course, inputs, crossingS };
};

export interface Played {
  readonly run: Run;
  readonly calls: readonly Call[];
}

/** Folds a tape, or other inputs in its place. */
export const play = (tape: Tape, inputs: readonly RunInput[] = tape.inputs, settings?: Settings): Played => {
  let run = beginRun({ plan: tape.plan, course: tape.course, voice: plainVoice }, settings);
  const calls: Call[] = [];
  for (const input of inputs) {
    const stepped = step(run, input);
    run = stepped.run;
    calls.push(...stepped.calls);
  }
  return { run, calls };
};

/** The same to the end of the recording and what is still due. */
export const playOut = (
  tape: Tape,
  inputs: readonly RunInput[] = tape.inputs,
  settings?: Settings,
): Played => {
  const played = play(tape, inputs, settings);
  const last = flush(played.run);
  return { run: last.run, calls: [...played.calls, ...last.calls] };
};

/** Own-clock second at which a call begins. */
export const startS = (call: Call): number => (call.startMs - START_MS) / 1000;
