import type { WhatIf, WhatIfWish } from '../../core/prepare/whatIf/whatIf.ts';
import type { Simulate } from './prepareWhatIf.ts';

/** A thread for each question: it ends with the answer, and a question that is overtaken is ended at once. */
export const simulateInWorker = (): Simulate => {
  let worker: Worker | null = null;
  return (wish: WhatIfWish) =>
    new Promise<WhatIf>((resolve, reject) => {
      worker?.terminate();
      const mine = new Worker(new URL('./prepareWorker.ts', import.meta.url), { type: 'module' });
      worker = mine;
      mine.onmessage = ({ data }: MessageEvent<WhatIf>) => {
        mine.terminate();
        resolve(data);
      };
      mine.onerror = (event) => {
        mine.terminate();
        reject(new Error(event.message));
      };
      mine.postMessage(wish);
    });
};
