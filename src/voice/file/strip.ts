import type { Part, Utterance } from '../../core/cues/voicePort.ts';
import type { Cut } from './cut.ts';
import { CLIP_PHASE, FRAME_S, FRAME_SAMPLES, RATE_HZ } from './frames.ts';
import type { Sheaf } from './sheaf.ts';

/** A sound's frames: which sheaf, and where in it. */
export interface Source {
  readonly sheaf: Sheaf;
  readonly cut: Cut;
}

/** Where the frames of clips and tones are; null where there are none. */
export type SourceOf = (sound: Part['sound']) => Source | null;

/** An utterance at its time, in seconds from the begin of the file. */
export interface Timed {
  readonly atS: number;
  readonly utterance: Utterance;
}

/** Frames that follow each other in a file, and the number of the first of them. */
export interface Stretch {
  readonly first: number;
  readonly frames: readonly Uint8Array[];
}

/** The file to be: stretches in order with silence between them, and how many frames it has in all. */
export interface Strip {
  readonly stretches: readonly Stretch[];
  readonly frames: number;
  /** When each utterance begins, to the sample, seconds; in the order that they were given in. */
  readonly beginsS: readonly number[];
}

/** Clips and tones begin with 10 ms of silence: the sound itself is to come at its time. */
const SILENT_HEAD_S = 0.01;
/** After the last sound: some players cut a file's end. */
const TAIL_S = 1;

/** The time of a clip that begins in that frame, seconds. */
const beginOf = (frame: number): number => frame * FRAME_S + CLIP_PHASE / RATE_HZ;

/** The frame in which a clip begins nearest to a time. */
const frameAt = (atS: number): number => Math.round((atS * RATE_HZ - CLIP_PHASE) / FRAME_SAMPLES);

/**
 * Lays utterances on the grid of frames: each begins within half a frame (12 ms) of its time. Inside an utterance a clip
 * needs a frame before it that carries the overlap, so it may come up to a frame and a half later than it would live;
 * what follows moves with it, and pauses stay as long as they are.
 * @param timed ascending, and apart
 */
export const layStrip = (timed: readonly Timed[], sourceOf: SourceOf, leastS: number): Strip => {
  const stretches: Stretch[] = [];
  const beginsS: number[] = [];
  // The next frame that nothing is in; the file's very first frame is silent.
  let free = 1;
  for (const { atS, utterance } of timed) {
    let begunS: number | null = null;
    let wantS = atS - SILENT_HEAD_S;
    let lastOffsetS = 0;
    for (const part of utterance.parts) {
      const source = sourceOf(part.sound);
      if (source === null) continue;
      wantS += part.offsetS - lastOffsetS;
      lastOffsetS = part.offsetS;
      const { sheaf, cut } = source;
      const first = Math.max(free + 1, frameAt(wantS));
      stretches.push({ first: first - 1, frames: sheaf.slice(cut.first - 1, cut.first + cut.count) });
      free = first + cut.count;
      wantS = beginOf(first);
      begunS ??= wantS;
    }
    beginsS.push(begunS ?? atS);
  }
  const frames = Math.ceil(Math.max(leastS, free * FRAME_S + TAIL_S) / FRAME_S);
  return { stretches, frames, beginsS };
};
