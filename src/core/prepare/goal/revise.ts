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
  readonly text: string;
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
  'Ely et al. 2007: the warmer (heat, sun and humidity together), the slower everybody; who suffers most differs between studies',
);
const HILL_SOURCE = read('Minetti et al. 2002: a climb costs more than the same descent gives back');

const heat = (temperatureC: number): ReviseReason | null => {
  if (temperatureC < WARM_C) return null;
  const hot = temperatureC >= HOT_C;
  return {
    kind: 'heat',
    weight: hot ? 'revise' : 'consider',
    text: hot
      ? `At ${Math.round(temperatureC)} degrees, do not hold the goal pace. Run by effort, open slower, and let the time be what it is.`
      : `At ${Math.round(temperatureC)} degrees and with sun or damp air, expect to be slower. Open no quicker than goal pace.`,
    source: {
      ...HEAT_SOURCE,
      text: `${HEAT_SOURCE.text}. The limits of ${WARM_C} and ${HOT_C} degrees: ${PRACTICE.text}`,
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
        text: 'At or below freezing, ice decides the pace. Warm up longer, and look at the ground before the clock.',
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
        ? `${Math.round(climbM)} m of climbing: slower than the same effort on the flat. Set the goal from a hilly result, or give yourself more minutes.`
        : `${Math.round(climbM)} m of climbing will cost some time. Plan by even effort, not even pace.`,
    source: {
      ...HILL_SOURCE,
      text: `${HILL_SOURCE.text}. The limits of ${ROLLING_M_PER_KM} and ${HILLY_M_PER_KM} m a km: ${PRACTICE.text}`,
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
