import type { ComponentChild } from 'preact';
import type { Message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';

/**
 * A sentence of the screens with elements in its places: `rich('Read {more} first', { more: <a …>…</a> })`. The sentence
 * is found in the language first, so that the elements stand where that language puts them.
 */
export const rich = (
  text: string | Message,
  places: Readonly<Record<string, ComponentChild>>,
): ComponentChild[] =>
  t(text)
    .split(/(\{\w+\})/)
    .map((part) => {
      const name = /^\{(\w+)\}$/.exec(part)?.[1];
      return name !== undefined && name in places ? places[name] : part;
    });
