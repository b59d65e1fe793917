import { askToMixWithMusic } from './audioSession.ts';
import { silentWav } from './silentWav.ts';

/** What a button on the headset, the lock screen or a mirrored wrist means. */
export type ButtonPress = 'marker' | 'ask' | 'hush';

export interface Buttons {
  /** Takes the buttons; to be called in a touch. It takes the loudspeaker from other programs, music included. */
  readonly take: (onPress: (press: ButtonPress) => void) => Promise<boolean>;
  /** What the lock screen and the wrist show; at most every few seconds. */
  readonly show: (title: string, line: string) => void;
  readonly give: () => void;
}

/**
 * Headsets send one press as play or pause, two as next, three as previous; volume keys reach no page. Whatever comes, the
 * state stays "playing", or the next press would be the same action again.
 */
const PRESSES: readonly (readonly [MediaSessionAction, ButtonPress])[] = [
  ['play', 'marker'],
  ['pause', 'marker'],
  ['nexttrack', 'ask'],
  ['previoustrack', 'hush'],
];

/** Longer than what browsers take for a notification sound and leave without buttons. */
const LOOP_S = 12;

/** @param makePlayer  an audio element, so that tests can bring their own */
export const createButtons = (
  nav: Navigator = navigator,
  makePlayer: (url: string) => HTMLAudioElement = (url) => new Audio(url),
): Buttons => {
  const session: MediaSession | undefined = nav.mediaSession;
  let player: HTMLAudioElement | null = null;

  const keepPlaying = (): void => {
    if (player === null) return;
    session.playbackState = 'playing';
    player.play().catch(() => {});
  };

  return {
    take: async (onPress) => {
      if (session === undefined) return false;
      const audio = (nav as { audioSession?: { type: string } }).audioSession;
      if (audio !== undefined) audio.type = 'playback';
      player = makePlayer(silentWav(LOOP_S));
      player.loop = true;
      for (const [action, press] of PRESSES)
        session.setActionHandler(action, () => {
          keepPlaying();
          onPress(press);
        });
      try {
        await player.play();
        session.playbackState = 'playing';
        return true;
      } catch {
        // No touch, or no sound: the screen does all that the buttons do.
        return false;
      }
    },
    show: (title, artist) => {
      if (player === null) return;
      session.metadata = new MediaMetadata({ title, artist, album: 'Soundline' });
    },
    give: () => {
      if (player === null) return;
      for (const [action] of PRESSES) session.setActionHandler(action, null);
      session.playbackState = 'none';
      session.metadata = null;
      player.pause();
      player = null;
      // The runner's own music may come back.
      askToMixWithMusic(nav);
    },
  };
};
