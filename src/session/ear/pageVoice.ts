import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { spoken as english } from '../../languages/en/spoken.ts';
import type { Spoken } from '../../languages/spoken.ts';
import { fetchSpoken } from '../../languages/voices.ts';
import type { LogStore } from '../../log/store.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import { createSpeaker, type Speaker } from '../../voice/device/speaker.ts';
import { warmOutput } from '../../voice/device/warmOutput.ts';
import { afterTouch } from '../phone/afterTouch.ts';
import { createVoices, languageUnderWay, type Voices } from './voices.ts';

/** The page's one voice and the speaker that it comes out of. */
export interface PageVoice {
  readonly voices: Voices;
  /** `begun`: its sound was asked for, by a touch or because nobody touched anything for a while. */
  readonly speaker: Speaker & { readonly begun: ReadonlySignal<boolean> };
  /** Path of the sound that is in use. */
  readonly path: ReadonlySignal<string>;
  /** Path of the English one, which every visitor's device stores: it stands in for all the others. */
  readonly englishPath: string;
}

const pathOf = ({ pack }: Spoken, isLoud: boolean): string =>
  `/voice/${pack.variants[isLoud ? 'loud' : 'normal'].file}`;

/**
 * @param chosen  BCP 47 tag of the language that the runner chose
 * @param loud  whether the runner wants the loud variant
 * @param earDelayMs  how much earlier calls begin than the browser would have them
 */
export const createPageVoice = (
  chosen: ReadonlySignal<string>,
  loud: ReadonlySignal<boolean>,
  store: LogStore,
  time: PageTime,
  earDelayMs: ReadonlySignal<number>,
): PageVoice => {
  const begun = signal(false);
  const voices = createVoices({
    english,
    fetch: fetchSpoken,
    speaker: () => speaker,
    urlOf: pathOf,
    chosen,
    loud,
    underWay: languageUnderWay(store),
  });
  const speaker = createSpeaker(
    english.pack,
    pathOf(english, false),
    time,
    // Nothing is heard before a touch, and the decoded sound is handed over in one piece of 30 MB: 90 ms of the page's
    // one thread on a mid-range phone, measured.
    (load) =>
      afterTouch(() => {
        begun.value = true;
        void Promise.all([warmOutput(), voices.first]).then(load);
      }),
    () => earDelayMs.value,
  );
  return {
    voices,
    speaker: { ...speaker, begun },
    path: computed(() => pathOf(voices.spoken.value, voices.isLoud.value)),
    englishPath: pathOf(english, false),
  };
};
