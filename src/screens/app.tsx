import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { t } from '../languages/text.ts';
import { SCREEN_NAMES } from './names.ts';
import { toContent, useKeptFocus } from './parts/focus.ts';
import { PREPARE, SCREENS, type ScreenName } from './route.ts';

/** The screen of the bar that an address belongs to. */
const inBar = (name: ScreenName): ScreenName => {
  if (name === 'ready' || name === 'learn') return 'run';
  return name === 'share' || PREPARE.some((step) => step === name) ? 'plan' : name;
};

interface Props {
  readonly route: ReadonlySignal<ScreenName>;
  readonly screens: Record<ScreenName, () => ComponentChildren>;
  /** Stands under every screen. */
  readonly foot?: ComponentChildren;
}

export const App = ({ route, screens, foot }: Props) => {
  const title = `${t(SCREEN_NAMES[route.value])} · Soundline`;
  useEffect(() => {
    document.title = title;
  }, [title]);
  useKeptFocus();
  return (
    <>
      <button type="button" class="skip" onClick={toContent}>
        {t('To the content')}
      </button>
      <header class="bar">
        <a class="name" href="#/rehearse">
          <svg viewBox="0 0 24 36" aria-hidden="true">
            <path class="rope" d="M12 0v20M7 6h5M12 13h5" />
            <path class="lead" d="M12 19c4 5 6 8 6 11a6 6 0 0 1-12 0c0-3 2-6 6-11z" />
          </svg>
          Soundline
        </a>
        <nav aria-label={t('Screens')}>
          {SCREENS.map((name) => (
            <a key={name} href={`#/${name}`} aria-current={inBar(route.value) === name ? 'page' : undefined}>
              {t(SCREEN_NAMES[name])}
            </a>
          ))}
        </nav>
      </header>
      {screens[route.value]()}
      {foot}
    </>
  );
};
