import { type Message, message } from '../units/message.ts';
import { M_PER_MILE } from '../units/units.ts';

/** A standard distance with the name runners call it by. */
export interface Preset {
  /** As plans are named; data, not text for a screen. */
  readonly name: string;
  /** As it is shown. */
  readonly label: Message;
  readonly distanceM: number;
}

/**
 * World Athletics' road distances: the marathon is 42.195 km and the half is half of it (not 13.1 miles, which is
 * 15 m less). The mile is 1609.344 m exactly.
 */
export const PRESETS = [
  { name: '5 km', label: message('5 km'), distanceM: 5000 },
  { name: '10 km', label: message('10 km'), distanceM: 10_000 },
  { name: '10 miles', label: message('10 miles'), distanceM: 10 * M_PER_MILE },
  { name: 'Half marathon', label: message('Half marathon'), distanceM: 21_097.5 },
  { name: 'Marathon', label: message('Marathon'), distanceM: 42_195 },
] as const satisfies readonly Preset[];

/** Distances come rounded to the metre or the yard: within this of a preset, the preset is meant. */
const SAME_DISTANCE_M = 1;

/** The preset a distance stands for, or null for a distance of its own. */
export const presetAt = (distanceM: number): Preset | null =>
  PRESETS.find((p) => Math.abs(p.distanceM - distanceM) <= SAME_DISTANCE_M) ?? null;
