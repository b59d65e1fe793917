/** A slip over the back button must not take the face of a run away, nor a closed window the run without a question. */
export const keepFace = (
  win: Pick<Window, 'addEventListener' | 'location'>,
  isRunning: () => boolean,
): void => {
  win.addEventListener('hashchange', () => {
    if (isRunning() && win.location.hash !== '#/run') win.location.replace('#/run');
  });
  win.addEventListener('beforeunload', (event) => {
    if (isRunning()) event.preventDefault();
  });
};
