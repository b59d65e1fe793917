import { useSignal } from '@preact/signals';
import type { SaidCall } from '../../core/review/digest.ts';
import { decimal } from '../../core/units/message.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import type { ReviewModel } from '../../session/review/reviewModel.ts';
import { clock, distance, unitName } from '../format.ts';
import { signed } from './charts.tsx';

const RATES = [1, 5, 20, 60] as const;

/** Before and after a call that is heard alone. */
const ROUND_S = 0.5;

interface Props {
  readonly model: ReviewModel;
  readonly calls: readonly SaidCall[];
  readonly unit: DistanceUnit;
}

/** Any stretch by ear again: from one call to another, at a chosen rate. */
const HearAgain = ({ model, calls }: Props) => {
  const from = useSignal(0);
  const to = useSignal(calls.length - 1);
  const rate = useSignal<number>(20);
  const replay = model.replay.value;
  const at = replay?.atS.value ?? null;
  const choose = (label: string, value: typeof from) => (
    <label>
      {label}
      <select value={value.value} onChange={(e) => (value.value = Number(e.currentTarget.value))}>
        {calls.map((c, i) => (
          <option key={c.id} value={i}>
            {clock(c.startS)} {c.text || c.kind}
          </option>
        ))}
      </select>
    </label>
  );
  const [a, b] = [Math.min(from.value, to.value), Math.max(from.value, to.value)];
  return (
    <div class="hear">
      {choose(t('From||call'), from)}
      {choose(t('To||call'), to)}
      <label>
        {t('Rate between calls')}
        <select value={rate.value} onChange={(e) => (rate.value = Number(e.currentTarget.value))}>
          {RATES.map((r) => (
            <option key={r} value={r}>
              {r} ×
            </option>
          ))}
        </select>
      </label>
      {at === null ? (
        <button
          type="button"
          class="main-button"
          onClick={() => void model.hear(calls[a]?.startS ?? 0, calls[b]?.endS ?? 0, rate.value)}
        >
          {t('Hear it again')}
        </button>
      ) : (
        <button type="button" class="main-button" onClick={model.hush}>
          {t('Stop at {time}', { time: clock(at) })}
        </button>
      )}
    </div>
  );
};

/** What the call was made from. */
const beliefText = ({ aheadS, aheadSdS }: SaidCall): string => {
  if (aheadS === null) return '';
  const ahead = signed(aheadS);
  return aheadSdS === null
    ? t('It believed {ahead} s.', { ahead })
    : t('It believed {ahead} s, give or take {off} s.', { ahead, off: decimal(1.96 * aheadSdS, 1) });
};

/** Every call in its place, each with the reason why it was said. */
export const Calls = (props: Props) => {
  const { model, calls, unit } = props;
  const sounding = model.replay.value?.callId.value ?? null;
  if (calls.length === 0) return <p class="note">{t('Nothing was called.')}</p>;
  return (
    <section class="said" aria-label={t('Calls')}>
      <h2>{t('Calls')}</h2>
      <HearAgain {...props} />
      <ol class="said-calls">
        {calls.map((call) => (
          <li key={call.id} data-sounds={call.id === sounding}>
            <span class="call-when figure">{clock(call.startS)}</span>
            <details>
              <summary>
                {call.text || t('(tone)')}
                <span class="unseen">: {t('why did it say that?')}</span>
              </summary>
              <p class="note">
                {t('Why: {why}.', { why: call.why })} {beliefText(call)}
              </p>
              <button
                type="button"
                onClick={() => void model.hear(call.startS - ROUND_S, call.endS + ROUND_S, 1)}
              >
                {t('Hear this call')}
              </button>
            </details>
            <span class="call-where figure">
              {call.distanceM === null ? '' : `${distance(call.distanceM, unit, 1)} ${unitName(unit)}`}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
};
