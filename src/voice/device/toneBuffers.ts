import type { Tone } from '../../core/cues/voicePort.ts';
import { renderTone } from '../tones/render.ts';

/** Tones as sounds of the device, each made when it is first asked for; anew where the device changed its rate. */
export const createToneBuffers = (): ((sampleRate: number) => (tone: Tone) => AudioBuffer) => {
  const tones = new Map<Tone, AudioBuffer>();
  return (sampleRate) => (tone) => {
    const known = tones.get(tone);
    if (known?.sampleRate === sampleRate) return known;
    const samples = renderTone(tone, sampleRate);
    const buffer = new AudioBuffer({ length: samples.length, sampleRate });
    buffer.getChannelData(0).set(samples);
    tones.set(tone, buffer);
    return buffer;
  };
};
