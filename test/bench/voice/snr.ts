/** How far the crowd is below the voice, dB; null is clean. */
export type Snr = number | null;

export const snrName = (snrDb: Snr): string => (snrDb === null ? 'clean' : `+${snrDb} dB`);
