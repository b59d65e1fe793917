import type { RacePlan } from '../../core/plan/racePlan.ts';
import { SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { listed, type Message, message } from '../../core/units/message.ts';
import { metresPer } from '../../core/units/units.ts';
import { distance } from '../format.ts';

/** Something that was put on the course, and the plan without it. */
export interface PlacedThing {
  readonly key: string;
  readonly atM: number;
  readonly text: Message;
  readonly without: (plan: RacePlan) => RacePlan;
}

const boardText = (n: number, stands: boolean): Message =>
  stands ? message('board {n} stands here', { n }) : message('board {n}, not trusted', { n });

/** Everything on the way that can be taken off again, in the order of running. */
export const placedThings = (plan: RacePlan): readonly PlacedThing[] =>
  [
    ...plan.stations.map((s) => ({
      key: `station ${s.atM}`,
      atM: s.atM,
      text: s.offers.length === 0 ? message('station') : listed(s.offers.map((o) => SUPPLY_NAMES[o])),
      without: (p: RacePlan) => ({ ...p, stations: p.stations.filter((o) => o.atM !== s.atM) }),
    })),
    ...plan.fuel.map((f) => ({
      key: `fuel ${f.atM}`,
      atM: f.atM,
      text: message('my {item}', { item: SUPPLY_NAMES[f.item] }),
      without: (p: RacePlan) => ({
        ...p,
        fuel: p.fuel.filter((o) => o.atM !== f.atM || o.item !== f.item),
      }),
    })),
    ...(plan.tunnels ?? []).map((t) => ({
      key: `tunnel ${t.fromM}`,
      atM: t.fromM,
      text: message('tunnel to {place}', { place: distance(t.toM, plan.unit, 2) }),
      without: (p: RacePlan) => ({ ...p, tunnels: (p.tunnels ?? []).filter((o) => o.fromM !== t.fromM) }),
    })),
    ...(plan.wrongBoards ?? []).map((b) => ({
      key: `board ${b.saysM}`,
      atM: b.standsAtM ?? b.saysM,
      text: boardText(Math.round(b.saysM / metresPer(plan.unit)), b.standsAtM !== null),
      without: (p: RacePlan) => ({
        ...p,
        wrongBoards: (p.wrongBoards ?? []).filter((o) => o.saysM !== b.saysM),
      }),
    })),
  ].sort((a, b) => a.atM - b.atM);
