import type { Digest } from '../core/review/digest.ts';
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
