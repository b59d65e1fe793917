import { CLIP_PHASE, FRAME_SAMPLES, LATE_SAMPLES } from './frames.ts';

/** The frames of a sheaf that sound a clip. */
export interface Cut {
  /** The frame that the clip begins in, at `CLIP_PHASE`. */
  readonly first: number;
  /** Frames from there that have something to hear in them; the one before `first` carries the overlap, and is not in it. */
  readonly count: number;
}

/** A clip fades out over its last 8 ms: so much of its end may be left to the overlap of its last frame. */
const SOFT_END = 192;
/** A decoder's filter puts a sound out this much later, in the middle, than the frame has it. */
const FILTER_LATE = 240;

/** Where a clip [first sample, length] stands in the frames of its sprite. */
export const cutOf = (firstSample: number, length: number): Cut => {
  const first = Math.floor((firstSample + LATE_SAMPLES) / FRAME_SAMPLES);
  const heardTo = CLIP_PHASE + length - Math.min(SOFT_END, length >> 1) - FILTER_LATE;
  return { first, count: Math.max(1, Math.floor(heardTo / FRAME_SAMPLES) + 1) };
};
