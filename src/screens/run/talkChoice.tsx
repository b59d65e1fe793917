import type { Signal } from '@preact/signals';
import { TALK, type Talk } from '../../core/cues/talk.ts';
import { t } from '../../languages/text.ts';

const nameOf = (talk: Talk): string => {
  switch (talk) {
    case 'tones':
      return t('Tones alone');
    case 'sparse':
      return t('Little');
    case 'normal':
      return t('As usual');
    case 'full':
      return t('Everything');
  }
};

const noteOf = (talk: Talk): string => {
  switch (talk) {
    case 'tones':
      return t('No words where a tone can tell: your food, what you ask for and trouble are still said.');
    case 'sparse':
      return t('Your checkpoints, your own food, and what asks you to act.');
    case 'normal':
      return t('Also boards, stations and the signal, where there is time for them.');
    case 'full':
      return t('Also every board in a short race, and when you have time in hand near the end.');
  }
};

/** How much the voice says: other calls, never quicker ones. */
export const TalkChoice = ({ talk }: { talk: Signal<Talk> }) => (
  <fieldset class="carry">
    <legend>{t('How much is said')}</legend>
    {TALK.map((level) => (
      <label key={level} class="carry-choice">
        <input
          type="radio"
          name="talk"
          checked={talk.value === level}
          onChange={() => {
            talk.value = level;
          }}
        />
        <span>
          {nameOf(level)}
          <span class="note">{noteOf(level)}</span>
        </span>
      </label>
    ))}
    <p class="note">
      <a href="#/learn">{t('Learn the tones')}</a>
    </p>
  </fieldset>
);
