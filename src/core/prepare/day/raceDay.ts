import type { MorningStep } from '../../plan/morning.ts';
import { type Message, message } from '../../units/message.ts';
import type { CautionKey } from '../cautions.ts';
import { breakfastFor } from '../fuel/carbohydrate.ts';
import { PRACTICE, read, type Source } from '../source.ts';
import { layersFor } from './layers.ts';
import { raceDayTimes } from './raceDayTimes.ts';
import type { RaceDayWish } from './raceDayWish.ts';

/** One thing to do, with its time and its reason. */
export interface RaceDayItem {
  readonly kind: MorningStep;
  /** Minutes from the gun: -150 is two and a half hours before it. */
  readonly fromMin: number;
  /** When it ends, minutes from the gun; the same as `fromMin` for a moment. */
  readonly untilMin: number;
  /** By the clocks of the place, minutes after midnight of race day; negative on the day before. */
  readonly clockMin: number;
  readonly title: Message;
  readonly reason: Message;
  readonly source: Source;
  readonly cautions: readonly CautionKey[];
}

const WARM_UP_SOURCE = read(
  message('Fradkin et al. 2010: a warm-up helped in 79 % of criteria over 32 studies'),
);
/** From here on a runner cools in the pen (common practice, no source). */
const LONG_IN_PEN_MIN = 20;

const breakfastText = (wish: RaceDayWish): Message => {
  const { carbohydrate, text } = breakfastFor(wish.durationS, wish.massKg);
  const { grams, gPerKg } = carbohydrate;
  return grams
    ? message('{lower} to {upper} g of carbohydrate, as much as you are used to. {text}', {
        lower: grams.lower,
        upper: grams.upper,
        text,
      })
    : message(
        '{lower} to {upper} g of carbohydrate for each kg of body mass, as much as you are used to. {text}',
        { lower: gPerKg.lower, upper: gPerKg.upper, text },
      );
};

/** The day from waking to the gun, in the order of the clock; ties in the order of `MORNING`. The wish is parsed. */
export const planRaceDay = (wish: RaceDayWish): readonly RaceDayItem[] => {
  const t = raceDayTimes(wish);
  const item = (
    kind: MorningStep,
    fromMin: number,
    untilMin: number,
    title: Message,
    reason: Message,
    source: Source = PRACTICE,
    cautions: readonly CautionKey[] = [],
  ): RaceDayItem => ({
    kind,
    fromMin,
    untilMin,
    clockMin: wish.startMinute + fromMin,
    title,
    reason,
    source,
    cautions,
  });
  const layers = layersFor(wish.temperatureC);
  const items = [
    item(
      'wake',
      t.wake,
      t.wake,
      message('Get up'),
      message('Time to eat and leave without hurry. Ill or feverish? Stay at home.'),
      PRACTICE,
      ['ill'],
    ),
    item(
      'breakfast',
      t.breakfast,
      t.breakfast,
      t.breakfastPacked ? message('Breakfast, packed the evening before') : message('Breakfast'),
      breakfastText(wish),
      read(message('Wallis and Podlogar 2022: 1 to 4 g/kg in the 1 to 4 hours before')),
      ['practised', 'diabetes', 'stomach'],
    ),
    item(
      'leave',
      t.leave,
      t.arrive,
      message('Leave||for the race'),
      message('{n} min of travel.', { n: wish.travelMin }),
      PRACTICE,
      ['traffic'],
    ),
    item(
      'lastDrink',
      t.lastDrink,
      t.lastDrink,
      message('Last full drink'),
      message('From here on only sips if thirsty, so that nothing is left to lose in the pen.'),
      PRACTICE,
      ['thirst'],
    ),
    item(
      'arrive',
      t.arrive,
      t.warmUp,
      message('Arrive'),
      message('Toilet first, then the bag, then a look at the way to the pen.'),
    ),
    item(
      'warmUp',
      t.warmUp,
      t.strides,
      message('Warm-up: {n} min easy', { n: t.warmUpEasyMin }),
      message('So easy that you could talk; off the road.'),
      WARM_UP_SOURCE,
      ['traffic', 'chest'],
    ),
    item(
      'strides',
      t.strides,
      t.layers,
      message('{n} strides', { n: t.strideCount }),
      message('20 seconds each at a little quicker than race pace, a walk back between.'),
      PRACTICE,
    ),
    item('layers', t.layers, t.pen, message('Warm kit off, layers on'), layers.text, layers.source, [
      'rules',
    ]),
    item(
      'pen',
      t.pen,
      0,
      message('In the pen'),
      wish.penClosesMin > LONG_IN_PEN_MIN
        ? message('It closes early: keep the layers on and move on the spot.')
        : message('Layers off for the last minutes. Have the run open on the phone, waiting for the gun.'),
      PRACTICE,
      ['rules'],
    ),
    item('gun', 0, 0, message('Gun'), message('Your own clock starts at the line.')),
  ];
  return items.sort((a, b) => a.fromMin - b.fromMin);
};
