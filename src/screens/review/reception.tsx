import type { Signal } from '../../core/estimate/progress.ts';
import { type Message, message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import { distance, unitName } from '../format.ts';
import { useWidth } from '../parts/width.ts';
import type { RaceShown } from './charts.tsx';
import { TableBehind } from './details.tsx';

const SIGNAL_NAMES: Readonly<Record<Signal, Message>> = {
  waiting: message('waiting||for a position'),
  good: message('good||reception'),
  poor: message('poor||reception'),
  lost: message('lost||reception'),
};
const STRIP_PX = 26;
const KEY_PX = { width: 34, height: 14 } as const;

/** Told apart by pattern: empty, hatched, full. */
const Patterns = () => (
  <defs>
    <pattern id="poor-air" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path d="M0 0v7" class="air-hatch" />
    </pattern>
  </defs>
);

/** Reception along the way, as a strip, and the same as a table. */
export const ReceptionOver = ({ plan, review }: RaceShown) => {
  const [box, width] = useWidth<HTMLDivElement>();
  const { reception } = review;
  const endM = reception.at(-1)?.toM ?? 0;
  if (endM === 0) return null;
  const seen = (['good', 'poor', 'lost'] as const).filter((s) => reception.some((r) => r.signal === s));
  return (
    <>
      <figure class="chart" aria-label={t('Reception along the way')}>
        <figcaption>
          <strong>{t('Reception along the way')}</strong>
          <ul class="keys">
            {seen.map((signal) => (
              <li key={signal}>
                <svg {...KEY_PX} aria-hidden="true">
                  <rect x="1" y="1" width="32" height="12" class="air" data-signal={signal} />
                </svg>
                {t(SIGNAL_NAMES[signal])}
              </li>
            ))}
          </ul>
        </figcaption>
        <div ref={box}>
          <svg width={width} height={STRIP_PX} aria-hidden="true">
            <Patterns />
            {reception.map((r) => (
              <rect
                key={r.fromM}
                x={(r.fromM / endM) * width}
                y="1"
                width={Math.max(1, ((r.toM - r.fromM) / endM) * width)}
                height={STRIP_PX - 2}
                class="air"
                data-signal={r.signal}
              />
            ))}
          </svg>
        </div>
      </figure>
      <TableBehind
        title={t('Reception along the way, as a table')}
        head={[
          t('from {unit}', { unit: unitName(plan.unit) }),
          t('to {unit}', { unit: unitName(plan.unit) }),
          t('reception'),
        ]}
        rows={reception.map((r) => [
          distance(r.fromM, plan.unit),
          distance(r.toM, plan.unit),
          t(SIGNAL_NAMES[r.signal]),
        ])}
      />
    </>
  );
};
