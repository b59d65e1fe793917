/**
 * What is fixed about the frames that a pack's MP3 is made of: MPEG-2 Layer III, mono, 24 kHz, without a bit reservoir, so
 * that each frame holds all of its own bits. ISO/IEC 13818-3 (from memory), and measured on the pack itself
 * (test/voice/file).
 */
export const RATE_HZ = 24_000;

/** Samples that one frame decodes to. */
export const FRAME_SAMPLES = 576;

/** Seconds of one frame: 24 ms. */
export const FRAME_S = FRAME_SAMPLES / RATE_HZ;

/**
 * Sample n of what was encoded is sample n + this of a decoder that cuts nothing off: 576 of LAME's encoder, 529 of
 * every Layer III decoder.
 */
export const LATE_SAMPLES = 576 + 529;

/**
 * Clips begin at this sample of a frame, as a decoder puts them out. A frame's own samples reach the ear through a
 * filter that spreads each over 512, half of them before; a clip's first 240 samples are its soft lead. So the first
 * frame with anything to hear in it is the one that the clip begins in, and the one before it carries the overlap.
 */
export const CLIP_PHASE = 144;
