import type { Mastering } from './master.ts';

/**
 * For a crowd. The voice of eSpeak NG is peakier than Flite's: under -1 dBTP the chain for that one brings it to -14.3 LUFS at
 * best in German, and not that far in French. A second compressor that is fifty times as quick brings all of them to -14.
 */
export const ESPEAK_LOUD: Mastering = {
  lufs: -14,
  shape:
    'highpass=f=300,equalizer=f=2000:t=q:w=0.4:g=12,acompressor=threshold=0.03:ratio=5:attack=2:release=50,' +
    'volume=14dB,acompressor=threshold=0.1:ratio=20:attack=0.01:release=5',
};
