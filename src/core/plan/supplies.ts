import { type Message, message } from '../units/message.ts';

/** What a station can offer and what a runner can carry: the words the voice knows. */
export const OFFERS = ['water', 'drink', 'gel', 'food', 'sponge'] as const;
export type Offer = (typeof OFFERS)[number];

export const ITEMS = ['gel', 'chews', 'drink', 'salt', 'caffeine gel'] as const;
export type Item = (typeof ITEMS)[number];

/** What they are called on a screen. */
export const SUPPLY_NAMES: Readonly<Record<Offer | Item, Message>> = {
  water: message('water'),
  drink: message('drink||sports drink'),
  gel: message('gel'),
  food: message('food'),
  sponge: message('sponge'),
  chews: message('chews'),
  salt: message('salt'),
  'caffeine gel': message('caffeine gel'),
};
