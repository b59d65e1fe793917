import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { numberWord as german } from '../../src/languages/de/words/numbers.ts';
import { numberWord as spanish } from '../../src/languages/es/words/numbers.ts';
import { numberWord as french } from '../../src/languages/fr/words/numbers.ts';
import { numberWord as italian } from '../../src/languages/it/words/numbers.ts';
import { numberWord as portuguese } from '../../src/languages/pt/words/numbers.ts';

// Source: the number rules of eSpeak NG (npm @echogarden/espeak-ng-emscripten 0.3.5), seen: the engine reads figures by
// rules of its own, and words by their letters. Both readings of a number must sound alike.

interface Engine {
  readonly set_voice: (name: string) => void;
  readonly synthesize: (
    text: string,
    take: (sound: unknown, events: readonly { readonly type: string; readonly id: string }[] | null) => void,
  ) => void;
}

const path = createRequire(import.meta.url).resolve('@echogarden/espeak-ng-emscripten');
const { default: begin } = (await import(path)) as {
  default: () => Promise<{ eSpeakNGWorker: new () => Engine | Promise<Engine> }>;
};
const engine = await new (await begin()).eSpeakNGWorker();

/** The speech sounds of a text in the voice that is set, without stress and pauses. */
const sounds = (text: string): string => {
  let said = '';
  engine.synthesize(text, (_, events) => {
    for (const { type, id } of events ?? []) if (type === 'phoneme') said += id;
  });
  return said.replace(/[ˈˌː\s|-]/g, '');
};

/** Letters to put in, take out or change to get from one to the other (Levenshtein). */
const distance = (a: string, b: string): number => {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (const [i, x] of [...a].entries()) {
    const next = [i + 1];
    for (const [j, y] of [...b].entries())
      next.push(Math.min((next[j] ?? 0) + 1, (row[j + 1] ?? 0) + 1, (row[j] ?? 0) + (x === y ? 0 : 1)));
    row = next;
  }
  return row.at(-1) ?? 0;
};

const NUMBERS = Array.from({ length: 101 }, (_, n) => n);

/** From its letters the engine lets 'und' run into the next word: 'undvierzig' with the v of Vase. */
const unvoiced = (said: string): string => said.replaceAll('d', 't').replaceAll('v', 'f');
const asItIs = (said: string): string => said;

describe.each([
  ['de', german, unvoiced],
  ['fr', french, asItIs],
  ['es', spanish, asItIs],
  ['it', italian, asItIs],
  ['pt-br', portuguese, asItIs],
] as const)('number words, %s', (voice, numberWord, fold) => {
  it('sound like no other number than their own', () => {
    engine.set_voice(voice);
    const read = NUMBERS.map((n) => fold(sounds(String(n))));
    const wrong = NUMBERS.flatMap((n) => {
      // ‘Zwo’ is ours, for the ear; the engine reads 2 as ‘zwei’.
      const said = fold(
        sounds(numberWord(n).replace(/^zwo(?=$|und)/, (zwo) => (zwo === numberWord(n) ? 'zwei' : 'zwei '))),
      );
      const off = read.map((other) => distance(said, other));
      const own = off[n] ?? 0;
      const nearest = Math.min(...off.filter((_, other) => other !== n));
      return own <= 4 && own < nearest ? [] : [`${numberWord(n)}: ${said}, ${n} is read ${read[n]}`];
    });
    expect(wrong).toEqual([]);
  });
});
