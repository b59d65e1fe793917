import type { PageLanguage } from '../../languages/onPage.ts';
import { t } from '../../languages/text.ts';

/** What of the chosen language is not here; empty where all of it is. */
const troubles = ({ languages, chosenLanguage, texts }: PageLanguage): readonly string[] => {
  const chosen = languages.find(({ tag }) => tag === chosenLanguage.value);
  if (chosen === undefined) return [];
  const language = chosen.name;
  return [
    ...(texts.value === 'none'
      ? [t('The screens are not in {language} yet: they are in English.', { language })]
      : []),
    ...(texts.value === 'failed'
      ? [
          t('The screens in {language} could not be loaded. Open the page again with a network.', {
            language,
          }),
        ]
      : []),
    ...(chosen.hasPack
      ? []
      : [t('There is no voice in {language} yet: calls are in English.', { language })]),
  ];
};

/** The one choice of language, for screens and voice; each language under its own name. */
export const LanguageChooser = ({ language }: { language: PageLanguage }) => (
  <section class="language" aria-label={t('Language')}>
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
    {troubles(language).map((trouble) => (
      <p key={trouble} class="note" role="status">
        {trouble}
      </p>
    ))}
  </section>
);
