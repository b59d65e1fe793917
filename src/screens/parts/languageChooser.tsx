import type { ReadonlySignal } from '@preact/signals';
import type { PageLanguage } from '../../languages/onPage.ts';
import { t } from '../../languages/text.ts';

interface Props {
  readonly language: PageLanguage;
  /** Whether the voice speaks the chosen language; where not, English. */
  readonly voice: ReadonlySignal<'here' | 'loading' | 'none' | 'failed'>;
}

const textsTrouble = ({ texts }: PageLanguage, language: string): string | null => {
  switch (texts.value) {
    case 'none':
      return t('The screens are not in {language} yet: they are in English.', { language });
    case 'failed':
      return t('The screens in {language} could not be loaded. Open the page again with a network.', {
        language,
      });
    default:
      return null;
  }
};

const voiceTrouble = (voice: Props['voice'], language: string): string | null => {
  switch (voice.value) {
    case 'none':
      return t('There is no voice in {language} yet: calls are in English.', { language });
    case 'failed':
      return t('The voice in {language} could not be loaded: calls are in English.', { language });
    default:
      return null;
  }
};

/** What of the chosen language is not here; empty where all of it is. */
const troubles = ({ language, voice }: Props): readonly string[] => {
  const name = language.languages.find(({ tag }) => tag === language.chosenLanguage.value)?.name ?? '';
  return [textsTrouble(language, name), voiceTrouble(voice, name)].filter((text) => text !== null);
};

/** The one choice of language, for screens and voice; each language under its own name. */
export const LanguageChooser = (props: Props) => {
  const { language, voice } = props;
  return (
    <section class="language" data-voice={voice.value} aria-label={t('Language')}>
      <label>
        {t('Language')}
        <select
          value={language.chosenLanguage.value}
          onChange={(event) => language.choose(event.currentTarget.value)}
        >
          {language.languages.map(({ tag, name }) => (
            <option key={tag} value={tag} lang={tag}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {troubles(props).map((trouble) => (
        <p key={trouble} class="note" role="status">
          {trouble}
        </p>
      ))}
    </section>
  );
};
