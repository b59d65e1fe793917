import type { ReadonlySignal } from '@preact/signals';
import type { About } from '../../languages/about.ts';
import type { LanguageChoice } from '../../languages/current.ts';
import type { ScreenTexts } from '../../languages/screens.ts';
import { t } from '../../languages/text.ts';

interface Props {
  readonly choice: LanguageChoice;
  readonly languages: readonly About[];
  readonly texts: ReadonlySignal<ScreenTexts>;
}

/** What of the chosen language is not here; empty where all of it is. */
const troubles = ({ languages, choice, texts }: Props): readonly string[] => {
  const chosen = languages.find(({ tag }) => tag === choice.chosenLanguage.value);
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
export const LanguageChooser = (props: Props) => (
  <div class="language">
    <label>
      {t('Language')}
      <select
        value={props.choice.chosenLanguage.value}
        onChange={(event) => props.choice.choose(event.currentTarget.value)}
      >
        {props.languages.map(({ tag, name }) => (
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
  </div>
);
