import type { NoticeName } from './notice.ts';
import type { Ahead, Place } from './saying.ts';

/** What a call about the device or by the clock alone means, in no language; ranges as in saying.ts. */
export type NoticeSaying =
  | { readonly kind: 'notice'; readonly what: NoticeName; readonly ahead: Ahead | null }
  /** No position, none to come soon: from here on places are told by the plan's clock. */
  | { readonly kind: 'byClock' }
  /** By the plan the runner is at this place now; whether they are, only they can see. */
  | { readonly kind: 'due'; readonly place: Place };
