import { type Signal, signal } from '@preact/signals';
import { TALK, type Talk } from '../../core/cues/talk.ts';
import { USUAL_SETTINGS } from '../../core/run/settings.ts';
import type { Keep } from '../phone/pageKeep.ts';

/** How the phone is carried, what it may take and how much it says; kept between visits. */
export interface RunChoices {
  /** In a pocket or on an arm: the guard closes over the face. */
  readonly pocket: Signal<boolean>;
  /** The headset's buttons mark and ask, and the runner's own music stops for it. */
  readonly buttons: Signal<boolean>;
  /** The loud variant of the voice, for a crowd. */
  readonly loud: Signal<boolean>;
  /** How much is said in a race. */
  readonly talk: Signal<Talk>;
}

const KEY = 'soundline.choices';

export const createRunChoices = (keep: Keep): RunChoices => {
  const read = (): { pocket?: unknown; buttons?: unknown; loud?: unknown; talk?: unknown } => {
    try {
      const found: unknown = JSON.parse(keep.getItem(KEY) ?? '{}');
      return typeof found === 'object' && found !== null ? found : {};
    } catch {
      return {};
    }
  };
  const found = read();
  const choices = {
    pocket: signal(found.pocket === true),
    buttons: signal(found.buttons === true),
    loud: signal(found.loud === true),
    talk: signal(TALK.find((level) => level === found.talk) ?? USUAL_SETTINGS.talk),
  };
  const write = (): void => {
    const { pocket, buttons, loud, talk } = choices;
    try {
      keep.setItem(
        KEY,
        JSON.stringify({
          pocket: pocket.value,
          buttons: buttons.value,
          loud: loud.value,
          talk: talk.value,
        }),
      );
    } catch {
      // Chosen for this visit only.
    }
  };
  for (const choice of Object.values(choices)) choice.subscribe(write);
  return choices;
};
