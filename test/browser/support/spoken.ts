import { spoken as english } from '../../../src/languages/en/spoken.ts';
import type { Pack } from '../../../src/voice/packs/pack.ts';
import { wordsOfClips } from '../../../src/voice/words/words.ts';
import type { Started } from './tap.ts';

/** One call as the audio graph had it. */
export interface SpokenCall {
  /** Clips in order, their names joined by blanks; tones are left out. */
  readonly words: string;
  readonly tone: boolean;
  /** Context seconds. */
  readonly beginS: number;
  readonly endS: number;
  /** performance.now at the instant when it begins to sound, output latency apart. */
  readonly beginPageMs: number;
  readonly sources: readonly Started[];
}

/** A start inside the sprite this near to a clip's begin is that clip's: an encoder's delay, and clips lie 0.1 s apart. */
const SAME_S = 0.06;

/** The clip of the sprite that a source plays; null for a tone. */
const clipIn =
  (pack: Pack) =>
  (s: Started): string | null => {
    if (s.bufferS <= pack.samples / pack.sampleRateHz - 1) return null;
    const found = Object.entries(pack.clips).find(
      ([, [start]]) => Math.abs((start ?? 0) / pack.sampleRateHz - s.fromS) < SAME_S,
    );
    return found?.[0] ?? `(nothing at ${s.fromS} s of the sprite)`;
  };

const endOf = (s: Started): number => s.whenS + (s.lengthS ?? s.bufferS);

/** The audio clock may move on by some blocks of 3 ms while the sources of one call are set. */
const ONE_GO_S = 0.1;

/** Sources that were set in one go are one call. @param pack  of the language that is spoken */
export const spokenCalls = (started: readonly Started[], pack: Pack = english.pack): SpokenCall[] => {
  const clipOf = clipIn(pack);
  const calls: Started[][] = [];
  for (const s of started) {
    const last = calls.at(-1)?.at(-1);
    // Within a call no gap is longer than between two sentences.
    if (last && Math.abs(s.nowS - last.nowS) < ONE_GO_S && s.whenS - endOf(last) <= 0.5)
      calls.at(-1)?.push(s);
    else calls.push([s]);
  }
  return calls.map((sources) => {
    const first = sources[0] as Started;
    return {
      words: wordsOfClips(sources.flatMap((s) => clipOf(s) ?? [])),
      tone: sources.some((s) => clipOf(s) === null),
      beginS: first.whenS,
      endS: Math.max(...sources.map(endOf)),
      beginPageMs: first.pageMs + 1000 * (first.whenS - first.nowS),
      sources,
    };
  });
};

/** Words without what cannot be heard: capitals and stops. */
export const heardWords = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[.,?!]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
