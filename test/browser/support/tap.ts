import type { Page } from 'playwright-core';

/** A source node that was started in the page's audio graph. */
export interface Started {
  /** Context time at the call of `start`, and the time that the sound was set to. */
  readonly nowS: number;
  readonly whenS: number;
  /** Which stretch of the buffer, and how long the whole buffer is. */
  readonly fromS: number;
  readonly lengthS: number | null;
  readonly bufferS: number;
  /** performance.now at the call of `start`. */
  readonly pageMs: number;
}

/** Loudness of one short stretch of what went to the loudspeaker. */
export interface Block {
  readonly atS: number;
  readonly rms: number;
}

interface TapWindow {
  tap: {
    started: Started[];
    blocks: Block[];
    rate: number;
    /** Every context that something was connected to the loudspeaker of, oldest first. */
    contexts: BaseAudioContext[];
  };
}

/** Runs in the page, before its scripts: listens at the loudspeaker, whoever connects to it. */
const install = (): void => {
  const tap: TapWindow['tap'] = { started: [], blocks: [], rate: 0, contexts: [] };
  (window as unknown as TapWindow).tap = tap;
  const connect = AudioNode.prototype.connect as (
    this: AudioNode,
    to: AudioNode,
    ...rest: number[]
  ) => AudioNode;
  const taps = new Map<BaseAudioContext, AudioNode>();

  const tapOf = (context: BaseAudioContext): AudioNode => {
    const known = taps.get(context);
    if (known) return known;
    // Deprecated, but the only tap that needs no script of its own, which the page's policy would refuse.
    const processor = context.createScriptProcessor(1024, 1, 1);
    tap.contexts.push(context);
    tap.rate = context.sampleRate;
    processor.onaudioprocess = (event) => {
      const samples = event.inputBuffer.getChannelData(0).slice();
      let squares = 0;
      for (const value of samples) squares += value * value;
      // playbackTime is when the output block would sound: one block after the input block began.
      const atS = event.playbackTime - samples.length / context.sampleRate;
      tap.blocks.push({ atS, rms: Math.sqrt(squares / samples.length) });
    };
    connect.call(processor, context.destination);
    taps.set(context, processor);
    return processor;
  };

  AudioNode.prototype.connect = function (this: AudioNode, to: AudioNode, ...rest: number[]) {
    if (to === this.context.destination) connect.call(this, tapOf(this.context));
    return connect.call(this, to, ...rest);
  } as typeof AudioNode.prototype.connect;

  const start = AudioBufferSourceNode.prototype.start;
  AudioBufferSourceNode.prototype.start = function (whenS = 0, fromS = 0, lengthS?: number) {
    tap.started.push({
      nowS: this.context.currentTime,
      whenS,
      fromS,
      lengthS: lengthS ?? null,
      bufferS: this.buffer?.duration ?? 0,
      pageMs: performance.now(),
    });
    if (lengthS === undefined) start.call(this, whenS, fromS);
    else start.call(this, whenS, fromS, lengthS);
  };
};

/** Puts the tap on a page; before it is opened. */
export const tapSound = (page: Page): Promise<unknown> => page.addInitScript(install);

export interface Tapped {
  readonly started: readonly Started[];
  readonly blocks: readonly Block[];
}

/** Everything that the page's audio graph did so far. howler's one-sample unlocking buffers are left out. */
export const tapped = async (page: Page): Promise<Tapped> => {
  const { started, blocks } = await page.evaluate(() => {
    const { tap } = window as unknown as TapWindow;
    return { started: tap.started, blocks: tap.blocks };
  });
  return { started: started.filter((s) => s.bufferS > 0.01), blocks };
};

/** State, rate and clock of every audio context so far, oldest first. */
export const contextsOf = (
  page: Page,
): Promise<{ state: AudioContextState; sampleRate: number; currentTime: number }[]> =>
  page.evaluate(() =>
    (window as unknown as TapWindow).tap.contexts.map(({ state, sampleRate, currentTime }) => ({
      state,
      sampleRate,
      currentTime,
    })),
  );

/** What a phone call does to the sound: the newest context is suspended from outside. */
export const interruptSound = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const context = (window as unknown as TapWindow).tap.contexts.at(-1) as AudioContext;
    await context.suspend();
  });

/** A fault of some phones: the newest context says that it runs, but its clock stands. */
export const freezeSound = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const context = (window as unknown as TapWindow).tap.contexts.at(-1) as AudioContext;
    const { currentTime } = context;
    Object.defineProperty(context, 'currentTime', { get: () => currentTime });
  });
