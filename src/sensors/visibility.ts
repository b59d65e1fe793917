/**
 * Tells when the page comes into view or goes out of it: hidden, it gets no fixes and its timers crawl. That a page is left
 * for good is not told: what it would begin now is not finished any more, and in WebKit a write that hangs so holds up the
 * page that comes after it.
 */
export const watchVisibility = (onChange: (visible: boolean) => void, win: Window = window): (() => void) => {
  const { document } = win;
  let leaving = false;
  const left = (): void => {
    leaving = true;
  };
  const changed = (): void => {
    const visible = document.visibilityState === 'visible';
    if (visible) leaving = false;
    if (!leaving) onChange(visible);
  };
  win.addEventListener('pagehide', left);
  document.addEventListener('visibilitychange', changed);
  return () => {
    win.removeEventListener('pagehide', left);
    document.removeEventListener('visibilitychange', changed);
  };
};
