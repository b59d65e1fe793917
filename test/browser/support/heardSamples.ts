import type { BrowserContext, Page } from 'playwright-core';

/** What went to the loudspeaker, and how the page's clock stands to the audio clock. */
export interface HeardSamples {
  /** Context second of each sound that began after a silence, to the sample. */
  readonly onsetsS: readonly number[];
  /**
   * Context ms less performance.now: the most that was seen. The audio clock stands still between two blocks, so it is
   * never seen ahead, often behind.
   */
  readonly clockOffsetMs: number;
  /** Seconds by which the browser says that the ear is behind. */
  readonly latencyS: number;
  /** performance.now at the latest press. */
  readonly pressedMs: number;
}

interface HeardWindow {
  heard: { onsetsS: number[]; clockOffsetMs: number; latencyS: number; pressedMs: number };
}

/** Louder than this is a sound, after so many seconds of less. Runs in the audio thread, where no page is busy. */
const EAR = `registerProcessor('ear', class extends AudioWorkletProcessor {
  lastLoud = -1e9;
  process([[samples]]) {
    if (samples) for (let i = 0; i < samples.length; i++) if (Math.abs(samples[i]) > 0.01) {
      const frame = currentFrame + i;
      if (frame - this.lastLoud > 0.1 * sampleRate) this.port.postMessage(frame / sampleRate);
      this.lastLoud = frame;
    }
    return true;
  }
});`;

const install = (script: string): void => {
  const worklet = URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));
  const heard: HeardWindow['heard'] = {
    onsetsS: [],
    clockOffsetMs: Number.NEGATIVE_INFINITY,
    latencyS: 0,
    pressedMs: 0,
  };
  (window as unknown as HeardWindow).heard = heard;
  const press = {
    handleEvent: () => {
      heard.pressedMs = performance.now();
    },
  };
  document.addEventListener('click', press, true);
  const { connect } = AudioNode.prototype;
  let context: BaseAudioContext | null = null;
  AudioNode.prototype.connect = function (this: AudioNode, ...given: unknown[]) {
    const to = given[0];
    if (to === this.context.destination && this instanceof GainNode && context !== this.context) {
      context = this.context;
      heard.clockOffsetMs = Number.NEGATIVE_INFINITY;
      const now = this.context as AudioContext;
      const master = this as AudioNode;
      now.audioWorklet.addModule(worklet).then(
        () => {
          const ear = new AudioWorkletNode(now, 'ear', { numberOfOutputs: 1 });
          ear.port.onmessage = (event) => heard.onsetsS.push(event.data);
          connect.call(master, ear as never);
          connect.call(ear, now.destination as never);
        },
        () => {},
      );
    }
    return (connect as (...all: unknown[]) => AudioNode).apply(this, given);
  } as typeof AudioNode.prototype.connect;
  setInterval(() => {
    if (context === null) return;
    const now = context as AudioContext;
    const beforeMs = performance.now();
    heard.clockOffsetMs = Math.max(heard.clockOffsetMs, 1000 * now.currentTime - beforeMs);
    heard.latencyS = now.outputLatency || now.baseLatency;
  }, 7);
};

/** Listens at the loudspeaker; before the page is opened, in a context that lets the listener past the page's policy. */
export const listen = (context: BrowserContext): Promise<unknown> => context.addInitScript(install, EAR);

export const heardOf = (page: Page): Promise<HeardSamples> =>
  page.evaluate(() => (window as unknown as HeardWindow).heard);

/** How far the nearest onset lies from an instant, seconds; behind it positive. */
export const offFrom = ({ onsetsS }: HeardSamples, atS: number): number =>
  onsetsS.reduce(
    (best, s) => (Math.abs(s - atS) < Math.abs(best) ? s - atS : best),
    Number.POSITIVE_INFINITY,
  );
