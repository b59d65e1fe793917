/**
 * What is in a voice pack: where each clip stands in the sprite. Lengths in samples at `sampleRateHz`, the rate at which
 * the MP3 was encoded; every variant has the same times.
 */
export interface Pack {
  readonly version: 1;
  /** BCP 47 tag of the words that it says. */
  readonly language: string;
  /** Which engine and voice made it, for people. */
  readonly voice: string;
  readonly sampleRateHz: number;
  /** Length of the whole sprite. */
  readonly samples: number;
  readonly variants: Readonly<Record<Loudness, PackFile>>;
  /** Words of the clip to [first sample, length]. */
  readonly clips: Readonly<Record<string, readonly number[]>>;
}

/** 'normal' is levelled for a quiet street; 'loud' is harder compressed, for a crowd. */
export const LOUDNESS = ['normal', 'loud'] as const;
export type Loudness = (typeof LOUDNESS)[number];

export interface PackFile {
  /** Name under public/voice. */
  readonly file: string;
  readonly bytes: number;
  /** Of the whole file, in hexadecimal. */
  readonly sha256: string;
}

/** Where a clip stands, in seconds of the sprite; null where the pack does not have it. */
export const clipSpan = (
  pack: Pack,
  clip: string,
): { readonly startS: number; readonly durationS: number } | null => {
  const span = pack.clips[clip];
  const [start, length] = span ?? [];
  return start === undefined || length === undefined
    ? null
    : { startS: start / pack.sampleRateHz, durationS: length / pack.sampleRateHz };
};
