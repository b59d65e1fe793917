import type { Mastering } from './master.ts';

/**
 * For a crowd. The voice of eSpeak NG is peakier than Flite's: with the chain for that one not even -14 LUFS is had under
 * -1 dBTP in French. A second compressor that is fifty times as quick gives -14.5 in all of them; beyond it, single peaks
 * come through in Spanish. Most of the gain is in the chain, so that the search for the rest does not overshoot.
 */
export const ESPEAK_LOUD: Mastering = {
  lufs: -14.5,
  shape:
    'highpass=f=300,equalizer=f=2000:t=q:w=0.4:g=12,acompressor=threshold=0.03:ratio=5:attack=2:release=50,' +
    'volume=14dB,acompressor=threshold=0.1:ratio=20:attack=0.01:release=5,volume=12dB',
};
