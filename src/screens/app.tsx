import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { type Message, message } from '../core/units/message.ts';
import { t } from '../languages/text.ts';
import { PREPARE, SCREENS, type ScreenName } from './route.ts';

const NAMES: Record<(typeof SCREENS)[number], Message> = {
  plan: message('Plan||noun'),
  practice: message('Practice||noun'),
  rehearse: message('Rehearse||verb'),
  run: message('Run||verb'),
  runs: message('Runs||noun'),
};

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

export const App = ({ route, screens, foot }: Props) => (
  <>
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
            {t(NAMES[name])}
          </a>
        ))}
      </nav>
    </header>
    {screens[route.value]()}
    {foot}
  </>
);
