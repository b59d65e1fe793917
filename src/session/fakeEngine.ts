import type { Call } from '../core/cues/call.ts';
import type { Drift } from '../core/drift/drift.ts';
import type { Input } from '../core/estimate/input.ts';
import type { Progress } from '../core/estimate/progress.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import type { RunConfig } from '../core/run/run.ts';

/** Stand-in until src/core/run lands. */
export interface FakeRun {
  readonly config: RunConfig;
  readonly startMs: number | null;
  readonly atMs: number;
  readonly distanceM: number;
  readonly speedMps: number;
  readonly nextM: number;
  readonly said: number;
}

export const beginRun = (config: RunConfig): FakeRun => ({
  config,
  startMs: null,
  atMs: 0,
  distanceM: 0,
  speedMps: 0,
  nextM: 1000,
  said: 0,
});

export const step = (run: FakeRun, input: Input): { run: FakeRun; calls: readonly Call[] } => {
  const { distanceM } = progressOf(run, input.atMs);
  let next: FakeRun = { ...run, atMs: input.atMs, distanceM };
  if (input.type === 'event' && input.event === 'start') next = { ...next, startMs: input.atMs };
  if (input.type === 'fix') next = { ...next, speedMps: input.fix.speedMps ?? run.speedMps };
  const calls: Call[] = [];
  if (distanceM >= next.nextM || (input.type === 'event' && input.event === 'ask')) {
    const aheadS = driftOf(next, input.atMs).aheadS;
    const saying = {
      kind: 'checkpoint' as const,
      place: { tenths: Math.round(distanceM / 100), unit: 'km' as const },
      timeS: Math.round((input.atMs - (next.startMs ?? 0)) / 1000),
      ahead: {
        side: aheadS > 0 ? ('up' as const) : ('down' as const),
        seconds: Math.abs(Math.round(aheadS)),
        sure: true,
      },
    };
    const utterance = run.config.voice.utter(saying, 'long');
    calls.push({
      id: run.said,
      saying,
      form: 'long',
      utterance,
      decidedMs: input.atMs,
      startMs: input.atMs + 100,
      endMs: input.atMs + 100 + Math.max(1, utterance.durationS) * 1000,
      expiresMs: input.atMs + 5000,
      atM: next.nextM,
      aheadS,
      aheadSdS: 1,
      distanceM,
      why: 'stand-in',
    });
    next = { ...next, nextM: next.nextM + 1000, said: run.said + 1 };
  }
  return { run: next, calls };
};

export const progressOf = (run: FakeRun, atMs: number): Progress => ({
  atMs,
  startMs: run.startMs,
  distanceM: Math.min(
    run.config.plan.distanceM,
    run.distanceM +
      (run.startMs === null || run.atMs === 0 ? 0 : (run.speedMps * Math.max(0, atMs - run.atMs)) / 1000),
  ),
  distanceSdM: 4,
  speedMps: run.speedMps,
  speedSdMps: 0.1,
  baseSpeedMps: run.speedMps,
  signal: run.speedMps > 0 ? 'good' : 'waiting',
  sinceFixS: run.speedMps > 0 ? (atMs - run.atMs) / 1000 : Number.POSITIVE_INFINITY,
});

export const driftOf = (run: FakeRun, atMs: number): Drift => {
  const p = progressOf(run, atMs);
  const { goalS, distanceM } = run.config.plan;
  const elapsedS = run.startMs === null ? 0 : (atMs - run.startMs) / 1000;
  return {
    aheadS: (p.distanceM / distanceM) * goalS - elapsedS,
    aheadSdS: 1.2,
    projectedFinishS: p.speedMps > 0 ? elapsedS + (distanceM - p.distanceM) / p.speedMps : null,
    projectedFinishSdS: 10,
    neededPaceSPerKm: 300,
    goalChance: 0.6,
  };
};

export const fakePlan: RacePlan = {
  version: 1,
  kind: 'race',
  name: 'Demo half',
  distanceM: 21097.5,
  goalS: 6240,
  goalBy: 'own',
  unit: 'km',
  pacing: 'pace',
  opening: { untilM: 1500, quickerSPerKm: 6 },
  push: { fromM: 18097.5, quickerSPerKm: 4 },
  checkpointsM: [5000, 10000, 15000, 20000],
  stations: [],
  fuel: [],
};

export const fakeInputs = (plan: RacePlan, fromMs: number): Input[] => {
  const inputs: Input[] = [{ type: 'event', atMs: fromMs, event: 'start' }];
  for (let t = 1; t < plan.goalS + 30; t++) {
    inputs.push({
      type: 'fix',
      atMs: fromMs + t * 1000,
      fix: {
        timestampMs: fromMs + t * 1000,
        latitudeDeg: 54,
        longitudeDeg: 7,
        accuracyM: 5,
        speedMps: (plan.distanceM / plan.goalS) * (1 + 0.02 * Math.sin(t / 400)),
        altitudeM: null,
      },
    });
  }
  return inputs;
};
