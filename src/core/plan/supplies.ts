/** What a station can offer and what a runner can carry: the words the voice knows. */
export const OFFERS = ['water', 'drink', 'gel', 'food', 'sponge'] as const;
export type Offer = (typeof OFFERS)[number];

export const ITEMS = ['gel', 'chews', 'drink', 'salt', 'caffeine gel'] as const;
export type Item = (typeof ITEMS)[number];
