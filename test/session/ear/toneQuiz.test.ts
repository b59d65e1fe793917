import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TONES } from '../../../src/core/cues/voicePort.ts';
import { QUESTIONS, quizOf, resultOf, withAnswer } from '../../../src/session/ear/toneQuiz.ts';

const seeds = fc.integer({ min: 0, max: 2 ** 42 });

describe('a quiz', () => {
  test('asks eight tones, none twice running, each among four different names', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { questions } = quizOf(seed);
        expect(questions).toHaveLength(QUESTIONS);
        questions.forEach(({ tone, choices }, i) => {
          expect(tone).not.toBe(questions[i - 1]?.tone);
          expect(choices).toContain(tone);
          expect(new Set(choices).size).toBe(4);
        });
      }),
    );
  });

  test('is the same for the same seed, and seldom for another', () => {
    expect(quizOf(7)).toEqual(quizOf(7));
    expect(new Set(Array.from({ length: 50 }, (_, i) => JSON.stringify(quizOf(i)))).size).toBe(50);
  });

  test('has the right name in any place, and asks for every tone, over many', () => {
    const all = Array.from({ length: 200 }, (_, i) => quizOf(i).questions).flat();
    const places = [0, 1, 2, 3].map((at) => all.filter(({ tone, choices }) => choices[at] === tone).length);
    for (const count of places) expect(count / all.length).toBeGreaterThan(0.2);
    for (const tone of TONES)
      expect(all.filter((q) => q.tone === tone).length / all.length).toBeGreaterThan(0.09);
  });

  test('counts what was right, and names what to hear again: the missed and what they were taken for', () => {
    fc.assert(
      fc.property(seeds, fc.array(fc.nat(3), { minLength: 8, maxLength: 8 }), (seed, picks) => {
        const quiz = quizOf(seed);
        const answers = quiz.questions.map(({ choices }, i) => choices[picks[i] ?? 0] ?? 'leg');
        const done = answers.reduce(withAnswer, quiz);
        const { right, of, again } = resultOf(done);
        const wrong = quiz.questions.filter(({ tone }, i) => tone !== answers[i]);
        expect([right, of]).toEqual([QUESTIONS - wrong.length, QUESTIONS]);
        expect(again.length === 0).toBe(wrong.length === 0);
        quiz.questions.forEach(({ tone }, i) => {
          if (tone !== answers[i]) expect(again).toEqual(expect.arrayContaining([tone, answers[i]]));
        });
      }),
    );
  });

  test('takes no answer that was not offered, and none after the last', () => {
    const quiz = quizOf(3);
    const other = TONES.find((tone) => !quiz.questions[0]?.choices.includes(tone)) ?? 'leg';
    expect(withAnswer(quiz, other)).toBe(quiz);
    const done = quiz.questions.reduce((q, { tone }) => withAnswer(q, tone), quiz);
    expect(withAnswer(done, 'leg')).toBe(done);
    expect(resultOf(done)).toEqual({ right: 8, of: 8, again: [] });
  });
});
