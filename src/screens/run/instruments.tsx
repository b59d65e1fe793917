import { t } from '../../languages/text.ts';
import type { LastFix, LiveRun } from '../../session/run/liveRun.ts';
import type { RunModel } from '../../session/run/runModel.ts';

type Grade = 'good' | 'warn' | 'bad' | 'wait';

interface Reading {
  readonly grade: Grade;
  readonly text: string;
  /** What the runner can do about it. */
  readonly help?: string;
}

/** Beyond this the receiver is still settling, or walls are near. */
const FINE_ACCURACY_M = 15;

const positionReading = (run: LiveRun): Reading => {
  const fix: LastFix | null = run.lastFix.value;
  switch (run.reception.value) {
    case 'waiting':
      return {
        grade: 'wait',
        text: t('No position yet'),
        help: t('Stand in the open. The first may take half a minute.'),
      };
    case 'good': {
      const accuracyM = fix?.accuracyM ?? null;
      if (accuracyM === null) return { grade: 'good', text: t('Position comes') };
      const rounded = Math.max(1, Math.round(accuracyM));
      return accuracyM <= FINE_ACCURACY_M
        ? { grade: 'good', text: t('Position to {distance} m, as the receiver says', { distance: rounded }) }
        : {
            grade: 'warn',
            text: t('Position only to {distance} m', { distance: rounded }),
            help: t('It settles within a minute in the open.'),
          };
    }
    case 'degraded':
      return { grade: 'warn', text: t('Last position {s} s ago', { s: Math.round(fix?.agoS ?? 0) }) };
    case 'lost':
      return {
        grade: 'bad',
        text: t('No position for {s} s', { s: Math.round(fix?.agoS ?? 0) }),
        help: t('Your clock and plan go on.'),
      };
    case 'denied':
      return {
        grade: 'bad',
        text: t('Position refused'),
        help: t(
          'Allow it for this page in the browser settings, then switch on again. Without it only the clock runs.',
        ),
      };
    case 'absent':
      return { grade: 'bad', text: t('This browser has no position'), help: t('Only the clock runs.') };
  }
};

const screenReading = (model: RunModel): Reading => {
  switch (model.lock.value) {
    case 'held':
      return { grade: 'good', text: t('Screen stays on') };
    case 'video':
      return {
        grade: 'warn',
        text: t('Screen kept on by a silent video'),
        help: t('It may pause your music.'),
      };
    default:
      return {
        grade: 'bad',
        text: t('Screen may go dark'),
        help: t('Set its time-out in the phone to the longest. Dark means no position.'),
      };
  }
};

const soundReading = (model: RunModel): Reading => {
  switch (model.sound.value) {
    case 'ready':
      return { grade: 'good', text: t('Sound on') };
    case 'loading':
      return { grade: 'wait', text: t('Voice is being loaded') };
    case 'asleep':
      return { grade: 'bad', text: t('Sound asleep'), help: t('Touch the screen once.') };
    case 'failed':
      return {
        grade: 'bad',
        text: t('No sound'),
        help: t('The voice could not be loaded. Open the page again.'),
      };
  }
};

/** Shape as well as colour tells how it stands. */
const SIGNS: Record<Grade, string> = { good: '●', warn: '▲', bad: '■', wait: '○' };

/** What is ready and what is not, in words. */
export const Instruments = ({ model, run }: { model: RunModel; run: LiveRun }) => (
  <ul class="instruments" aria-label={t('Instruments')}>
    {[positionReading(run), screenReading(model), soundReading(model)].map(({ grade, text, help }) => (
      <li key={text} data-grade={grade}>
        <span class="sign" aria-hidden="true">
          {SIGNS[grade]}
        </span>
        <div>
          {text}
          {help !== undefined && <p class="note">{help}</p>}
        </div>
      </li>
    ))}
  </ul>
);
