import { describe, expect, test } from 'vitest';
import type { Saying } from '../../../src/core/cues/saying.ts';
import { isSaid, type Topic } from '../../../src/core/cues/talk.ts';
import { TONES, type Tone, wordless } from '../../../src/core/cues/voicePort.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { aloneOf } from '../../../src/voice/tones/alone.ts';
import { toneDurationS } from '../../../src/voice/tones/family.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { everySpoken } from '../../../src/voicepack/walk.ts';

/** What stays in words among tones, and no more than that. */
const SPOKEN: readonly Saying['kind'][] = [
  'station',
  'fuel',
  'byClock',
  'notice',
  'marker',
  'signal',
  'pen',
  'reminder',
  'pacer',
  'noPacer',
  'answer',
  'rep',
  'rival',
];
/** Of these, words stay for some meanings alone: no board for a press, a course run backwards, trouble of the device. */
const SOMETIMES: readonly Saying['kind'][] = ['marker', 'signal', 'notice'];
/** Numbers without a tone, and the stations by the road: not called at all. */
const LEFT_OUT: readonly Topic[] = ['station', 'rep', 'rival', 'freePush'];

const voice = voiceOf(english.pack, english.words);
const tones = wordless(voice);

/** What the calls of each kind are among tones: which tones, and null where words stay. */
const alone = new Map<Saying['kind'], Set<Tone | null>>();
for (const { saying, form } of everySpoken(english.words))
  if (form === 'short')
    alone.set(saying.kind, (alone.get(saying.kind) ?? new Set<Tone | null>()).add(aloneOf(saying)));

describe('for those who want no words', () => {
  test('every kind of call is a tone alone, or is known to stay in words', () => {
    expect(alone.size).toBeGreaterThan(20);
    for (const [kind, tonesOf] of alone) {
      expect(tonesOf.has(null), kind).toBe(SPOKEN.includes(kind));
      if (SPOKEN.includes(kind)) expect(tonesOf.size > 1, kind).toBe(SOMETIMES.includes(kind));
    }
  });

  test('every tone of the family is the whole of some call', () => {
    // The walk goes over words, and those of a leg that is counted in are the same.
    const counted = aloneOf({ kind: 'done', tone: 'countdown', timeS: 1500, distance: null });
    const heard = [counted, ...[...alone.values()].flatMap((some) => [...some])];
    expect(heard).toEqual(expect.arrayContaining([...TONES]));
  });

  test('a tone alone has no words and its own length; what has none is said as ever', () => {
    const ease: Saying = {
      kind: 'ease',
      byS: 6,
      unit: 'km',
      ahead: { side: 'up', seconds: 4, sure: true },
    };
    expect(tones.utter(ease, 'long')).toEqual({
      text: '',
      parts: [{ sound: { tone: 'ease' }, offsetS: 0 }],
      durationS: toneDurationS('ease'),
    });
    const gel: Saying = { kind: 'fuel', item: 'gel', inM: 100, withWater: true };
    expect(tones.utter(gel, 'long')).toEqual(voice.utter(gel, 'long'));
    expect(tones.utter(gel, 'long').text).toMatch(/gel/i);
  });

  test('what no tone can tell is left out; food, answers and acts are not', () => {
    for (const topic of LEFT_OUT) expect(isSaid('tones', topic), topic).toBe(false);
    for (const topic of ['fuel', 'answer', 'ease', 'quicken', 'checkpoint', 'finish', 'marker'] as const)
      expect(isSaid('tones', topic), topic).toBe(true);
  });
});
