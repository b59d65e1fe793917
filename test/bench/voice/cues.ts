import type { Ahead, Pace, Saying } from '../../../src/core/cues/saying.ts';
import { ITEMS, OFFERS } from '../../../src/core/plan/supplies.ts';
import { type DistanceUnit, metresPer } from '../../../src/core/units/units.ts';
import { normal, pick, whole } from './random.ts';

type Random = () => number;

/** How often each kind is drawn, roughly as a race with boards, checkpoints and a wavering pace speaks. */
type Kind = (typeof KINDS)[number][0];

const KINDS = [
  ['marker', 26],
  ['checkpoint', 22],
  ['ease', 12],
  ['quicken', 12],
  ['answer', 6],
  ['station', 5],
  ['fuel', 4],
  ['signal', 3],
  ['opening', 3],
  ['settle', 2],
  ['push', 2],
  ['start', 1],
  ['finish', 2],
] as const;

const kindOf = (random: Random): Kind => {
  const bag = KINDS.flatMap(([kind, weight]) => Array<Kind>(weight).fill(kind));
  return pick(random, bag);
};

const ahead = (random: Random): Ahead => {
  const seconds = Math.round(Math.abs(normal(random)) * 18);
  const sure = random() < 0.8;
  return seconds === 0
    ? { side: 'even', seconds, sure }
    : { side: random() < 0.5 ? 'up' : 'down', seconds, sure };
};

const pace = (random: Random, unit: DistanceUnit): Pace => ({
  unit,
  sPerUnit: unit === 'km' ? whole(random, 180, 420) : whole(random, 290, 680),
});

const timeFor = (random: Random, units: number, unit: DistanceUnit): number =>
  Math.round(units * pace(random, unit).sPerUnit);

/** One call at random, every number over the range that runners from 3 to 7 min/km meet. */
export const cueAt = (random: Random): Saying => {
  const unit: DistanceUnit = random() < 0.7 ? 'km' : 'mile';
  const kind = kindOf(random);
  const inM = pick(random, [50, 100, 150, 200, 250, 300, 400, 500]);
  switch (kind) {
    case 'marker':
      return {
        kind,
        count: whole(random, 1, 42),
        unit,
        splitS: pace(random, unit).sPerUnit,
        ahead: ahead(random),
      };
    case 'checkpoint': {
      const units = whole(random, 1, 42);
      const place =
        random() < 0.15 ? ({ name: 'halfway' } as const) : ({ tenths: 10 * units, unit } as const);
      return { kind, place, timeS: timeFor(random, units, unit), ahead: ahead(random) };
    }
    case 'ease':
    case 'quicken':
      return { kind, byS: whole(random, 2, 30), unit, ahead: ahead(random) };
    case 'answer': {
      const tenths = whole(random, 3, 420);
      return {
        kind,
        distanceM: (tenths * metresPer(unit)) / 10,
        unit,
        ahead: ahead(random),
        finishS: random() < 0.7 ? timeFor(random, tenths / 10 + whole(random, 1, 20), unit) : null,
      };
    }
    case 'station':
      return { kind, offers: OFFERS.filter((offer) => offer === 'water' || random() < 0.3), inM };
    case 'fuel':
      return { kind, item: pick(random, ITEMS), inM, withWater: random() < 0.5 };
    case 'signal':
      return random() < 0.5
        ? { kind, what: 'lost', ahead: null }
        : { kind, what: 'back', ahead: ahead(random) };
    case 'opening':
      return random() < 0.5
        ? { kind, what: 'hold', pace: pace(random, unit), untilM: whole(random, 5, 20) * 100 }
        : { kind, what: 'tooQuick', byS: whole(random, 3, 30), unit };
    case 'settle':
      return { kind, pace: pace(random, unit), ahead: ahead(random) };
    case 'push':
      return { kind, pace: pace(random, unit), remainingM: whole(random, 1000, 8000), ahead: ahead(random) };
    case 'start':
      return { kind, goalS: 60 * whole(random, 18, 300), pace: pace(random, unit) };
    case 'finish':
      return { kind, timeS: whole(random, 900, 5 * 3600), ahead: ahead(random) };
  }
};
