import type { ReadonlySignal } from '@preact/signals';

/** What the speaker says of itself; the screens know no more of it. */
export interface SoundSigns {
  readonly state: ReadonlySignal<'loading' | 'asleep' | 'ready' | 'failed'>;
  readonly trouble: ReadonlySignal<string | null>;
}

/** One line when the runner would otherwise wonder why nothing is heard; nothing when all is well. */
export const SoundState = ({ speaker }: { speaker: SoundSigns }) => {
  switch (speaker.state.value) {
    case 'loading':
      return <p class="note">The voice is being loaded (1.2 MB).</p>;
    case 'failed':
      return (
        <p class="note" role="alert">
          No sound: the voice could not be loaded. {speaker.trouble.value}
        </p>
      );
    default:
      return null;
  }
};
