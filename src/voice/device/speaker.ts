import { type ReadonlySignal, signal } from '@preact/signals';
import type { Utterance } from '../../core/cues/voicePort.ts';
import type { Pack } from '../packs/pack.ts';
import { audioClockOf } from './audioClock.ts';
import { askToMixWithMusic } from './audioSession.ts';
import { createClockLine } from './clockLine.ts';
import type { Ear, Heard } from './ear.ts';
import { loadSound, type Output, outputNow, rebuildOutput } from './howlerDevice.ts';
import type { PageTime } from './pageTime.ts';
import { createPulse } from './pulse.ts';
import { decoderShiftS } from './score.ts';
import { createSounding } from './sounding.ts';
import { createToneBuffers } from './toneBuffers.ts';

/** `asleep`: loaded, but the browser wants a touch first, or something took the sound away. */
export type SpeakerState = 'loading' | 'asleep' | 'ready' | 'failed';

export interface Speaker extends Ear {
  readonly state: ReadonlySignal<SpeakerState>;
  /** Why loading failed, one line. */
  readonly trouble: ReadonlySignal<string | null>;
  /** To be called inside a touch or key press. True once the audio clock moves; false when it does not within a second. */
  readonly wake: () => Promise<boolean>;
  /**
   * Speaks with this pack from now on, or once it is there: what it has stays until then. False where it cannot be had, or
   * another one was asked for meanwhile.
   */
  readonly use: (pack: Pack, spriteUrl: string) => Promise<boolean>;
}

/** A pack and where its sound is. */
interface PackSource {
  readonly pack: Pack;
  readonly spriteUrl: string;
}

const LOOK_EVERY_MS = 500;
const WAKE_WITHIN_MS = 1000;
const WAKE_LOOK_MS = 20;
/** A runner waits this long for the voice, not longer: 1.3 MB on a slow line. */
const LOAD_WITHIN_MS = 15_000;

/** True as soon as the audio clock moves; false when it does not within a second. */
const isMoving = async (context: AudioContext): Promise<boolean> => {
  const fromS = context.currentTime;
  for (let waitedMs = 0; waitedMs < WAKE_WITHIN_MS; waitedMs += WAKE_LOOK_MS) {
    if (context.currentTime > fromS) return true;
    await new Promise((done) => setTimeout(done, WAKE_LOOK_MS));
  }
  return false;
};

/**
 * Loads the pack and makes the one speaker of the page.
 * @param begin  when to load, unless a touch wakes the speaker before: making an audio context can hold a page up for a
 *   tenth of a second, which the first picture should not have to wait for
 * @param unknownMs  what the browser does not know of the earphones' delay: calls begin so much earlier
 */
export const createSpeaker = (
  pack: Pack,
  spriteUrl: string,
  time: PageTime,
  begin: (load: () => void) => void = (load) => load(),
  unknownMs: () => number = () => 0,
): Speaker => {
  const state = signal<SpeakerState>('loading');
  const trouble = signal<string | null>(null);
  const pulse = createPulse();
  const line = createClockLine();
  let wanted: PackSource = { pack, spriteUrl };
  let sprite: AudioBuffer | null = null;
  let spoken = pack;
  let forget = (): void => {};
  let shiftS = 0;
  let touched = false;
  const sounding = createSounding();
  const tonesAt = createToneBuffers();

  const resume = (output: Output): void => {
    if (output.context.state !== 'running') output.context.resume().catch(() => {});
  };

  const look = (): void => {
    const output = outputNow();
    if (output === null || sprite === null) return;
    const beat = pulse.look(output.context.currentTime, time.nowMs());
    if (beat === 'moving') {
      line.see(output.context.currentTime, time.nowMs());
      state.value = 'ready';
      return;
    }
    if (state.value === 'ready' && beat === 'still') {
      // What waits would come out late and stale when the sound returns.
      sounding.stop();
      state.value = 'asleep';
    }
    if (!touched) return;
    if (beat === 'dead' && output.context.state === 'running') rebuildOutput();
    else resume(output);
  };

  /** False where the sound cannot be had, or is not wanted any more when it is there. */
  const take = async (source: PackSource): Promise<boolean> => {
    try {
      const loadedNow = await loadSound(source.spriteUrl);
      if (source !== wanted) {
        loadedNow.forget();
        return false;
      }
      const { sound } = loadedNow;
      shiftS = decoderShiftS(source.pack, sound.getChannelData(0), sound.sampleRate);
      // What is being said is said to its end: its sources have the old sound themselves.
      forget();
      forget = loadedNow.forget;
      spoken = source.pack;
      sprite = sound;
      trouble.value = null;
      if (state.value !== 'ready') state.value = 'asleep';
      look();
      return true;
    } catch (error) {
      if (source === wanted && sprite === null) {
        state.value = 'failed';
        trouble.value = error instanceof Error ? error.message : String(error);
      }
      return false;
    }
  };

  const load = async (): Promise<void> => {
    askToMixWithMusic();
    time.every(LOOK_EVERY_MS, look);
    await take(wanted);
  };

  let loaded: Promise<void> | null = null;
  let tellBegun = (): void => {};
  const began = new Promise<void>((done) => {
    tellBegun = done;
  });
  const loadOnce = (): Promise<void> => {
    loaded ??= load();
    tellBegun();
    return loaded;
  };

  const wake = async (): Promise<boolean> => {
    touched = true;
    const loading = loadOnce();
    const asleep = outputNow();
    if (asleep !== null) resume(asleep);
    // Pressed before the voice is there: the first call must not be lost to it.
    await Promise.race([loading, new Promise((done) => setTimeout(done, LOAD_WITHIN_MS))]);
    const output = outputNow();
    if (output === null) return false;
    if (!(await isMoving(output.context))) return false;
    look();
    if (sprite !== null) state.value = 'ready';
    return true;
  };

  const say = (utterance: Utterance, atPageMs: number, latestPageMs: number): Heard => {
    const output = outputNow();
    if (output === null || sprite === null || state.value !== 'ready' || output.context.state !== 'running')
      return 'silent';
    const { context } = output;
    const store = { pack: spoken, sprite, shiftS, tone: tonesAt(context.sampleRate) };
    const clockNow = () => audioClockOf(context, time.nowMs, line, unknownMs());
    return sounding.set(store, output, clockNow, { utterance, atPageMs, latestPageMs });
  };

  begin(() => void loadOnce());
  return {
    state,
    trouble,
    wake,
    use: async (next, url) => {
      const source = { pack: next, spriteUrl: url };
      wanted = source;
      // Nothing is loaded before its time: the first load takes what is wanted then.
      if (loaded === null) {
        await began;
        await loaded;
        return spoken === next && sprite !== null;
      }
      return take(source);
    },
    say,
    takeBack: () => sounding.stop(outputNow()?.context.currentTime ?? 0),
    hush: () => sounding.stop(),
  };
};
