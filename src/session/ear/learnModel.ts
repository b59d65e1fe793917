import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Talk } from '../../core/cues/talk.ts';
import type { Tone } from '../../core/cues/voicePort.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import type { Speaker } from '../../voice/device/speaker.ts';
import { shapeOf, type ToneShape } from '../../voice/tones/shape.ts';
import { vibrationOf } from '../../voice/tones/vibration.ts';
import { toneAlone } from '../../voice/utter.ts';
import { type Quiz, quizOf, withAnswer } from './toneQuiz.ts';

/** The page on which the tones are learned. */
export interface LearnModel {
  readonly sound: Speaker['state'];
  readonly shapeOf: (tone: Tone) => ToneShape;
  /** Whether this device can vibrate. */
  readonly vibrates: boolean;
  /** Sounds a tone, and lets it be felt. To be called in a touch. */
  readonly play: (tone: Tone) => Promise<void>;
  /** Lets it be felt alone. */
  readonly feel: (tone: Tone) => void;
  /** Null while none is under way. */
  readonly quiz: ReadonlySignal<Quiz | null>;
  /** Begins one, anew if there is one; its first tone sounds. */
  readonly begin: () => Promise<void>;
  readonly answer: (tone: Tone) => void;
  readonly endQuiz: () => void;
  /** How much is said in a run. */
  readonly talk: Signal<Talk>;
  /** Silence, when the page is left. */
  readonly leave: () => void;
}

export interface LearnParts {
  readonly speaker: Speaker;
  readonly time: PageTime;
  readonly talk: Signal<Talk>;
  /** A number that is another one each time. */
  readonly newSeed: () => number;
  readonly nav: Pick<Navigator, 'vibrate'>;
}

const SOON_MS = 100;
const LATEST_MS = 2000;

export const createLearnModel = ({ speaker, time, talk, newSeed, nav }: LearnParts): LearnModel => {
  const quiz = signal<Quiz | null>(null);
  const vibrates = typeof nav.vibrate === 'function';

  const feel = (tone: Tone): void => {
    if (vibrates) nav.vibrate([...vibrationOf(tone)]);
  };

  const play = async (tone: Tone): Promise<void> => {
    const waking = speaker.wake();
    feel(tone);
    await waking;
    // Played again, it begins again.
    speaker.hush();
    const atMs = time.nowMs() + SOON_MS;
    speaker.say(toneAlone(tone), atMs, atMs + LATEST_MS);
  };

  return {
    sound: speaker.state,
    shapeOf,
    vibrates,
    play,
    feel,
    quiz,
    begin: async () => {
      const next = quizOf(newSeed());
      quiz.value = next;
      const first = next.questions[0];
      if (first !== undefined) await play(first.tone);
    },
    answer: (tone) => {
      if (quiz.value !== null) quiz.value = withAnswer(quiz.value, tone);
    },
    endQuiz: () => {
      quiz.value = null;
    },
    talk,
    leave: () => {
      speaker.hush();
      quiz.value = null;
    },
  };
};
