import { type Message, message } from '../../units/message.ts';
import type { CautionKey } from '../cautions.ts';
import { PRACTICE, read, type Source } from '../source.ts';

/** What the day and the course may bring. Null where it is not known. */
export interface Conditions {
  readonly temperatureC: number | null;
  /** Sum of all ascents, metres. */
  readonly climbM: number | null;
  readonly distanceM: number;
}

/** A reason to take the goal back. */
export interface ReviseReason {
  readonly kind: 'heat' | 'cold' | 'hills';
  /** `consider`: worth a thought; `revise`: do not hold the goal. */
  readonly weight: 'consider' | 'revise';
  readonly text: Message;
  readonly source: Source;
  readonly cautions: readonly CautionKey[];
}

/** Air temperatures, common practice, no source: studies use an index of heat, sun and humidity that a page cannot know. */
const WARM_C = 16;
const HOT_C = 21;
const COLD_C = 0;
/** Metres of ascent a kilometre (common practice, no source). */
const ROLLING_M_PER_KM = 6;
const HILLY_M_PER_KM = 12;

const HEAT_SOURCE = read(
  message(
    'Ely et al. 2007: the warmer (heat, sun and humidity together), the slower everybody; who suffers most differs between studies',
  ),
);
const HILL_SOURCE = read(message('Minetti et al. 2002: a climb costs more than the same descent gives back'));

const heat = (temperatureC: number): ReviseReason | null => {
  if (temperatureC < WARM_C) return null;
  const hot = temperatureC >= HOT_C;
  return {
    kind: 'heat',
    weight: hot ? 'revise' : 'consider',
    text: hot
      ? message(
          'At {n} degrees, do not hold the goal pace. Run by effort, open slower, and let the time be what it is.',
          { n: Math.round(temperatureC) },
        )
      : message(
          'At {n} degrees and with sun or damp air, expect to be slower. Open no quicker than goal pace.',
          { n: Math.round(temperatureC) },
        ),
    source: {
      ...HEAT_SOURCE,
      text: message('{source}. The limits of {from} and {to} degrees: {practice}', {
        source: HEAT_SOURCE.text,
        from: WARM_C,
        to: HOT_C,
        practice: PRACTICE.text,
      }),
    },
    cautions: ['heat', 'thirst', 'general'],
  };
};

const cold = (temperatureC: number): ReviseReason | null =>
  temperatureC > COLD_C
    ? null
    : {
        kind: 'cold',
        weight: 'consider',
        text: message(
          'At or below freezing, ice decides the pace. Warm up longer, and look at the ground before the clock.',
        ),
        source: PRACTICE,
        cautions: ['general'],
      };

const hills = (climbM: number, distanceM: number): ReviseReason | null => {
  const perKm = (1000 * climbM) / distanceM;
  if (!(perKm >= ROLLING_M_PER_KM)) return null;
  return {
    kind: 'hills',
    weight: perKm >= HILLY_M_PER_KM ? 'revise' : 'consider',
    text:
      perKm >= HILLY_M_PER_KM
        ? message(
            '{n} m of climbing: slower than the same effort on the flat. Set the goal from a hilly result, or give yourself more minutes.',
            { n: Math.round(climbM) },
          )
        : message('{n} m of climbing will cost some time. Plan by even effort, not even pace.', {
            n: Math.round(climbM),
          }),
    source: {
      ...HILL_SOURCE,
      text: message('{source}. The limits of {from} and {to} m a km: {practice}', {
        source: HILL_SOURCE.text,
        from: ROLLING_M_PER_KM,
        to: HILLY_M_PER_KM,
        practice: PRACTICE.text,
      }),
    },
    cautions: ['hills'],
  };
};

/** Reasons to revise a goal; empty on a cool flat day, or where nothing is known. */
export const reasonsToRevise = ({ temperatureC, climbM, distanceM }: Conditions): readonly ReviseReason[] =>
  [
    temperatureC === null ? null : heat(temperatureC),
    temperatureC === null ? null : cold(temperatureC),
    climbM === null ? null : hills(climbM, distanceM),
  ].filter((reason) => reason !== null);
