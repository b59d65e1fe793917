import { useEffect } from 'preact/hooks';

/** Past the bar and the steps with one key, for whoever goes by keys. */
export const toContent = (): void => {
  const main = document.querySelector('main');
  if (main === null) return;
  main.tabIndex = -1;
  main.focus({ preventScroll: true });
};

/**
 * Where what was pressed goes away with its screen (a step, a start, a run that ends), the next one is taken up from its
 * head: else the next key would begin at the top of the page, and a reader of screens would say nothing. Who came by a
 * link in the bar stays there.
 */
export const useKeptFocus = (): void =>
  useEffect(() => {
    // The screen that has the focus. A row that goes within a screen is left to the browser, which goes on beside it.
    let screen: Element | null = null;
    const onFocus = (event: FocusEvent): void => {
      screen = event.target instanceof Element ? event.target.closest('main') : null;
    };
    const watch = new MutationObserver(() => {
      if (screen === null || screen.isConnected || document.querySelector('main h1') === null) return;
      screen = null;
      if (document.activeElement === document.body) toContent();
    });
    document.addEventListener('focusin', onFocus);
    watch.observe(document.body, { childList: true, subtree: true });
    return () => {
      document.removeEventListener('focusin', onFocus);
      watch.disconnect();
    };
  }, []);
