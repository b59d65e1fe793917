import { createPageLanguage } from '../languages/onPage.ts';
import { createLogStore } from '../log/store.ts';
import { createEarDelay } from '../session/ear/earDelay.ts';
import { createPageVoice } from '../session/ear/pageVoice.ts';
import { pageKeep } from '../session/phone/pageKeep.ts';
import { createRunChoices } from '../session/run/runChoices.ts';
import { pageTime } from '../voice/device/pageTime.ts';

/**
 * What everything on the page stands on: what is kept, the language, the log, the voice.
 * @param build  names this build of the page: a log folds from a snapshot of the same build alone
 */
export const createGround = (build: string) => {
  const keep = pageKeep(window);
  const language = createPageLanguage(navigator.languages, keep, document.documentElement);
  const store = createLogStore();
  const earDelayMs = createEarDelay(keep);
  const choices = createRunChoices(keep);
  const sound = createPageVoice(language.chosenLanguage, choices.loud, store, pageTime, earDelayMs);
  const { voices } = sound;
  return {
    build,
    keep,
    language,
    store,
    earDelayMs,
    choices,
    ...sound,
    voice: voices.voice,
    /** Tag of the language that calls are said in. */
    spokenIn: (): string => voices.spoken.value.words.language,
  };
};

export type Ground = ReturnType<typeof createGround>;
