/** Where nothing is painted, as on a page that was opened out of sight, nothing may wait for it longer. */
const UNPAINTED_MS = 500;

/** Does something once the next picture is on the screen, and not before: the first one should be there soon. */
export const afterPaint = (run: () => void): void => {
  let begun = false;
  const once = (): void => {
    if (begun) return;
    begun = true;
    run();
  };
  // A timer that is set in a frame comes after its picture.
  requestAnimationFrame(() => setTimeout(once));
  setTimeout(once, UNPAINTED_MS);
};
