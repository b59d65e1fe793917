import { useSignal } from '@preact/signals';
import { t } from '../../languages/text.ts';
import type { RunModel } from '../../session/run/runModel.ts';
import { span } from '../format.ts';

/** A run that was cut off a good while ago: only the runner knows whether it still goes on. */
export const BrokenOff = ({ model }: { model: RunModel }) => {
  const busy = useSignal(false);
  const past = model.brokenOff.value;
  if (past === null) return null;
  const agoS = Math.max(0, (Date.now() - past.last.wallMs) / 1000);
  const choose = (run: () => Promise<void>) => async (): Promise<void> => {
    busy.value = true;
    await run();
    busy.value = false;
  };
  return (
    <main class="run-before">
      <header class="lead-in">
        <h1>{t('A run was cut off')}</h1>
        <p>
          {t('Its last sign was {time} ago. Its log is safe on this device, and its clock has gone on.', {
            time: span(agoS),
          })}
        </p>
      </header>
      <div class="buttons">
        <button type="button" class="main-button" disabled={busy.value} onClick={choose(model.goOn)}>
          {t('Go on with it')}
        </button>
        <button type="button" disabled={busy.value} onClick={choose(model.putAway)}>
          {t('It is over')}
        </button>
      </div>
    </main>
  );
};
