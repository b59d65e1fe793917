import type { Pixels } from '../../share/picture.ts';

/** Photographs are larger than a code needs, and reading one takes time by its area. */
const MOST_PX = 1600;

/** What a picture or a camera shows, shrunk; null where there is nothing to see yet. */
export const pixelsOf = (source: CanvasImageSource, width: number, height: number): Pixels | null => {
  const shrink = Math.min(1, MOST_PX / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * shrink);
  canvas.height = Math.round(height * shrink);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null || canvas.width === 0 || canvas.height === 0) return null;
  context.drawImage(source, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height);
};
