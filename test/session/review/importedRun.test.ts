import { expect, test } from 'vitest';
import { importedFacts } from '../../../src/core/review/trend.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { importRuns } from '../../../src/log/importRun.ts';
import { foldForReview, isPractice, readRun } from '../../../src/session/review/reviewFold.ts';
import { inputsOf } from '../../../src/session/run/recovery.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const START_MS = Date.UTC(2026, 8, 6, 8);
const POINTS = 700;
/** Degrees of latitude for 10 m, about, and a wander of 2 m to either side, as receivers have it. */
const STEP_DEG = 0.00009;
const WANDER_DEG = 0.00003;

const wanderingTrack = (): string => {
  const points = Array.from({ length: POINTS }, (_, i) => {
    const lat = 54 + STEP_DEG * i;
    const lon = 7 + WANDER_DEG * Math.sin(1.7 * i);
    const time = new Date(START_MS + 3000 * i).toISOString();
    return `<trkpt lat="${lat.toFixed(6)}" lon="${lon.toFixed(6)}"><ele>${20 + (i % 50)}</ele><time>${time}</time></trkpt>`;
  });
  return `<gpx version="1.1"><trk><name>Sunday</name><trkseg>${points.join('')}</trkseg></trk></gpx>`;
};

test('a track from anywhere is a run that came to its end, not one that was broken off', async () => {
  const got = importRuns(wanderingTrack(), null);
  if (!got.ok) throw new Error(JSON.stringify(got.error));
  const [kept] = got.value.runs;
  const read = kept === undefined ? null : readRun(kept.planFile);
  if (kept === undefined || read === null) throw new Error('the plan of the run cannot be read');
  expect(read.isImported).toBe(true);
  expect(read.course?.elevationM).not.toBeNull();
  const digest = await foldForReview(read, inputsOf(kept.lines), {
    voice: voiceOf(english.pack, english.words),
    nowMs: () => 0,
    breathe: async () => {},
    onShare: () => {},
  });
  if (isPractice(digest)) throw new Error('a track is no practice session');
  // A jog from another receiver moves neither the goal nor what is believed of this phone.
  expect(importedFacts(digest, null)).toMatchObject({ result: null, receiver: null, openingOverS: null });
  const lastedS = 3 * (POINTS - 1);
  expect(Math.abs((digest.finishS ?? 0) - lastedS)).toBeLessThan(5);
});
