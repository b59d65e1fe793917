import type { RacePlan } from '../../core/plan/racePlan.ts';
import { metresPer } from '../../core/units/units.ts';
import { distance } from '../format.ts';

/** Something that was put on the course, and the plan without it. */
export interface PlacedThing {
  readonly key: string;
  readonly atM: number;
  readonly text: string;
  readonly without: (plan: RacePlan) => RacePlan;
}

/** Everything on the way that can be taken off again, in the order of running. */
export const placedThings = (plan: RacePlan): readonly PlacedThing[] =>
  [
    ...plan.stations.map((s) => ({
      key: `station ${s.atM}`,
      atM: s.atM,
      text: s.offers.join(', ') || 'station',
      without: (p: RacePlan) => ({ ...p, stations: p.stations.filter((o) => o.atM !== s.atM) }),
    })),
    ...plan.fuel.map((f) => ({
      key: `fuel ${f.atM}`,
      atM: f.atM,
      text: `my ${f.item}`,
      without: (p: RacePlan) => ({
        ...p,
        fuel: p.fuel.filter((o) => o.atM !== f.atM || o.item !== f.item),
      }),
    })),
    ...(plan.tunnels ?? []).map((t) => ({
      key: `tunnel ${t.fromM}`,
      atM: t.fromM,
      text: `tunnel to ${distance(t.toM, plan.unit, 2)}`,
      without: (p: RacePlan) => ({ ...p, tunnels: (p.tunnels ?? []).filter((o) => o.fromM !== t.fromM) }),
    })),
    ...(plan.wrongBoards ?? []).map((b) => ({
      key: `board ${b.saysM}`,
      atM: b.standsAtM ?? b.saysM,
      text: `board ${Math.round(b.saysM / metresPer(plan.unit))}${b.standsAtM === null ? ', not trusted' : ' stands here'}`,
      without: (p: RacePlan) => ({
        ...p,
        wrongBoards: (p.wrongBoards ?? []).filter((o) => o.saysM !== b.saysM),
      }),
    })),
  ].sort((a, b) => a.atM - b.atM);
