import type { Digest, Sample } from './digest.ts';

/** Index of the first sample at or beyond a place; the length of the list where there is none. */
const indexAt = (samples: readonly Sample[], distanceM: number): number => {
  let [low, high] = [0, samples.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((samples[middle]?.distanceM ?? 0) < distanceM) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** A number of the samples at a place, on the straight between its neighbours. */
const between = (a: Sample, b: Sample, distanceM: number, of: (s: Sample) => number): number => {
  const k = (distanceM - a.distanceM) / Math.max(1e-9, b.distanceM - a.distanceM);
  return of(a) + k * (of(b) - of(a));
};

/** Own-clock seconds at which a place was passed; null where the run did not come there. */
export const passedAtS = ({ samples }: Digest, distanceM: number): number | null => {
  if (distanceM <= 0) return 0;
  const i = indexAt(samples, distanceM);
  const b = samples[i];
  if (b === undefined) return null;
  const a = samples[i - 1];
  // Before the first sample: on the straight from the start line.
  return a === undefined ? (b.atS * distanceM) / b.distanceM : between(a, b, distanceM, (s) => s.atS);
};

/** The sample nearest before a place. */
export const sampleAt = ({ samples }: Digest, distanceM: number): Sample | null =>
  samples[indexAt(samples, distanceM)] ?? null;

/** Mean pace between two places, seconds per kilometre; null where the run did not come there. */
export const paceBetween = (digest: Digest, fromM: number, toM: number): number | null => {
  const [from, to] = [passedAtS(digest, fromM), passedAtS(digest, toM)];
  return from === null || to === null || toM <= fromM ? null : ((to - from) / (toM - fromM)) * 1000;
};
