import { NOTICES } from '../core/cues/notice.ts';
import type { NoticeSaying } from '../core/cues/noticeSaying.ts';
import type { Ahead, Place } from '../core/cues/saying.ts';

/** Every notice, with and without a drift, and every place that can be due. */
export function* everyNotice(aheads: readonly Ahead[], places: readonly Place[]): Generator<NoticeSaying> {
  yield { kind: 'byClock' };
  for (const what of NOTICES) {
    yield { kind: 'notice', what, ahead: null };
    for (const ahead of aheads) yield { kind: 'notice', what, ahead };
  }
  for (const place of places) yield { kind: 'due', place };
}
