/** Tells when the page comes into view or goes out of it: hidden, it gets no fixes and its timers crawl. */
export const watchVisibility = (
  onChange: (visible: boolean) => void,
  doc: Document = document,
): (() => void) => {
  const changed = (): void => onChange(doc.visibilityState === 'visible');
  doc.addEventListener('visibilitychange', changed);
  return () => doc.removeEventListener('visibilitychange', changed);
};
