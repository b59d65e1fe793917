/** A fix on a plane. */
export interface PlaneFix {
  /** When it was taken, engine clock. */
  readonly timeMs: number;
  readonly eastM: number;
  readonly northM: number;
  /** Doppler speed; null where there is none or it is not to be believed. */
  readonly speedMps: number | null;
  /** Noise to add for a fix that admits to be worse than this receiver's usual. */
  readonly extraSdM: number;
  /** Taken where the line does not run: only its speed counts. */
  readonly placeless?: boolean;
}
