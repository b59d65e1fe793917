import { t } from '../../languages/text.ts';
import type { LiveRun } from '../../session/run/liveRun.ts';

/** One press beside the pacer: where they are heading, and whether to go with them. Only where the plan has a flag. */
export const Level = ({ run, onPress }: { run: LiveRun; onPress: () => void }) =>
  run.cell.config.plan.pacer === undefined ? null : (
    <button type="button" class="level-button" onClick={onPress}>
      {t('Level with the pacer')}
    </button>
  );
