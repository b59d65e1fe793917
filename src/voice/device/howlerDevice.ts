import { Howl, Howler } from 'howler';

// By default Howler suspends its context after 30 s without a sound of its own, which cuts off nodes that we schedule
// on it, and on iOS may never wake again. So this stands before anything else.
Howler.autoSuspend = false;

/** The parts of howler 2.2.4 that hold the decoded sound; it has no public door to them. */
interface DecodedHowl {
  readonly _sounds?: readonly { readonly _node?: { bufferSource?: AudioBufferSourceNode | null } }[];
  readonly _refreshBuffer?: (sound: unknown) => void;
  readonly _cleanBuffer?: (node: unknown) => void;
}

/**
 * The decoded sound of a loaded Howl. Howler can play a sprite only "now" and chains by timer; with the buffer in hand
 * the clips of a call can be set on the audio clock beforehand.
 * @throws Error when this howler keeps its sound elsewhere
 */
const decodedOf = (howl: Howl): AudioBuffer => {
  const inside = howl as unknown as DecodedHowl;
  const sound = inside._sounds?.[0];
  inside._refreshBuffer?.(sound);
  const buffer = sound?._node?.bufferSource?.buffer;
  inside._cleanBuffer?.(sound?._node);
  if (!buffer) throw new Error('howler: the decoded sound is not where version 2.2.4 keeps it');
  return buffer;
};

export interface LoadedSound {
  readonly sound: AudioBuffer;
  /** Lets go of howler's own hold on it. */
  readonly forget: () => void;
}

/**
 * Loads and decodes a sound file. The first call makes the audio context; where that does not run at 44.1 kHz (most
 * Android phones) howler then closes it and makes another, so `contextNow` must be asked anew after this returns.
 * @throws Error when the file cannot be had or decoded
 */
export const loadSound = (url: string): Promise<LoadedSound> =>
  new Promise((resolve, reject) => {
    const howl = new Howl({
      src: [url],
      format: ['mp3'],
      pool: 1,
      onload: () => {
        try {
          resolve({ sound: decodedOf(howl), forget: () => howl.unload() });
        } catch (error) {
          reject(error);
        }
      },
      onloaderror: (_id, why) => reject(new Error(`${url}: ${String(why)}`)),
    });
  });

export interface Output {
  readonly context: AudioContext;
  /** Where sources connect. */
  readonly gain: GainNode;
}

/** The context and master gain that are alive now; null before the first sound was asked for. Never keep them. */
export const outputNow = (): Output | null =>
  Howler.ctx && Howler.masterGain ? { context: Howler.ctx, gain: Howler.masterGain } : null;

/** Closes a context that stands still and makes a new one. Decoded sounds outlive it. */
export const rebuildOutput = (): void => {
  Howler.unload();
};
