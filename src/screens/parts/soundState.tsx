import type { ReadonlySignal } from '@preact/signals';
import { decimal } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';

/** What the speaker says of itself; the screens know no more of it. */
export interface SoundSigns {
  readonly state: ReadonlySignal<'loading' | 'asleep' | 'ready' | 'failed'>;
  readonly trouble: ReadonlySignal<string | null>;
  /** Whether it was asked for its sound yet. */
  readonly begun: ReadonlySignal<boolean>;
}

/** One line when the runner would otherwise wonder why nothing is heard; silent when all is well. */
export const SoundState = ({ speaker }: { speaker: SoundSigns }) => {
  const state = speaker.state.value;
  return (
    <p class="note sound-state" data-sound={state} role="status">
      {state === 'loading' &&
        speaker.begun.value &&
        t('The voice is being loaded ({size} MB).', { size: decimal(1.2, 1) })}
      {state === 'failed' &&
        t('No sound: the voice could not be loaded. {why}', { why: speaker.trouble.value ?? '' })}
    </p>
  );
};
