import { type Signal, signal } from '@preact/signals';
import type { Keep } from './planKeep.ts';

/** How the phone is carried and what it may take; kept between visits. */
export interface RunChoices {
  /** In a pocket or on an arm: the guard closes over the face. */
  readonly pocket: Signal<boolean>;
  /** The headset's buttons mark and ask, and the runner's own music stops for it. */
  readonly buttons: Signal<boolean>;
}

const KEY = 'soundline.choices';

export const createRunChoices = (keep: Keep): RunChoices => {
  const read = (): { pocket?: unknown; buttons?: unknown } => {
    try {
      const found: unknown = JSON.parse(keep.getItem(KEY) ?? '{}');
      return typeof found === 'object' && found !== null ? found : {};
    } catch {
      return {};
    }
  };
  const found = read();
  const choices = { pocket: signal(found.pocket === true), buttons: signal(found.buttons === true) };
  const write = (): void => {
    try {
      keep.setItem(KEY, JSON.stringify({ pocket: choices.pocket.value, buttons: choices.buttons.value }));
    } catch {
      // Chosen for this visit only.
    }
  };
  choices.pocket.subscribe(write);
  choices.buttons.subscribe(write);
  return choices;
};
