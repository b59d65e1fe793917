import type { Call } from '../../core/cues/call.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import { clock, distance, unitName } from '../format.ts';

interface Props {
  readonly calls: readonly Call[];
  readonly startMs: number | null;
  readonly unit: DistanceUnit;
}

/** What was called, newest first. */
export const CallBook = ({ calls, startMs, unit }: Props) => (
  <ol class="calls" reversed aria-label={t('Calls, newest first')}>
    {[...calls].reverse().map((call) => (
      <li key={call.id} class="call" data-kind={call.saying.kind}>
        <span class="call-when">{startMs === null ? '' : clock((call.startMs - startMs) / 1000)}</span>
        <span class="call-words">{call.utterance.text || t('(tone)')}</span>
        <span class="call-where">
          {call.distanceM === null ? '' : `${distance(call.distanceM, unit, 1)} ${unitName(unit)}`}
        </span>
      </li>
    ))}
  </ol>
);
