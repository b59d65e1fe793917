import type { Call } from '../core/cues/call.ts';
import type { Outcome, Rehearsal } from './rehearse.ts';

/** Milliseconds of seconds, millimetres of metres: finer is noise. */
export const rounded = (x: number): number => Math.round(x * 1000) / 1000;
const roundedOrNull = (x: number | null): number | null => (x === null ? null : rounded(x));

const ownClockS = (atMs: number, zeroMs: number): number => rounded((atMs - zeroMs) / 1000);

/** A call as a line. */
export const cueLine = (call: Call, zeroMs: number): object => {
  const ownS = (atMs: number): number => ownClockS(atMs, zeroMs);
  return {
    type: 'cue',
    kind: call.saying.kind,
    tS: ownS(call.decidedMs),
    startS: ownS(call.startMs),
    endS: ownS(call.endMs),
    text: call.utterance.text,
    ...(call.atM === null ? {} : { atM: rounded(call.atM) }),
    aheadS: roundedOrNull(call.aheadS),
    aheadSdS: roundedOrNull(call.aheadSdS),
    distanceM: roundedOrNull(call.distanceM),
  };
};

const lineOf = (outcome: Outcome, zeroMs: number): object => {
  if (outcome.type === 'trace') {
    const { progress, drift } = outcome;
    return {
      type: 'trace',
      tS: ownClockS(progress.atMs, zeroMs),
      distanceM: rounded(progress.distanceM),
      distanceSdM: rounded(progress.distanceSdM),
      speedMps: rounded(progress.speedMps),
      aheadS: roundedOrNull(drift?.aheadS ?? null),
      aheadSdS: roundedOrNull(drift?.aheadSdS ?? null),
    };
  }
  return cueLine(outcome.call, zeroMs);
};

export const callsOf = ({ outcomes }: Pick<Rehearsal, 'outcomes'>): readonly Call[] =>
  outcomes.flatMap((o) => (o.type === 'call' ? [o.call] : []));

/** Seconds in which something sounds. */
export const talkS = (calls: readonly Call[]): number =>
  calls.reduce((sum, c) => sum + (c.endMs - c.startMs) / 1000, 0);

/** How a run ended. */
export interface End {
  /** Own-clock seconds; null where the run did not come to its end. */
  readonly finishS: number | null;
  readonly distanceM: number;
  readonly fixes: number;
  /** Lines, points and fixes that were left out. */
  readonly skipped: number;
}

/** Lines of JSON, the `end` line last. */
export const withEnd = (lines: readonly object[], calls: readonly Call[], end: End): string => {
  const last = {
    type: 'end',
    finishS: roundedOrNull(end.finishS),
    distanceM: rounded(end.distanceM),
    cues: calls.length,
    talkS: rounded(talkS(calls)),
    fixes: end.fixes,
    skipped: end.skipped,
  };
  return [...lines, last].map((line) => `${JSON.stringify(line)}\n`).join('');
};

/** The rehearsal as JSON lines, the `end` line last. `skipped`: lines or points of the input that were left out. */
export const jsonLines = (rehearsal: Rehearsal, skipped: number): string => {
  const { outcomes, zeroMs, finishS, distanceM, fixes, unused } = rehearsal;
  const lines = outcomes.map((o) => lineOf(o, zeroMs));
  return withEnd(lines, callsOf(rehearsal), { finishS, distanceM, fixes, skipped: skipped + unused });
};
