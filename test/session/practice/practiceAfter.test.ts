import { expect, test } from 'vitest';
import type { Call } from '../../../src/core/cues/call.ts';
import { readPracticePlan } from '../../../src/core/plan/parsePracticePlan.ts';
import { beginPractice } from '../../../src/core/practice/practice.ts';
import { practiceStep } from '../../../src/core/practice/step.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { saidAfterwards, startLivePractice } from '../../../src/session/practice/practiceLive.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { pretendTime } from '../pretend.ts';

const voice = voiceOf(english.pack, english.words);
const got = readPracticePlan({
  kind: 'practice',
  place: 'indoors',
  legs: [{ for: { timeS: 30 } }, { for: { timeS: 60 }, target: { effort: 'hard' } }],
});
if (!got.ok) throw new Error('refused');
const plan = got.value;

const tonesOf = (utterance: Call['utterance'] | null): string[] =>
  utterance?.parts.flatMap(({ sound }) => ('tone' in sound ? [sound.tone] : [])) ?? [];

test('what a countdown led to is said after it without the countdown; a countdown alone is not', () => {
  let practice = beginPractice({ plan, voice });
  const calls: Call[] = [];
  for (let atMs = 0; atMs <= 40_000; atMs += 100) {
    const next = practiceStep(
      practice,
      atMs === 0 ? { type: 'event', atMs, event: 'start' } : { type: 'clock', atMs },
    );
    practice = next.practice;
    calls.push(...next.calls);
  }
  const change = calls.find((c) => c.saying.kind === 'leg' && c.saying.tone === 'countdown');
  if (change === undefined) throw new Error('no change of leg');
  const later = saidAfterwards(voice);
  expect(tonesOf(change.utterance)).toEqual(['countdown']);
  expect(tonesOf(later(change))).toEqual(['leg']);
  expect(later(change)?.text).toBe(change.utterance.text);
  expect(later({ ...change, utterance: { ...change.utterance, text: '' } })).toBeNull();
  const first = calls[0] as Call;
  expect(later(first)).toBe(first.utterance);
});

test('a phone call over a change of leg: the leg is told when the sound is back, while it is still news', () => {
  const time = pretendTime();
  let isThere = true;
  const said: string[] = [];
  const live = startLivePractice({
    config: { plan, voice },
    ear: {
      say: (utterance, _atMs, latestMs) => {
        if (!isThere) return 'silent';
        if (latestMs < time.nowMs()) return 'late';
        said.push(`${tonesOf(utterance).join()} ${utterance.text}`);
        return 'scheduled';
      },
      takeBack: () => {},
      hush: () => {},
    },
    buzz: () => {},
    clock: { nowMs: time.nowMs, pageMs: (ms) => ms, moveOn: () => {} },
    time,
    watch: null,
    record: () => {},
    onOver: () => {},
  });
  live.press('start');
  time.pass(20_000);
  isThere = false;
  time.pass(600);
  live.soundLost();
  time.pass(11_000);
  isThere = true;
  live.soundBack();
  expect(said.slice(1)).toEqual([expect.stringMatching(/^leg .*Hard\.$/)]);
  live.close();
});
