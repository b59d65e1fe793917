import { useRef } from 'preact/hooks';
import { t } from '../../languages/text.ts';
import { useHold } from '../parts/hold.ts';

interface Props {
  readonly onOpen: () => void;
}

/** A pocket and rain touch often, and seldom stay: longer than any of that, shorter than a runner's patience. */
const OPEN_HOLD_MS = 1200;
/** A fingertip at rest moves less; cloth and drops slide. */
const SLIDE_PX = 24;

/**
 * The pocket guard: lies over the face and swallows every touch. One finger that rests opens it; two at once, or one that
 * slides, is no runner.
 */
export const Guard = ({ onOpen }: Props) => {
  const [hold, down] = useHold(OPEN_HOLD_MS, onOpen, () => {});
  const fingers = useRef(new Map<number, readonly [number, number]>());
  const lift = (event: PointerEvent): void => {
    fingers.current.delete(event.pointerId);
    hold.onPointerCancel();
  };
  return (
    <button
      type="button"
      class="guard"
      data-down={down}
      style={{ '--hold': `${OPEN_HOLD_MS}ms` }}
      {...hold}
      onPointerDown={(event) => {
        event.preventDefault();
        fingers.current.set(event.pointerId, [event.clientX, event.clientY]);
        if (fingers.current.size === 1) hold.onPointerDown(event);
        else hold.onPointerCancel();
      }}
      onPointerMove={(event) => {
        const from = fingers.current.get(event.pointerId);
        if (from && Math.hypot(event.clientX - from[0], event.clientY - from[1]) > SLIDE_PX)
          hold.onPointerCancel();
      }}
      onPointerUp={lift}
      onPointerCancel={lift}
      onPointerLeave={lift}
    >
      <span class="guard-text">{t('Guarded: hold to open')}</span>
    </button>
  );
};
