import { type WhatIfWish, whatIf } from '../../core/prepare/whatIf/whatIf.ts';

/** The other thread: a wish in, its answer out. A thousand runs take longer than a page may stand still. */
self.onmessage = ({ data }: MessageEvent<WhatIfWish>) => {
  self.postMessage(whatIf(data));
};
