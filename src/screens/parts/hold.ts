import { useEffect, useRef, useState } from 'preact/hooks';

interface HoldHandlers {
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
  readonly onPointerLeave: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onKeyUp: (event: KeyboardEvent) => void;
  readonly onContextMenu: (event: Event) => void;
}

const isPress = (event: KeyboardEvent): boolean => event.key === 'Enter' || event.key === ' ';

/**
 * Tells a tap from a hold, by finger or by Enter and Space. The hold acts while it is still held, so that it is felt; a
 * press that is let go before is a tap.
 * @returns handlers for the element, and whether it is being held
 */
export const useHold = (holdMs: number, onHold: () => void, onTap: () => void): [HoldHandlers, boolean] => {
  const [down, setDown] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);

  const clear = (): boolean => {
    const was = timer.current !== null;
    if (timer.current !== null) clearTimeout(timer.current);
    timer.current = null;
    setDown(false);
    return was;
  };
  const begin = (): void => {
    clear();
    setDown(true);
    timer.current = setTimeout(() => {
      clear();
      onHold();
    }, holdMs);
  };
  const letGo = (): void => {
    if (clear()) onTap();
  };
  const cancel = (): void => {
    clear();
  };
  useEffect(
    () => () => {
      if (timer.current !== null) clearTimeout(timer.current);
    },
    [],
  );

  const handlers: HoldHandlers = {
    onPointerDown: (event) => {
      if (event.button !== 0) return;
      // What is held may move aside under the finger, as the face changes; the hold stays with it.
      if (event.isTrusted && event.currentTarget instanceof Element)
        event.currentTarget.setPointerCapture(event.pointerId);
      begin();
    },
    onPointerUp: letGo,
    onPointerCancel: cancel,
    onPointerLeave: cancel,
    onKeyDown: (event) => {
      if (!isPress(event)) return;
      event.preventDefault();
      if (!event.repeat) begin();
    },
    onKeyUp: (event) => {
      if (isPress(event)) letGo();
    },
    onContextMenu: (event) => event.preventDefault(),
  };
  return [handlers, down];
};
