const RATE_HZ = 8000;
const HEAD_BYTES = 44;

const ascii = (view: DataView, at: number, text: string): void => {
  for (let i = 0; i < text.length; i++) view.setUint8(at + i, text.charCodeAt(i));
};

/**
 * A WAV file without anything to hear, as a data address: 16 bit mono whose lowest bit flips now and then, since Firefox
 * takes a file of zeros for no sound at all (w3c/mediasession#328). RIFF layout: Microsoft, Multimedia Programming
 * Interface and Data Specifications 1.0, 1991 (memory).
 */
export const silentWav = (seconds: number): string => {
  const samples = Math.round(seconds * RATE_HZ);
  const view = new DataView(new ArrayBuffer(HEAD_BYTES + 2 * samples));
  ascii(view, 0, 'RIFF');
  view.setUint32(4, view.byteLength - 8, true);
  ascii(view, 8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, RATE_HZ, true);
  view.setUint32(28, 2 * RATE_HZ, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  ascii(view, 36, 'data');
  view.setUint32(40, 2 * samples, true);
  for (let i = 0; i < samples; i += RATE_HZ / 100) view.setInt16(HEAD_BYTES + 2 * i, 1, true);
  let text = '';
  const bytes = new Uint8Array(view.buffer);
  for (let i = 0; i < bytes.length; i += 4096) text += String.fromCharCode(...bytes.subarray(i, i + 4096));
  return `data:audio/wav;base64,${btoa(text)}`;
};
