import { BREAKFAST_MIN_BEFORE } from '../fuel/carbohydrate.ts';
import type { RaceDayWish } from './raceDayWish.ts';

/** Minutes before the gun are negative: -150 is two and a half hours before. Whole minutes. */
export interface RaceDayTimes {
  readonly wake: number;
  readonly breakfast: number;
  /** Breakfast is eaten on the way: too long a journey to eat it at home within three hours of the gun. */
  readonly breakfastPacked: boolean;
  readonly leave: number;
  readonly arrive: number;
  readonly lastDrink: number;
  readonly warmUp: number;
  readonly warmUpEasyMin: number;
  readonly strides: number;
  readonly strideCount: number;
  readonly layers: number;
  readonly pen: number;
}

/* All minutes below: common practice, no source, but for the breakfast (see carbohydrate.ts). */
/** In the pen this long before it closes: queues. */
const PEN_MARGIN_MIN = 5;
/** To take off the warm kit, hand nothing in, walk over. */
const LAYERS_MIN = 3;
/** One stride: 20 s quick, a walk back. */
const STRIDE_MIN = 1.5;
/** Toilet, bag, a look at the start. */
const SETTLE_MIN = 40;
/** A drink needs about an hour to pass; and a toilet before the warm-up. */
const LAST_DRINK_MIN = 60;
const LAST_DRINK_BEFORE_WARM_UP_MIN = 15;
const BREAKFAST_TO_LAST_DRINK_MIN = 20;
const BREAKFAST_TO_LEAVE_MIN = 25;
const WAKE_TO_BREAKFAST_MIN = 30;
const WAKE_TO_LEAVE_MIN = 45;

/** The shorter the race, the more of a warm-up; none of it in heat (references: long events lose glycogen, gain heat). */
const WARM_C = 21;
const SHORT_RACE_S = 4500;
const LONG_RACE_S = 7200;

/** 10 to 20 min easy, then 4 to 6 strides. */
const warmUpFor = (durationS: number, temperatureC: number | null) => {
  if ((temperatureC ?? 0) >= WARM_C || durationS > LONG_RACE_S) return { easyMin: 10, strides: 4 };
  return durationS < SHORT_RACE_S ? { easyMin: 20, strides: 6 } : { easyMin: 15, strides: 5 };
};

/** Alarm clocks and front doors go by round times. */
const ROUND_MIN = 5;
const roundDown = (fromGunMin: number, gunMin: number): number =>
  ROUND_MIN * Math.floor((gunMin + fromGunMin) / ROUND_MIN) - gunMin;

/** The day reckoned back from the gun. The wish is parsed. */
export const raceDayTimes = (wish: RaceDayWish): RaceDayTimes => {
  const { easyMin, strides: strideCount } = warmUpFor(wish.durationS, wish.temperatureC);
  const pen = -(wish.penClosesMin + PEN_MARGIN_MIN);
  const layers = pen - LAYERS_MIN;
  const strides = layers - Math.ceil(strideCount * STRIDE_MIN);
  const warmUp = strides - easyMin;
  const leave = roundDown(warmUp - SETTLE_MIN - wish.travelMin, wish.startMinute);
  const lastDrink = Math.min(-LAST_DRINK_MIN, warmUp - LAST_DRINK_BEFORE_WARM_UP_MIN);
  const usual = Math.min(-BREAKFAST_MIN_BEFORE.usual, lastDrink - BREAKFAST_TO_LAST_DRINK_MIN);
  const atHome = Math.min(usual, leave - BREAKFAST_TO_LEAVE_MIN);
  const breakfastPacked = atHome < -BREAKFAST_MIN_BEFORE.most;
  const breakfast = breakfastPacked ? Math.max(-BREAKFAST_MIN_BEFORE.most, usual) : atHome;
  return {
    wake: roundDown(Math.min(breakfast - WAKE_TO_BREAKFAST_MIN, leave - WAKE_TO_LEAVE_MIN), wish.startMinute),
    breakfast,
    breakfastPacked,
    leave,
    arrive: leave + wish.travelMin,
    lastDrink,
    warmUp,
    warmUpEasyMin: easyMin,
    strides,
    strideCount,
    layers,
    pen,
  };
};
