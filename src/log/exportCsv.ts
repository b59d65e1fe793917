import type { Digest } from '../core/review/digest.ts';
import type { PracticeDigest } from '../core/review/practiceDigest.ts';
import { written } from '../core/units/message.ts';
import { csvOf } from './exportTable.ts';

const HEAD = [
  'atS',
  'distanceM',
  'speedMps',
  'aheadS',
  'aheadSdS',
  'projectedFinishS',
  'heartBpm',
  'signal',
  'call',
  'why',
] as const;

const rounded = (x: number | null, digits: number): number | null =>
  x === null ? null : Math.round(x * 10 ** digits) / 10 ** digits;

/** A run as a table: the estimate along the way and every call in its place, in order of time. Units in the head. */
export const runCsv = (digest: Digest): string => {
  const samples = digest.samples.map((s) => ({
    atS: s.atS,
    row: [
      rounded(s.atS, 1),
      rounded(s.distanceM, 1),
      rounded(s.speedMps, 3),
      rounded(s.aheadS, 2),
      rounded(s.aheadSdS, 2),
      rounded(s.projectedS, 1),
      rounded(s.heartBpm, 0),
      s.signal,
      null,
      null,
    ],
  }));
  const calls = digest.calls.map((c) => ({
    atS: c.startS,
    row: [
      rounded(c.startS, 1),
      rounded(c.distanceM, 1),
      null,
      rounded(c.aheadS, 2),
      rounded(c.aheadSdS, 2),
      null,
      null,
      null,
      c.text === '' ? c.kind : c.text,
      written(c.why),
    ],
  }));
  const rows = [...samples, ...calls].sort((a, b) => a.atS - b.atS).map(({ row }) => row);
  return csvOf(HEAD, rows);
};

const PRACTICE_HEAD = ['atS', 'leg', 'kind', 'paceSPerKm', 'askedSPerKm', 'heartBpm', 'call', 'why'] as const;

/** A session as a table: pace against what was asked, and every call in its place, in order of time. Legs count from 1. */
export const practiceCsv = ({ legs, samples, calls }: PracticeDigest): string => {
  const endsS: number[] = [];
  for (const { timeS } of legs) endsS.push((endsS.at(-1) ?? 0) + timeS);
  const legAt = (atS: number): readonly [number | null, string | null] => {
    const i = endsS.findIndex((endS) => atS < endS);
    return i < 0 ? [null, null] : [i + 1, legs[i]?.kind ?? null];
  };
  const sampled = samples.map((s) => ({
    atS: s.atS,
    row: [
      rounded(s.atS, 1),
      ...legAt(s.atS),
      rounded(s.paceSPerKm, 1),
      rounded(s.askedSPerKm, 1),
      rounded(s.heartBpm, 0),
      null,
      null,
    ],
  }));
  const called = calls.map((c) => ({
    atS: c.startS,
    row: [
      rounded(c.startS, 1),
      ...legAt(c.startS),
      null,
      null,
      null,
      c.text === '' ? c.kind : c.text,
      written(c.why),
    ],
  }));
  const rows = [...sampled, ...called].sort((a, b) => a.atS - b.atS).map(({ row }) => row);
  return csvOf(PRACTICE_HEAD, rows);
};
