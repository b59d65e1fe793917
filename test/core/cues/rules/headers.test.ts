import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const RULES = new URL('../../../../src/core/cues/rules/', import.meta.url);
/** What rules share, no rule of its own. */
const HELPERS = ['ahead.ts'];

const rules = readdirSync(RULES)
  .filter((name) => !HELPERS.includes(name))
  .map((name) => ({ name, text: readFileSync(new URL(name, RULES), 'utf8') }));

/** The comment that stands before the rule. */
const headerOf = (text: string): string =>
  /\/\*\*([\s\S]*?)\*\//.exec(text)?.[1]?.replace(/\n \* ?/g, ' ') ?? '';

describe('every rule says in its header, for a coach,', () => {
  test.each(rules)('$name: what, why now, how important, how long it is true', ({ text }) => {
    const header = headerOf(text);
    for (const part of [/What: /, /Why now: /, /\b([Ii]mportant)\b/, /\b[Tt]rue\b/])
      expect(header).toMatch(part);
  });

  test('and each kind of cue that a race is called with has its rule', () => {
    const all = rules.map(({ text }) => text).join('\n');
    const kinds = [
      ...['start', 'opening', 'settle', 'marker', 'checkpoint', 'ease', 'quicken', 'station', 'fuel', 'push'],
      ...['signal', 'answer', 'finish', 'notice', 'byClock', 'due', 'pacer', 'noPacer', 'rival'],
    ];
    for (const kind of kinds) expect(all, kind).toContain(`'${kind}'`);
  });
});
