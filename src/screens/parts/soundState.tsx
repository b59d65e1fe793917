import type { ReadonlySignal } from '@preact/signals';

/** What the speaker says of itself; the screens know no more of it. */
export interface SoundSigns {
  readonly state: ReadonlySignal<'loading' | 'asleep' | 'ready' | 'failed'>;
  readonly trouble: ReadonlySignal<string | null>;
}

/** One line when the runner would otherwise wonder why nothing is heard; silent when all is well. */
export const SoundState = ({ speaker }: { speaker: SoundSigns }) => {
  const state = speaker.state.value;
  return (
    <p class="note sound-state" data-sound={state} role="status">
      {state === 'loading' && 'The voice is being loaded (1.2 MB).'}
      {state === 'failed' && `No sound: the voice could not be loaded. ${speaker.trouble.value ?? ''}`}
    </p>
  );
};
