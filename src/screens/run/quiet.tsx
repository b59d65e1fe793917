import { t } from '../../languages/text.ts';
import type { LiveRun } from '../../session/run/liveRun.ts';

const MS_PER_MINUTE = 60_000;

/** A quiet stretch on demand: one press, and only answers and the finish are said for ten minutes; another ends it. */
export const Quiet = ({ run, onPress }: { run: LiveRun; onPress: () => void }) => {
  const { atMs, quietUntilMs } = run.view.value;
  return (
    <button type="button" class="quiet-button" aria-pressed={quietUntilMs !== null} onClick={onPress}>
      {quietUntilMs === null
        ? t('Quiet for 10 min')
        : t('Speak again ({min} min)', {
            min: Math.max(1, Math.ceil((quietUntilMs - atMs) / MS_PER_MINUTE)),
          })}
    </button>
  );
};
