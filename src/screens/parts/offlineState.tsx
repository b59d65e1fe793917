import type { ReadonlySignal } from '@preact/signals';

/** What src/offline says of itself; the screens know no more of it. */
export interface OfflineSigns {
  readonly state: ReadonlySignal<'absent' | 'fetching' | 'ready' | 'failed'>;
  readonly updateWaits: ReadonlySignal<boolean>;
  readonly update: () => void;
}

const WORDS = {
  absent: 'This browser keeps no pages for later: Soundline needs a network here.',
  fetching: 'Being stored for use without a network …',
  ready: 'Ready offline.',
  failed: 'Not ready offline. Open the page again with a network.',
} as const;

/** The foot of every screen: whether a race far from any network would work, and whether something newer waits. */
export const OfflineState = ({ offline }: { offline: OfflineSigns }) => (
  <footer class="foot">
    <p class="note" role="status" data-offline={offline.state.value}>
      {WORDS[offline.state.value]}
    </p>
    {offline.updateWaits.value && (
      <p class="note">
        A newer version is here.{' '}
        <button type="button" onClick={offline.update}>
          Take it now
        </button>
      </p>
    )}
  </footer>
);
