/** W3C Audio Session, of which only Safari 16.4 and later has a part; everything else mixes by itself. */
type SessionType = 'auto' | 'playback' | 'transient' | 'transient-solo' | 'ambient' | 'play-and-record';

/**
 * Asks that the runner's own music goes on as loud as it was, with the calls over it: nothing that is not ours is turned
 * down. Such a sound obeys the silent switch where no earphones are in. Must be set before the audio context is made.
 * @returns false where the browser has no such thing
 */
export const askToMixWithMusic = (nav: Navigator = navigator): boolean => {
  const session = (nav as { audioSession?: { type: SessionType } }).audioSession;
  if (session === undefined) return false;
  session.type = 'ambient';
  return true;
};
