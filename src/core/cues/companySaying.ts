import type { MorningStep } from '../plan/morning.ts';
import type { Advice } from '../plan/pacerAdvice.ts';
import type { Ahead } from './saying.ts';

/** What a call about others, or before the race, means, in no language; ranges as in saying.ts. */
export type CompanySaying =
  /**
   * Level with the pacer: the finish that they are heading for, by the gun where it was heard and on the runner's own
   * clock; against their flag (up: quicker); and whether to go with them.
   */
  | {
      readonly kind: 'pacer';
      readonly gunS: number | null;
      readonly ownS: number;
      readonly flag: Ahead;
      readonly advice: Advice;
    }
  /** The plan has no pacer. */
  | { readonly kind: 'noPacer' }
  /** Against the rival's schedule at a checkpoint. */
  | { readonly kind: 'rival'; readonly ahead: Ahead }
  | { readonly kind: 'reminder'; readonly what: MorningStep };
