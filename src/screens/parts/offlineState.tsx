import type { ReadonlySignal } from '@preact/signals';
import { message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';

/** What src/offline says of itself; the screens know no more of it. */
export interface OfflineSigns {
  readonly state: ReadonlySignal<'absent' | 'fetching' | 'stored' | 'ready' | 'failed'>;
  readonly updateWaits: ReadonlySignal<boolean>;
  readonly update: () => void;
}

const WORDS = {
  absent: message('This browser keeps no pages for later: Soundline needs a network here.'),
  fetching: message('Being stored for use without a network …'),
  stored: message('Stored for use without a network. The voice is checked at the first touch.'),
  ready: message('Ready offline.'),
  failed: message('Not ready offline. Open the page again with a network.'),
} as const;

/** The foot of every screen: whether a race far from any network would work, and whether something newer waits. */
export const OfflineState = ({ offline }: { offline: OfflineSigns }) => (
  <footer class="foot">
    <p class="note" role="status" data-offline={offline.state.value}>
      {t(WORDS[offline.state.value])}
    </p>
    {offline.updateWaits.value && (
      <p class="note">
        {t('A newer version is here.')}{' '}
        <button type="button" onClick={offline.update}>
          {t('Take it now')}
        </button>
      </p>
    )}
  </footer>
);
