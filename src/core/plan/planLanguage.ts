import { parseJson } from './json.ts';
import { withField } from './planReceiver.ts';
import { fields, orElse, textUpTo } from './shape.ts';

/** In which runs were spoken before their files said so, and in which a file without the field is. */
export const UNNAMED_LANGUAGE = 'en';
const LONGEST_TAG = 35;
/** As much of BCP 47 as a folder of ours can be named by. */
const TAG = /^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/;

/**
 * In which language a run was spoken, kept in its plan file as a field of ours, so that the log folds to the same words
 * ever after: `"language": "de"`. English where the file has none, or none that makes sense.
 */
export const languageOf = (planFile: string): string => {
  const got = parseJson(planFile, (value) =>
    fields({ language: orElse(textUpTo(LONGEST_TAG), UNNAMED_LANGUAGE) })(value, ''),
  );
  return got.ok && TAG.test(got.value.language) ? got.value.language : UNNAMED_LANGUAGE;
};

/** The same file with the language in it. */
export const withLanguage = (planFile: string, tag: string): string =>
  tag === UNNAMED_LANGUAGE ? planFile : withField(planFile, 'language', tag);
