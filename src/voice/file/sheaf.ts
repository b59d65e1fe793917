import { type DoorError, doorError, err, ok, type Result } from '../../core/units/result.ts';
import { frameBytes, HEADER_BYTES, leansBack, SIDE_BYTES } from './header.ts';

/** The frames of an MP3, in order, without the one that only tells about the file. */
export type Sheaf = readonly Uint8Array[];

/** Names of the frame that tells about the file: with an even and with a changing bit rate. */
const TELLS = ['Info', 'Xing'];

const isAboutFile = (frame: Uint8Array): boolean => {
  const at = HEADER_BYTES + SIDE_BYTES;
  return TELLS.includes(String.fromCharCode(...frame.subarray(at, at + 4)));
};

/** Takes an MP3 of the pack's kind apart. Refused where its frames could not be joined anew. */
export const framesOf = (mp3: Uint8Array): Result<Sheaf, DoorError> => {
  const frames: Uint8Array[] = [];
  for (let at = 0; at < mp3.length; ) {
    const length = frameBytes(mp3, at);
    const place = `byte ${at}`;
    if (length === null || at + length > mp3.length)
      return err(doorError(place, 'a whole frame: mono, 24 kHz', String(mp3.subarray(at, at + 4))));
    const frame = mp3.subarray(at, at + length);
    if (leansBack(mp3, at))
      return err(doorError(place, 'a frame that holds its own bits', 'a bit reservoir'));
    if (frames.length > 0 || !isAboutFile(frame)) frames.push(frame);
    at += length;
  }
  return ok(frames);
};
