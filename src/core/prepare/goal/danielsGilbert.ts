/**
 * Daniels and Gilbert 1979, Oxygen Power (coefficients read in secondary copies; the book itself not seen).
 * v = speed in m/min, t = duration in min.
 */

const S_PER_MIN = 60;

/** Oxygen cost of running at v: VO2 = -4.60 + 0.182258 v + 0.000104 v^2, in ml/kg/min. */
export const oxygenCost = (v: number): number => -4.6 + 0.182258 * v + 0.000104 * v * v;

/** The share of the maximum that can be held for t: 0.8 + 0.1894393 e^(-0.012778 t) + 0.2989558 e^(-0.1932605 t). */
export const sustainableShare = (t: number): number =>
  0.8 + 0.1894393 * Math.exp(-0.012778 * t) + 0.2989558 * Math.exp(-0.1932605 * t);

/** Running index of a result, in ml/kg/min: cost of its speed over the share that its duration allows. */
export const runningIndex = (distanceM: number, timeS: number): number => {
  const t = timeS / S_PER_MIN;
  return oxygenCost(distanceM / t) / sustainableShare(t);
};

/** Speeds between which a time is sought, m/s: slower than a stroll to quicker than any runner. */
const SLOWEST_MPS = 0.5;
const QUICKEST_MPS = 12;
/** Halvings of a bracket of at most 100 km / 0.5 m/s = 200,000 s: down to below a nanosecond. */
const HALVINGS = 50;

/**
 * The time for a distance at an index, in seconds. The index falls strictly as the time grows (the relative slope of
 * the cost is steeper than -1, that of the share flatter than -0.2), so halving finds the one time there is.
 */
export const timeAtIndexS = (distanceM: number, index: number): number => {
  let quickS = distanceM / QUICKEST_MPS;
  let slowS = distanceM / SLOWEST_MPS;
  for (let n = 0; n < HALVINGS; n++) {
    const middleS = (quickS + slowS) / 2;
    if (runningIndex(distanceM, middleS) > index) quickS = middleS;
    else slowS = middleS;
  }
  return (quickS + slowS) / 2;
};

/** The time for another distance at the index of a result. Metres and seconds. */
export const danielsGilbertS = (fromM: number, fromS: number, toM: number): number =>
  timeAtIndexS(toM, runningIndex(fromM, fromS));
