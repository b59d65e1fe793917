import { useEffect } from 'preact/hooks';
import { TONES, type Tone } from '../../core/cues/voicePort.ts';
import { t } from '../../languages/text.ts';
import type { LearnModel } from '../../session/ear/learnModel.ts';
import { ToneDrawing } from './toneDrawing.tsx';
import { ToneQuiz } from './toneQuiz.tsx';
import { TONE_TEXTS } from './toneTexts.ts';

const ToneRow = ({ tone, model }: { tone: Tone; model: LearnModel }) => {
  const { name, means } = TONE_TEXTS[tone];
  return (
    <li class="tone-row" data-tone={tone}>
      <div>
        <h2>{t(name)}</h2>
        <p>{t(means)}</p>
        <div class="buttons">
          <button type="button" onClick={() => void model.play(tone)}>
            {t('Play||a tone')} <span class="unseen">{t(name)}</span>
          </button>
          {model.vibrates && (
            <button type="button" onClick={() => model.feel(tone)}>
              {t('Feel||a tone')} <span class="unseen">{t(name)}</span>
            </button>
          )}
        </div>
      </div>
      <ToneDrawing tone={tone} model={model} />
    </li>
  );
};

/** The tones: what each means, how it goes, how it feels; and whether the runner knows them. */
export const LearnScreen = ({ model }: { model: LearnModel }) => {
  useEffect(() => model.leave, [model]);
  return (
    <main class="learn" data-sound={model.sound.value}>
      <header class="lead-in">
        <h1>{t('The tones')}</h1>
        <p>
          {t(
            'Most calls begin with a tone. Know the eight of them, and you know what is meant before the first word. It takes two minutes.',
          )}
        </p>
        <p class="note">
          {model.vibrates
            ? t(
                'The line shows the pitch. The blocks under it show when this device vibrates, in the same rhythm.',
              )
            : t(
                'The line shows the pitch. The blocks under it show the rhythm that a device that vibrates lets you feel; this one does not.',
              )}
        </p>
      </header>
      <ul class="tones">
        {TONES.map((tone) => (
          <ToneRow key={tone} tone={tone} model={model} />
        ))}
      </ul>
      <ToneQuiz model={model} />
      <label class="carry-choice">
        <input
          type="checkbox"
          checked={model.talk.value === 'tones'}
          onChange={(event) => {
            model.talk.value = event.currentTarget.checked ? 'tones' : 'normal';
          }}
        />
        <span>
          {t('Tones alone in my runs')}
          <span class="note">
            {t('No words where a tone can tell: your food, what you ask for and trouble are still said.')}
          </span>
        </span>
      </label>
      <div class="buttons">
        <a class="button" href="#/run">
          {t('To the run')}
        </a>
        <a class="button" href="#/rehearse">
          {t('Hear a race')}
        </a>
      </div>
    </main>
  );
};
