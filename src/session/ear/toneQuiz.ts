import { TONES, type Tone } from '../../core/cues/voicePort.ts';
import { chanceOf } from '../../core/units/chance.ts';

export interface QuizQuestion {
  readonly tone: Tone;
  /** What may be answered, the right one among them, none twice. */
  readonly choices: readonly Tone[];
}

export interface Quiz {
  readonly questions: readonly QuizQuestion[];
  /** What was answered so far, question by question. */
  readonly answers: readonly Tone[];
}

/** A quiz of two minutes, with the tones themselves and the reading of the answers. */
export const QUESTIONS = 8;
const CHOICES = 4;

/** Fisher and Yates' shuffle. */
const shuffled = <T>(things: readonly T[], uniform: () => number): T[] => {
  const left = [...things];
  const out: T[] = [];
  while (left.length > 0) out.push(...left.splice(Math.floor(uniform() * left.length), 1));
  return out;
};

/** Tones out of two packs of them, so that the last cannot be told by what is left; never the same twice running. */
const drawn = (uniform: () => number): Tone[] => {
  const pack = shuffled([...TONES, ...TONES], uniform);
  const out: Tone[] = [];
  while (out.length < QUESTIONS) {
    const at = pack.findIndex((tone) => tone !== out.at(-1));
    if (at < 0) break;
    out.push(...pack.splice(at, 1));
  }
  return out;
};

/** @param seed  the same seed gives the same quiz */
export const quizOf = (seed: number): Quiz => {
  const { uniform } = chanceOf(seed);
  const questions = drawn(uniform).map((tone) => {
    const others = shuffled(
      TONES.filter((other) => other !== tone),
      uniform,
    ).slice(0, CHOICES - 1);
    return { tone, choices: shuffled([tone, ...others], uniform) };
  });
  return { questions, answers: [] };
};

/** An answer to the first question that has none; none is taken that was not offered, or after the last. */
export const withAnswer = (quiz: Quiz, answer: Tone): Quiz => {
  const question = quiz.questions[quiz.answers.length];
  return question?.choices.includes(answer) ? { ...quiz, answers: [...quiz.answers, answer] } : quiz;
};

export interface QuizResult {
  readonly right: number;
  readonly of: number;
  /** Tones to hear again: each that was missed, and each that was taken for another; in the order of the family. */
  readonly again: readonly Tone[];
}

export const resultOf = ({ questions, answers }: Quiz): QuizResult => {
  const missed = answers.flatMap((answer, i) => {
    const tone = questions[i]?.tone;
    return tone === undefined || tone === answer ? [] : [tone, answer];
  });
  return {
    right: answers.filter((answer, i) => answer === questions[i]?.tone).length,
    of: questions.length,
    again: TONES.filter((tone) => missed.includes(tone)),
  };
};
