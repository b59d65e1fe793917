import type { ReadonlySignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { type Message, message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { ReadyModel } from '../../session/ready/readyModel.ts';
import { type Grade, readingsOf, verdictOf } from './readings.ts';

/** Installation, as src/offline has it. */
export interface InstallSigns {
  readonly installed: boolean;
  readonly canAsk: ReadonlySignal<boolean>;
  readonly ask: () => Promise<void>;
  readonly byHand: boolean;
  readonly lockIsWeak: boolean;
}

interface Props {
  readonly model: ReadyModel;
  readonly offline: ReadonlySignal<'absent' | 'fetching' | 'stored' | 'ready' | 'failed'>;
  readonly install: InstallSigns;
}

/** Shape as well as colour tells how it stands. */
const SIGNS: Record<Grade, string> = { good: '●', better: '▲', must: '■', wait: '○' };
const GRADES: Record<Grade, Message> = {
  good: message('fine'),
  better: message('could be better'),
  must: message('missing'),
  wait: message('open||not known yet'),
};

const InstallHint = ({ install }: { install: InstallSigns }) => {
  if (install.installed) return null;
  return (
    <p class="hint">
      {install.canAsk.value ? (
        <button type="button" onClick={() => void install.ask()}>
          {t('Install Soundline')}
        </button>
      ) : (
        install.byHand && t('Install first: Share, then Add to Home Screen, and set up your plan there.')
      )}{' '}
      {install.byHand
        ? t('A tab and the installed app do not share what they store.')
        : t('Installed it opens without a network, and the browser keeps its logs.')}
    </p>
  );
};

/** Before the start: everything tried for real, what to do where it fails, and one word at the end. */
export const ReadyScreen = ({ model, offline, install }: Props) => {
  useEffect(() => model.end, [model]);
  const begun = model.begun.value;
  // The touch that began it was at the foot; on a wrist the verdict would be out of sight.
  useEffect(() => window.scrollTo(0, 0), [begun]);
  if (!begun)
    return (
      <main class="run-before" data-sound={model.sound.value}>
        <header class="lead-in">
          <h1>{t('Ready to race?')}</h1>
          <p>
            {t('Tries each thing that a race needs, on this device, as it will be used. It takes a minute.')}
          </p>
        </header>
        <InstallHint install={install} />
        <p class="note">
          {t(
            'You will be asked for your position. It stays on this device. Stand outside, with your earphones in.',
          )}
        </p>
        <div class="buttons">
          <button type="button" class="main-button" onClick={() => void model.begin()}>
            {t('Begin the check')}
          </button>
        </div>
      </main>
    );
  const readings = readingsOf(model, offline.value, install.lockIsWeak);
  const verdict = verdictOf(readings);
  return (
    <main class="run-before" data-sound={model.sound.value}>
      <header class="lead-in">
        <h1>{verdict.ready ? t('Ready') : t('Not ready yet')}</h1>
        <p role="status" data-ready={verdict.ready}>
          {verdict.text}
        </p>
      </header>
      <ul class="instruments" aria-label={t('Checks')}>
        {readings.map(({ what, name, grade, text, help }) => (
          <li key={what} data-grade={grade === 'must' ? 'bad' : grade === 'better' ? 'warn' : grade}>
            <span class="sign" aria-hidden="true">
              {SIGNS[grade]}
            </span>
            <div>
              <b>{name}</b> <span class="unseen">({t(GRADES[grade])})</span> {text}
              {help !== undefined && <p class="note">{help}</p>}
              {what === 'sound' && <SoundTrial model={model} />}
              {what === 'delay' && <DelayTrial model={model} />}
            </div>
          </li>
        ))}
      </ul>
      <p class="note">
        {t(
          'No page can see whether low-power mode is on, or how bright the screen is: switch the one off and turn the other down. Do not press the power button during the run.',
        )}
      </p>
      <div class="buttons">
        <a class="button main-button" href="#/run">
          {verdict.ready ? t('To the start') : t('To the start all the same')}
        </a>
        <a class="button" href="#/learn">
          {t('Learn the tones')}
        </a>
      </div>
    </main>
  );
};

const SoundTrial = ({ model }: { model: ReadyModel }) => (
  <div class="buttons">
    <button type="button" onClick={model.play}>
      {t('Play the sample')}
    </button>
    {model.heard.value === 'playing' && (
      <>
        <span>{t('Did you hear it?')}</span>
        <button type="button" onClick={() => model.sayHeard(true)}>
          {t('Yes')}
        </button>
        <button type="button" onClick={() => model.sayHeard(false)}>
          {t('No')}
        </button>
      </>
    )}
  </div>
);

const DelayTrial = ({ model }: { model: ReadyModel }) => (
  <div class="buttons">
    {model.taps.running.value ? (
      <button type="button" class="tap-here" onPointerDown={model.taps.tap} onKeyDown={model.taps.tap}>
        {t('Tap with each beat')}
      </button>
    ) : (
      <button type="button" onClick={model.taps.start}>
        {t('Measure||press')}
      </button>
    )}
    {model.taps.earlierMs.value > 0 && !model.taps.running.value && (
      <button type="button" onClick={model.taps.forget}>
        {t('No earlier')}
      </button>
    )}
  </div>
);
