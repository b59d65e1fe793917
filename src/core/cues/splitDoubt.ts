/**
 * How well the time between two neighbouring places is known. The two crossings do not err apart: where the line or, without
 * one, the scale of the way is in doubt, what moves one place moves the next nearly as far. Only the receiver's own error
 * is another one at each: it is forgotten within a minute or two.
 */

/**
 * Up to this a place is in doubt by the receiver, beyond it by the line or the scale (metres a kilometre apart, no
 * correlation seen below it: with it 96 % and more of the splits on the bench lie in their 95 % interval, on a line, with
 * presses and without either; with 4 m 95 to 96 %).
 */
const OWN_MOST_M = 6;

/** A crossing of a place. */
export interface Passed {
  readonly atM: number;
  /** How well its instant is known. */
  readonly sdS: number;
}

/**
 * How far the shared error of one place goes along to the next. On a line it is drawn to nothing at the finish, for the
 * line ends where the course does (a bridge); without a line it is the scale's, and grows with the distance.
 */
const carried = (fromM: number, toM: number, finishM: number, hasLine: boolean): number =>
  hasLine ? Math.max(0, finishM - toM) / Math.max(1, finishM - fromM) : toM / fromM;

/**
 * Standard deviation of the time from one place to the next.
 * @param from  the place before; the start is known by itself and shares nothing
 * @param speedMps  to turn metres of doubt into seconds
 */
export const splitSdS = (
  from: Passed,
  to: Passed,
  finishM: number,
  hasLine: boolean,
  speedMps: number,
): number => {
  const ownS2 = (sdS: number): number => Math.min(sdS, OWN_MOST_M / speedMps) ** 2;
  const [own1, own2] = [ownS2(from.sdS), ownS2(to.sdS)];
  if (from.atM <= 0) return Math.hypot(from.sdS, to.sdS);
  const [shared1, shared2] = [from.sdS ** 2 - own1, to.sdS ** 2 - own2];
  const share = carried(from.atM, to.atM, finishM, hasLine);
  // What was learned on the way is shared no more: two errors have no more in common than the smaller allows.
  const common = Math.min(share * shared1, Math.sqrt(shared1 * shared2), share > 0 ? shared2 / share : 0);
  return Math.sqrt(own1 + own2 + Math.max(0, shared1 + shared2 - 2 * common));
};
