import { existsSync } from 'node:fs';
import type { Catalogue } from '../../src/languages/text.ts';
import { allTexts } from './allTexts.ts';
import { catalogueOf } from './catalogueOf.ts';

/**
 * For translators: all English texts of the page as JSON; with the tag of a language, only those that its catalogue lacks
 * (`npm run texts -- de`).
 */
const [tag] = process.argv.slice(2);
const path = `src/languages/${tag}/screen.ts`;
const there: Catalogue =
  tag !== undefined && existsSync(path) ? catalogueOf(await import(`../../${path}`)) : {};
const texts = allTexts().filter(({ text }) => !(text in there));
process.stdout.write(`${JSON.stringify(texts, null, 2)}\n`);
