import type { Tone } from '../../core/cues/voicePort.ts';
import raw from './tones.json';

/** Where each tone stands in the file of tones, as clips do in a pack: [first sample, length] at 24 kHz. */
export interface ToneFrames {
  /** Name under public/voice. */
  readonly file: string;
  readonly bytes: number;
  /** Of the whole file, in hexadecimal. */
  readonly sha256: string;
  readonly tones: Readonly<Record<Tone, readonly [first: number, length: number]>>;
}

/** The one file of tones; every language has the same. */
export const toneFrames = raw as unknown as ToneFrames;
