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

/** Seconds in which something sounds. */
export const talkS = ({ outcomes }: Rehearsal): number =>
  outcomes.reduce((sum, o) => sum + (o.type === 'call' ? (o.call.endMs - o.call.startMs) / 1000 : 0), 0);

export const callCount = ({ outcomes }: Rehearsal): number =>
  outcomes.filter((o) => o.type === 'call').length;

/** The rehearsal as JSON lines, the `end` line last. `skipped`: lines or points of the input that were left out. */
export const jsonLines = (rehearsal: Rehearsal, skipped: number): string => {
  const end = {
    type: 'end',
    finishS: roundedOrNull(rehearsal.finishS),
    distanceM: rounded(rehearsal.distanceM),
    cues: callCount(rehearsal),
    talkS: rounded(talkS(rehearsal)),
    fixes: rehearsal.fixes,
    skipped: skipped + rehearsal.unused,
  };
  const lines = rehearsal.outcomes.map((o) => lineOf(o, rehearsal.zeroMs));
  return [...lines, end].map((line) => `${JSON.stringify(line)}\n`).join('');
};
