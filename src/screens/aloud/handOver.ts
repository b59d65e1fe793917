const MP3 = 'audio/mpeg';

/** Whether this browser hands sound files to other apps (W3C Web Share, level 2). */
export const canHandOver = (): boolean => {
  const sample = { files: [new File([], 'a.mp3', { type: MP3 })] };
  return 'canShare' in navigator && navigator.canShare(sample);
};

/** Lets the runner choose an app for the file. To be called soon after a touch; who changes their mind loses nothing. */
export const handOver = async (blob: Blob, name: string): Promise<void> => {
  const file = new File([blob], name, { type: MP3 });
  await navigator.share({ files: [file] }).catch(() => undefined);
};
