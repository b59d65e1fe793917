import { useSignal } from '@preact/signals';
import type { Tone } from '../../core/cues/voicePort.ts';
import { t } from '../../languages/text.ts';
import type { LearnModel } from '../../session/ear/learnModel.ts';
import { type Quiz, resultOf } from '../../session/ear/toneQuiz.ts';
import { TONE_TEXTS } from './toneTexts.ts';

const nameOf = (tone: Tone): string => t(TONE_TEXTS[tone].name);

/** A quiz by ear: a tone sounds, its name is asked for. */
export const ToneQuiz = ({ model }: { model: LearnModel }) => {
  const quiz = model.quiz.value;
  return (
    <section class="tone-quiz" aria-labelledby="tone-quiz">
      <h2 id="tone-quiz">{t('Do you know them?')}</h2>
      {quiz === null ? (
        <>
          <p>{t('Eight tones, each with four names. Put your earphones in.')}</p>
          <div class="buttons">
            <button type="button" class="main-button" onClick={() => void model.begin()}>
              {t('Begin the quiz')}
            </button>
          </div>
        </>
      ) : (
        <Asked model={model} quiz={quiz} />
      )}
    </section>
  );
};

const Asked = ({ model, quiz }: { model: LearnModel; quiz: Quiz }) => {
  // The question that is looked at: an answered one until the next is asked for.
  const at = useSignal(0);
  const { questions, answers } = quiz;
  const question = questions[at.value];
  const answer = answers[at.value];
  if (question === undefined)
    return (
      <Result
        model={model}
        quiz={quiz}
        again={() => {
          at.value = 0;
        }}
      />
    );
  const goOn = (): void => {
    at.value += 1;
    const next = questions[at.value];
    if (next !== undefined) void model.play(next.tone);
  };
  return (
    <>
      <p>
        {t('Tone {count} of {of}', { count: at.value + 1, of: questions.length })}{' '}
        <button type="button" onClick={() => void model.play(question.tone)}>
          {t('Hear it again')}
        </button>
      </p>
      <div class="buttons tone-choices">
        {question.choices.map((tone) => (
          <button
            key={tone}
            type="button"
            disabled={answer !== undefined}
            aria-pressed={answer === tone}
            onClick={() => model.answer(tone)}
          >
            {nameOf(tone)}
          </button>
        ))}
      </div>
      <p role="status" class="tone-verdict">
        {answer === undefined
          ? ''
          : answer === question.tone
            ? t('Right: {name}.', { name: nameOf(question.tone) })
            : t('No, that was {name}.', { name: nameOf(question.tone) })}
      </p>
      {answer !== undefined && (
        <div class="buttons">
          <button type="button" class="main-button" onClick={goOn}>
            {at.value + 1 < questions.length ? t('Next tone') : t('How I did')}
          </button>
        </div>
      )}
    </>
  );
};

const Result = ({ model, quiz, again }: { model: LearnModel; quiz: Quiz; again: () => void }) => {
  const result = resultOf(quiz);
  return (
    <>
      <p role="status" class="tone-verdict">
        {t('{right} of {of} right.', { right: result.right, of: result.of })}{' '}
        {result.again.length === 0 ? t('You know them.') : t('Hear these again:')}
      </p>
      <div class="buttons">
        {result.again.map((tone) => (
          <button key={tone} type="button" onClick={() => void model.play(tone)}>
            {nameOf(tone)}
          </button>
        ))}
      </div>
      <div class="buttons">
        <button
          type="button"
          class="main-button"
          onClick={() => {
            again();
            void model.begin();
          }}
        >
          {t('Another quiz')}
        </button>
        <button type="button" onClick={model.endQuiz}>
          {t('Enough||of the quiz')}
        </button>
      </div>
    </>
  );
};
