import type { RacePlan } from '../../core/plan/racePlan.ts';
import { SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { listed, type Message, message } from '../../core/units/message.ts';

/** What the plan has next on the way, and how far off. */
export interface NextThing {
  readonly what: 'checkpoint' | 'station' | 'fuel' | 'push' | 'finish';
  readonly name: Message;
  readonly inM: number;
}

/** The nearest thing ahead of a place; null behind the finish. Of two at one place what needs an act goes first. */
export const nextThing = (plan: RacePlan, distanceM: number): NextThing | null => {
  const things: readonly (Omit<NextThing, 'inM'> & { readonly atM: number })[] = [
    ...plan.fuel.map((f) => ({ what: 'fuel' as const, name: SUPPLY_NAMES[f.item], atM: f.atM })),
    ...plan.stations.map(({ offers, atM }) => ({
      what: 'station' as const,
      name: offers.length === 0 ? message('station') : listed(offers.map((offer) => SUPPLY_NAMES[offer])),
      atM,
    })),
    ...(plan.push
      ? [{ what: 'push' as const, name: message('push||near the finish'), atM: plan.push.fromM }]
      : []),
    ...plan.checkpointsM.map((atM) => ({ what: 'checkpoint' as const, name: message('checkpoint'), atM })),
    { what: 'finish' as const, name: message('finish'), atM: plan.distanceM },
  ];
  let next: NextThing | null = null;
  for (const { what, name, atM } of things) {
    const inM = atM - distanceM;
    if (inM > 0 && (next === null || inM < next.inM)) next = { what, name, inM };
  }
  return next;
};
