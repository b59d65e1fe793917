import { gpxTimeMs } from '../course/gpxTime.ts';
import { type Message, message } from '../units/message.ts';
import { type DoorError, ok, type Result } from '../units/result.ts';
import { EFFORTS, type Extent, LEG_KINDS, type Leg, type Taking, type Target } from './practicePlan.ts';
import { fields, listOf, numberThat, oneOf, orElse, type Read, refuse } from './shape.ts';
import { ITEMS } from './supplies.ts';

/** Longer than any session, shorter than a slip of the hand. */
const MAX_TIME_S = 6 * 3600;
const MAX_DISTANCE_M = 100_000;
/** Shorter than this no countdown fits before the leg. */
const MIN_TIME_S = 10;
const MIN_DISTANCE_M = 50;
/** From a little quicker than the record over a kilometre to a slow walk. */
const PACE_S_PER_KM = { least: 120, most: 1200 };
const MAX_RAMP_S = 120;
/** Seconds that a runner takes to find a pace, where the file does not say (common practice, no source). */
const USUAL_RAMP_S = 15;
const HEART_BPM = { least: 60, most: 230 };
const MAX_REPEATS = 100;
const MAX_LEGS = 200;
const MAX_TAKEN = 50;

const within = (what: Message, least: number, most: number): Read<number> =>
  numberThat(message('{what}, {least} to {most}', { what, least, most }), (n) => n >= least && n <= most);

const timeS = within(message('a number of seconds'), MIN_TIME_S, MAX_TIME_S);
const distanceM = within(message('a number of metres'), MIN_DISTANCE_M, MAX_DISTANCE_M);
const bpm = within(message('beats a minute'), HEART_BPM.least, HEART_BPM.most);

const has = (found: unknown, key: string): found is Readonly<Record<string, unknown>> =>
  typeof found === 'object' && found !== null && Object.hasOwn(found, key);

/** `{ "timeS": 900 }`, `{ "distanceM": 1000 }` or `"press"`. */
const extent: Read<Extent> = (found, place) => {
  if (found === 'press') return ok({ by: 'press' });
  if (has(found, 'timeS')) {
    const got = timeS(found['timeS'], `${place}.timeS`);
    return got.ok ? ok({ by: 'time', timeS: got.value }) : got;
  }
  if (has(found, 'distanceM')) {
    const got = distanceM(found['distanceM'], `${place}.distanceM`);
    return got.ok ? ok({ by: 'distance', distanceM: got.value }) : got;
  }
  return refuse(place, '{ "timeS": … }, { "distanceM": … } or "press"', found);
};

/** `{ "paceSPerKm": 296 }`, `{ "effort": "easy" }` or `"free"`. */
const target: Read<Target> = (found, place) => {
  if (found === undefined || found === null || found === 'free') return ok({ by: 'free' });
  if (has(found, 'paceSPerKm')) {
    const { least, most } = PACE_S_PER_KM;
    const got = within(
      message('seconds per kilometre'),
      least,
      most,
    )(found['paceSPerKm'], `${place}.paceSPerKm`);
    return got.ok ? ok({ by: 'pace', paceSPerKm: got.value }) : got;
  }
  if (has(found, 'effort')) {
    const got = oneOf(EFFORTS)(found['effort'], `${place}.effort`);
    return got.ok ? ok({ by: 'effort', effort: got.value }) : got;
  }
  return refuse(place, '{ "paceSPerKm": … }, { "effort": … } or "free"', found);
};

interface TakingFields {
  readonly item: Taking['item'];
  readonly atS: number | null;
  readonly atM: number | null;
}

const taking: Read<Taking> = (found, place) => {
  const got = fields<TakingFields>({
    item: oneOf<Taking['item']>([...ITEMS, 'water']),
    atS: orElse(within(message('a number of seconds'), 0, MAX_TIME_S), null),
    atM: orElse(within(message('a number of metres'), 0, MAX_DISTANCE_M), null),
  })(found, place);
  if (!got.ok) return got;
  const { item, atS, atM } = got.value;
  if (atS !== null) return ok({ item, at: { timeS: atS } });
  if (atM !== null) return ok({ item, at: { distanceM: atM } });
  return refuse(place, 'atS or atM: how far into the leg', found);
};

const repOf: Read<Leg['rep']> = orElse((found, place) => {
  const number = within(message('a whole number'), 1, MAX_LEGS);
  const got = fields({ count: number, of: number })(found, place);
  if (!got.ok) return got;
  return got.value.count <= got.value.of ? got : refuse(`${place}.count`, 'at most `of`', got.value.count);
}, null);

type LegFields = Omit<Leg, 'extent' | 'rampS'> & { readonly for: Extent; readonly rampS: number | null };

const legFields = fields<LegFields>({
  kind: orElse(oneOf(LEG_KINDS), 'work'),
  for: extent,
  target,
  rampS: orElse(within(message('a number of seconds'), 0, MAX_RAMP_S), null),
  rep: repOf,
  heartMostBpm: orElse(bpm, null),
  take: orElse(listOf(taking, MAX_TAKEN), []),
});

const leg: Read<Leg> = (found, place) => {
  const got = legFields(found, place);
  if (!got.ok) return got;
  const { for: extent, rampS, ...rest } = got.value;
  const usualS = rest.target.by === 'pace' ? USUAL_RAMP_S : 0;
  return ok({ ...rest, extent, rampS: rampS ?? usualS });
};

/** The legs of a repeat, written out: work is numbered, and what recovers from the last of them is left out. */
const writtenOut = (legs: readonly Leg[], repeat: number): readonly Leg[] =>
  Array.from({ length: repeat }, (_, i) =>
    legs
      .filter((l) => l.kind !== 'recovery' || i < repeat - 1)
      .map((l) => (l.kind === 'recovery' || repeat === 1 ? l : { ...l, rep: { count: i + 1, of: repeat } })),
  ).flat();

const legOrRepeat: Read<readonly Leg[]> = (found, place) => {
  if (!has(found, 'repeat')) {
    const got = leg(found, place);
    return got.ok ? ok([got.value]) : got;
  }
  const got = fields({
    repeat: numberThat(
      message('a whole number, 1 to {n}', { n: MAX_REPEATS }),
      (n) => Number.isInteger(n) && n >= 1 && n <= MAX_REPEATS,
    ),
    legs: listOf(leg, MAX_LEGS),
  })(found, place);
  return got.ok ? ok(writtenOut(got.value.legs, got.value.repeat)) : got;
};

/** Every leg in order, repeats written out; at least one, at most 200. */
export const practiceLegs: Read<readonly Leg[]> = (found, place) => {
  const got = listOf(legOrRepeat, MAX_LEGS)(found, place);
  if (!got.ok) return got;
  const legs = got.value.flat();
  return legs.length >= 1 && legs.length <= MAX_LEGS
    ? ok(legs)
    : refuse(place, message('1 to {n} legs', { n: MAX_LEGS }), found);
};

/** An instant as `2027-05-09T08:20:00Z`, to epoch ms. */
export const instant: Read<number> = (found, place): Result<number, DoorError> => {
  const ms = typeof found === 'string' ? gpxTimeMs(found) : null;
  return ms === null ? refuse(place, 'a time such as 2027-05-09T08:20:00Z', found) : ok(ms);
};
