import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { t } from '../../languages/text.ts';
import { HoldButton } from '../parts/holdButton.tsx';

const STOP_HOLD_MS = 1500;
/** Whoever meant it holds again within this. */
const ASKED_MS = 6000;

/** Ends a run in two holds, so that neither a pocket nor a slip does it. */
export const Stop = ({ onStop }: { onStop: () => void }) => {
  const asked = useSignal(false);
  useEffect(() => {
    if (!asked.value) return;
    const timer = setTimeout(() => {
      asked.value = false;
    }, ASKED_MS);
    return () => clearTimeout(timer);
  }, [asked.value]);
  return asked.value ? (
    <HoldButton key="end" label={t('Hold again: end the run')} holdMs={STOP_HOLD_MS} onHold={onStop} />
  ) : (
    <HoldButton
      key="stop"
      label={t('Hold to stop')}
      holdMs={STOP_HOLD_MS}
      onHold={() => {
        asked.value = true;
      }}
    />
  );
};
