import type { RacePlan } from '../core/plan/racePlan.ts';

/** What the plan has next on the way, and how far off. */
export interface NextThing {
  readonly what: 'checkpoint' | 'station' | 'fuel' | 'push' | 'finish';
  readonly name: string;
  readonly inM: number;
}

/** The nearest thing ahead of a place; null behind the finish. Of two at one place what needs an act goes first. */
export const nextThing = (plan: RacePlan, distanceM: number): NextThing | null => {
  const things: readonly (Omit<NextThing, 'inM'> & { readonly atM: number })[] = [
    ...plan.fuel.map((f) => ({ what: 'fuel' as const, name: f.item, atM: f.atM })),
    ...plan.stations.map((s) => ({ what: 'station' as const, name: s.offers.join(' and '), atM: s.atM })),
    ...(plan.push ? [{ what: 'push' as const, name: 'push', atM: plan.push.fromM }] : []),
    ...plan.checkpointsM.map((atM) => ({ what: 'checkpoint' as const, name: 'checkpoint', atM })),
    { what: 'finish' as const, name: 'finish', atM: plan.distanceM },
  ];
  let next: NextThing | null = null;
  for (const { what, name, atM } of things) {
    const inM = atM - distanceM;
    if (inM > 0 && (next === null || inM < next.inM)) next = { what, name, inM };
  }
  return next;
};
