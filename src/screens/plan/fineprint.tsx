import { type CautionKey, cautionTexts } from '../../core/prepare/cautions.ts';
import type { Source } from '../../core/prepare/source.ts';
import { t } from '../../languages/text.ts';

/** What to mind, in full: never folded away. */
export const Cautions = ({ keys }: { keys: readonly CautionKey[] }) =>
  keys.length === 0 ? null : (
    <aside class="cautions" aria-label={t('Take care')}>
      <h3>{t('Take care')}</h3>
      <ul>
        {cautionTexts(keys).map((caution) => (
          <li key={caution.text}>{t(caution)}</li>
        ))}
      </ul>
    </aside>
  );

/** Where the figures come from. */
export const Sources = ({ sources }: { sources: readonly Source[] }) => (
  <details class="sources">
    <summary>{t('Where these figures come from')}</summary>
    <ul>
      {[...new Set(sources.map((s) => t(s.text)))].map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  </details>
);
