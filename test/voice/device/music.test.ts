import { describe, expect, test } from 'vitest';
import { askToMixWithMusic } from '../../../src/voice/device/audioSession.ts';
import { createButtons } from '../../../src/voice/device/buttons.ts';

/** A browser with the W3C's Audio Session and Media Session, as Safari has them. */
const safari = (plays = true) => {
  const audioSession = { type: 'auto' };
  const handlers = new Map<string, () => void>();
  const mediaSession = {
    playbackState: 'none',
    metadata: null,
    setActionHandler: (action: string, handler: (() => void) | null) => {
      if (handler === null) handlers.delete(action);
      else handlers.set(action, handler);
    },
  };
  const player = {
    loop: false,
    paused: true,
    play: async () => {
      if (!plays) throw new DOMException('no touch', 'NotAllowedError');
      player.paused = false;
    },
    pause: () => {
      player.paused = true;
    },
  };
  const nav = { audioSession, mediaSession } as unknown as Navigator;
  return {
    audioSession,
    mediaSession,
    handlers,
    player,
    nav,
    buttons: createButtons(nav, () => player as unknown as HTMLAudioElement),
  };
};

describe("the runner's own music", () => {
  test('goes on, and nothing of it is turned down', () => {
    const { nav, audioSession } = safari();
    expect(askToMixWithMusic(nav)).toBe(true);
    // 'transient' would duck it, 'playback' and 'transient-solo' would stop it.
    expect(audioSession.type).toBe('ambient');
  });

  test('mixes by itself where the browser has no audio session', () => {
    expect(askToMixWithMusic({} as Navigator)).toBe(false);
  });

  test('gives way to the headset buttons only when they are taken, and gets the sound back after', async () => {
    const { nav, buttons, audioSession, handlers, player, mediaSession } = safari();
    askToMixWithMusic(nav);
    const pressed: string[] = [];
    expect(await buttons.take((press) => pressed.push(press))).toBe(true);
    expect(audioSession.type).toBe('playback');
    expect([player.loop, player.paused]).toEqual([true, false]);
    expect([...handlers.keys()].sort()).toEqual(['nexttrack', 'pause', 'play', 'previoustrack']);
    for (const action of ['play', 'pause', 'nexttrack', 'previoustrack']) handlers.get(action)?.();
    expect(pressed).toEqual(['marker', 'marker', 'ask', 'hush']);
    expect(mediaSession.playbackState).toBe('playing');
    buttons.give();
    expect(audioSession.type).toBe('ambient');
    expect([player.paused, handlers.size]).toEqual([true, 0]);
  });

  test('is not taken where the player may not play', async () => {
    expect(await safari(false).buttons.take(() => {})).toBe(false);
  });
});
