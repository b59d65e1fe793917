import { decimalUpTo } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import { useHold } from './hold.ts';

interface Props {
  readonly label: string;
  readonly holdMs: number;
  readonly onHold: () => void;
}

/** A button for what must not happen by accident: it acts only when held, and fills while it is. */
export const HoldButton = ({ label, holdMs, onHold }: Props) => {
  const [handlers, down] = useHold(holdMs, onHold, () => {});
  return (
    <button
      type="button"
      class="hold-button"
      data-down={down}
      style={{ '--hold': `${holdMs}ms` }}
      aria-description={t('Hold for {n} seconds', { n: decimalUpTo(holdMs / 1000, 1) })}
      {...handlers}
    >
      <span>{label}</span>
    </button>
  );
};
